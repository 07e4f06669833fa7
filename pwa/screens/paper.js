// What goes on paper: the hand-over sheet of a pass, or the record of a colony.
import { html, Icon } from '../components/html.js';
import { eventInWords, inWords, portionInWords, todoInWords, weekDay, wordFor } from '../components/in-words.js';
import { dueInWords } from '../components/tube.js';
import { dueAtMs } from '../care/gauges.js';
import { forStandIn } from '../care/round.js';
import { useHistory, useKind } from '../signals/history.js';
import { now } from '../signals/clock.js';
import { gaugesOf, planOf, rows } from '../signals/rows.js';
import { m } from '../text/en-more.js';
import { speciesOf } from '../components/colonies.js';

const MOST_EVENTS = 200;

/** @param {{id: string}} props */
export function PaperScreen({ id }) {
  const row = rows.value.get(id);
  if (!row || !['pass', 'colony'].includes(row.kind)) {
    return html`
      <h1>${m.paper.gone}</h1>
    `;
  }
  return html`
    <button type="button" class="button main wide" onClick=${() => print()}>
      <${Icon} name="print" />
      ${m.paper.print}
    </button>
    ${
      row.kind === 'pass'
        ? html`
            <${HandOverSheet} given=${row.set} />
          `
        : html`
            <${ColonyRecord} colony=${row} />
          `
    }
    <p class="soft">${m.paper.made(new Date(now.peek()).toLocaleDateString([], { dateStyle: 'long' }))}</p>
  `;
}

/** @param {string} day ISO */
const longDay = (day) =>
  new Date(`${day}T12:00:00`).toLocaleDateString([], { weekday: 'long', day: 'numeric', month: 'long' });

/** What falls due while they are there. @param {string} colonyId @param {string} lastDay ISO @returns {any[]} */
const tasksUntil = (colonyId, lastDay) =>
  forStandIn(planOf(colonyId)?.set.tasks ?? [], [], now.peek()).filter(
    (/** @type {any} */ task) => task.need !== 'glance' && task.due_at_ms <= new Date(`${lastDay}T23:59:59`).getTime(),
  );

/** @param {{given: Record<string, any>}} props */
const HandOverSheet = ({ given }) => html`
  <h1>${m.paper.sheet(given.name)}</h1>
  <p>${longDay(given.starts_on)} ${m.handover.to} ${longDay(given.ends_on)}</p>
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
        <strong>${m.paper.call}:</strong>
        ${' '}${given.emergency_contact}
      </p>
    `
  }
  <p>${m.standin.calm}</p>
  ${given.colony_ids
    .map((/** @type {string} */ id) => rows.value.get(id))
    .filter(Boolean)
    .map(
      (/** @type {any} */ colony) => html`
        <section class="card" key=${colony.id}>
          <h2>${colony.set.number ? `${colony.set.number} · ` : ''}${colony.set.name}</h2>
          <p class="soft"><em>${speciesOf(colony.set)}</em></p>
          <table>
            <thead>
              <tr>
                <th scope="col">${m.paper.what}</th>
                <th scope="col">${m.paper.when}</th>
                <th scope="col">${m.paper.done}</th>
              </tr>
            </thead>
            <tbody>
              ${tasksUntil(colony.id, given.ends_on).map(
                (/** @type {any} */ task) => html`
                  <tr>
                    <td>
                      ${task.portion ? portionInWords(task.portion) : todoInWords(task)}
                      ${(task.stand_in.reasons ?? []).map(
                        (/** @type {any} */ step) => html`
                          <p class="soft">${inWords('reason', step)}</p>
                        `,
                      )}
                    </td>
                    <td>${weekDay(task.due_at_ms)}</td>
                    <td></td>
                  </tr>
                `,
              )}
            </tbody>
          </table>
          ${(planOf(colony.id)?.set.cautions ?? []).map(
            (/** @type {any} */ caution) => html`
              <p class="caution">${inWords('caution', caution)}</p>
            `,
          )}
        </section>
      `,
    )}
`;

/** @param {{colony: import('../care/overlay.js').ShownRow}} props */
function ColonyRecord({ colony }) {
  const v = colony.set;
  const log = [...(useHistory(colony.id, { most: MOST_EVENTS }) ?? [])].reverse();
  const count = useKind('count').find((row) => row.set.colony_id === colony.id);
  const vessel = rows.value.get(v.vessel_id)?.set.vessel_code;
  return html`
    <h1>${m.paper.record(v.name)}</h1>
    <table>
      <tbody>
        <tr>
          <th scope="row">${m.paper.species}</th>
          <td><em>${speciesOf(v)}</em></td>
        </tr>
        ${
          vessel &&
          html`
            <tr>
              <th scope="row">${m.paper.lives}</th>
              <td>${wordFor('vessel', vessel)}</td>
            </tr>
          `
        }
        ${
          count &&
          html`
            <tr>
              <th scope="row">${m.paper.count}</th>
              <td>${eventInWords(count)}, ${new Date(count.happened_ms ?? 0).toLocaleDateString()}</td>
            </tr>
          `
        }
        ${gaugesOf(colony.id).map(
          (gauge) => html`
            <tr>
              <th scope="row">${wordFor('need', gauge.need)}</th>
              <td>${dueInWords(dueAtMs(gauge))}</td>
            </tr>
          `,
        )}
      </tbody>
    </table>
    <table>
      <thead>
        <tr>
          <th scope="col">${m.paper.when}</th>
          <th scope="col">${m.paper.event}</th>
          <th scope="col">${m.paper.by}</th>
        </tr>
      </thead>
      <tbody>
        ${log.slice(0, MOST_EVENTS).map(
          (row) => html`
            <tr key=${row.id}>
              <td>${new Date(row.happened_ms ?? 0).toLocaleString([], { dateStyle: 'short', timeStyle: 'short' })}</td>
              <td>${eventInWords(row)}${row.set.remark ? `: ${row.set.remark}` : ''}</td>
              <td>${row.by ? (rows.value.get(row.by)?.set.name ?? '') : ''}</td>
            </tr>
          `,
        )}
      </tbody>
    </table>
  `;
}
