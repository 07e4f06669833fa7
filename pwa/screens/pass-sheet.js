// The hand-over sheet of a pass on paper: day by day what is to be done, colony by colony, and whom to call.
import { dayOf } from '../care/instants.js';
import { sheetOfDays } from '../care/sheet.js';
import { html } from '../components/html.js';
import { speciesOf } from '../components/colonies.js';
import { Hint } from '../components/helping.js';
import { Steps } from '../components/steps.js';
import { taskTitle } from '../components/task.js';
import { TrueSize } from '../components/true-size.js';
import { now } from '../signals/clock.js';
import { catalogue, events, gaugesOf, itemsAhead, planOf, rows } from '../signals/rows.js';
import { inWords } from '../components/in-words.js';
import { labelled, say, sayIf, sayOf } from '../words/say.js';
import { dayInFull, listed } from '../words/shown.js';

/** @typedef {import('../care/sheet.js').SheetTask} SheetTask */
/** @typedef {import('../care/overlay.js').ShownRow<'colony'>} ColonyRow */

/** @param {{given: import('../kinds.d.ts').Pass}} props */
export function PassSheet({ given }) {
  const colonies = given.colony_ids.map(colonyWith).filter((colony) => colony !== undefined);
  const known = {
    items: itemsAhead(),
    events: events.value,
    gauges: gaugesOf,
    catalogue: catalogue.value,
  };
  const { starts_on, ends_on } = given;
  const ids = colonies.map((colony) => colony.id);
  const days = sheetOfDays(known, { colony_ids: ids, starts_on, ends_on }, now.value);
  return html`
    <h1>${say('paper-sheet', { who: given.name })}</h1>
    <p>${say('handover-days', { from: dayInFull(starts_on), to: dayInFull(ends_on) })}</p>
    ${
      given.instructions &&
      html`
        <p class="lead">${given.instructions}</p>
      `
    }
    ${
      given.emergency_contact &&
      html`
        <p>
          <strong>${say('paper-call')}</strong>
          ${' '}${given.emergency_contact}
        </p>
      `
    }
    <p>${say('stand-in-calm')}</p>
    ${
      starts_on > dayOf(new Date(now.value)) &&
      html`
        <p class="caution calm">${say('paper-ahead')}</p>
      `
    }
    ${
      days.length === 0 &&
      html`
        <p>${say('paper-over')}</p>
      `
    }
    ${days.map(
      ({ day, tasks }) => html`
        <section class="card" key=${day} aria-label=${dayInFull(day)}>
          <h2>${dayInFull(day)}</h2>
          ${
            tasks.length
              ? html`
                  <${DayTable} tasks=${tasks} />
                `
              : html`
                  <p class="soft">${say('paper-nothing')}</p>
                `
          }
        </section>
      `,
    )}
    <${HowTos} tasks=${days.flatMap((day) => day.tasks)} />
    <section class="card stack" aria-label=${say('paper-colonies')}>
      <h2>${say('paper-colonies')}</h2>
      ${colonies.map(
        (colony) => html`
          <div key=${colony.id}>
            <h3>${calledOnPaper(colony)}</h3>
            <p class="soft">
              <em>${speciesOf(colony.set)}</em>
            </p>
            <${Hint} colony=${colony} />
            ${(planOf(colony.id)?.set.cautions ?? []).map(
              (caution) => html`
                <p class="caution">${inWords('caution', caution)} ${sayIf('caution', caution.code, 'more')}</p>
              `,
            )}
          </div>
        `,
      )}
    </section>
  `;
}

/** @param {string} id */
const colonyWith = (id) => /** @type {ColonyRow | undefined} */ (rows.value.get(id));

/** @param {ColonyRow | undefined} colony */
const calledOnPaper = (colony) => `${colony?.set.number ? `${colony.set.number} · ` : ''}${colony?.set.name}`;

/** @param {{tasks: SheetTask[]}} props */
const DayTable = ({ tasks }) => html`
  <table>
    <thead>
      <tr>
        <th scope="col">${say('paper-colony')}</th>
        <th scope="col">${say('paper-what')}</th>
        <th scope="col">${say('paper-done')}</th>
      </tr>
    </thead>
    <tbody>
      ${tasks.map(
        (task) => html`
          <tr key=${task.key}>
            <th scope="row">${calledOnPaper(colonyWith(task.colony_id))}</th>
            <td>${titleOnPaper(task)}</td>
            <td></td>
          </tr>
        `,
      )}
    </tbody>
  </table>
`;

/**
 * Each way of doing something once, whichever colonies ask for it, with what they get at its true size.
 * @param {{tasks: SheetTask[]}} props
 */
function HowTos({ tasks }) {
  /** @type {Map<string, SheetTask[]>} */
  const ways = new Map();
  for (const task of tasks.filter((each) => each.reasons.length)) {
    const way = JSON.stringify(task.reasons.map(({ code, args }) => [code, args]));
    ways.set(way, [...(ways.get(way) ?? []), task]);
  }
  if (!ways.size) return null;
  return html`
    <section class="card stack" aria-label=${say('stand-in-how')}>
      <h2>${say('stand-in-how')}</h2>
      <p class="soft">${say('stand-in-practice')}</p>
      ${[...ways].map(
        ([way, alike]) => html`
          <div class="way" key=${way}>
            <h3>${listed([...new Set(alike.map(taskTitle))])}</h3>
            <${Steps} items=${alike[0]?.reasons ?? []} />
            ${portionsOf(alike).map(
              (portion) => html`
                <${TrueSize} portion=${portion} />
              `,
            )}
          </div>
        `,
      )}
    </section>
  `;
}

/** One portion of each size. @param {SheetTask[]} tasks */
const portionsOf = (tasks) => {
  const portions = tasks.map((task) => task.portion).filter((portion) => portion !== null);
  return [
    ...new Map(
      portions.map((portion) => [`${portion.unit} ${portion.food_code} ${portion.size_class}`, portion]),
    ).values(),
  ];
};

/** @param {SheetTask} task */
function titleOnPaper(task) {
  const foods = listed(task.foods.map((code) => sayOf('food', code)));
  return foods ? labelled(taskTitle(task), foods) : taskTitle(task);
}
