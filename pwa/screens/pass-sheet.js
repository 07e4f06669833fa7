// The hand-over sheet of a pass on paper: day by day what is to be done, colony by colony, and whom to call.
import { dayOf } from '../care/instants.js';
import { sheetOfDays } from '../care/sheet.js';
import { html } from '../components/html.js';
import { inWords, wordFor } from '../components/in-words.js';
import { speciesOf } from '../components/colonies.js';
import { taskTitle } from '../components/task.js';
import { now } from '../signals/clock.js';
import { catalogue, events, gaugesOf, itemsAhead, planOf, rows } from '../signals/rows.js';
import { handoverText } from '../text/en/handover.js';
import { paperText } from '../text/en/paper.js';
import { standInText } from '../text/en/stand-in.js';

/** @typedef {import('../care/sheet.js').SheetTask} SheetTask */
/** @typedef {import('../care/overlay.js').ShownRow<'colony'>} ColonyRow */

/** @param {string} day ISO */
const longDay = (day) =>
  new Date(`${day}T12:00:00`).toLocaleDateString([], { weekday: 'long', day: 'numeric', month: 'long' });

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
    <h1>${paperText.sheet(given.name)}</h1>
    <p>${longDay(starts_on)} ${handoverText.to} ${longDay(ends_on)}</p>
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
          <strong>${paperText.call}:</strong>
          ${' '}${given.emergency_contact}
        </p>
      `
    }
    <p>${standInText.calm}</p>
    ${
      starts_on > dayOf(new Date(now.value)) &&
      html`
        <p class="caution calm">${paperText.ahead}</p>
      `
    }
    ${
      days.length === 0 &&
      html`
        <p>${paperText.over}</p>
      `
    }
    ${days.map(
      ({ day, tasks }) => html`
        <section class="card" key=${day} aria-label=${longDay(day)}>
          <h2>${longDay(day)}</h2>
          ${
            tasks.length
              ? html`
                  <${DayTable} tasks=${tasks} />
                `
              : html`
                  <p class="soft">${paperText.nothing}</p>
                `
          }
        </section>
      `,
    )}
    <section class="card stack" aria-label=${paperText.colonies}>
      <h2>${paperText.colonies}</h2>
      ${colonies.map(
        (colony) => html`
          <div key=${colony.id}>
            <h3>${calledOnPaper(colony)}</h3>
            <p class="soft"><em>${speciesOf(colony.set)}</em></p>
            ${(planOf(colony.id)?.set.cautions ?? []).map(
              (caution) => html`
                <p class="caution">${inWords('caution', caution)}</p>
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
        <th scope="col">${paperText.colony}</th>
        <th scope="col">${paperText.what}</th>
        <th scope="col">${paperText.done}</th>
      </tr>
    </thead>
    <tbody>
      ${tasks.map(
        (task) => html`
          <tr key=${task.key}>
            <th scope="row">${calledOnPaper(colonyWith(task.colony_id))}</th>
            <td>
              ${titleOnPaper(task)}
              ${(task.first ? (task.stand_in?.reasons ?? []) : []).map(
                (step) => html`
                  <p class="soft">${inWords('reason', step)}</p>
                `,
              )}
            </td>
            <td></td>
          </tr>
        `,
      )}
    </tbody>
  </table>
`;

/** @param {SheetTask} task */
function titleOnPaper(task) {
  const foods = task.foods.map((code) => wordFor('food', code)).join(', ');
  return foods ? `${taskTitle(task)}: ${foods}` : taskTitle(task);
}
