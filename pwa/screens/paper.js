// What goes on paper: the hand-over sheet of a pass, or the record of a colony.
import { useEffect } from 'preact/hooks';
import { html, Icon } from '../components/html.js';
import { eventInWords } from '../components/event-in-words.js';
import { dueInWords } from '../components/tube.js';
import { dueAtMs } from '../care/gauges.js';
import { useHistory, useKind } from '../signals/history.js';
import { now } from '../signals/clock.js';
import { gaugesOf, rows } from '../signals/rows.js';
import { speciesOf } from '../components/colonies.js';
import { PassSheet } from './pass-sheet.js';
import { labelled, say, sayOf } from '../words/say.js';
import { fullDay, listed, longDay, moment } from '../words/shown.js';

const MOST_EVENTS = 200;

/** A sheet for somebody else is in their language, and the page with it: what comes after begins anew in one's own. */
function speakAsBefore() {
  if (location.search) location.replace(`/${location.hash}`);
}

/** @param {{id: string}} props */
export function PaperScreen({ id }) {
  const row = rows.value.get(id);
  useEffect(() => speakAsBefore, []);
  if (row?.kind !== 'pass' && row?.kind !== 'colony') {
    return html`
      <h1>${say('paper-gone')}</h1>
    `;
  }
  return html`
    <button type="button" class="button main wide" onClick=${() => print()}>
      <${Icon} name="print" />
      ${say('paper-print')}
    </button>
    ${
      row.kind === 'pass'
        ? html`
            <${PassSheet} given=${row.set} />
          `
        : html`
            <${ColonyRecord} colony=${row} />
          `
    }
    <p class="soft">${say('paper-made', { day: longDay(now.peek()) })}</p>
  `;
}

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'>}} props */
function ColonyRecord({ colony }) {
  const v = colony.set;
  const log = [...(useHistory(colony.id, { most: MOST_EVENTS }) ?? [])].reverse();
  const count = useKind('count').find((row) => row.set.colony_id === colony.id);
  const vessel = rows.value.get(v.vessel_id ?? '')?.set.vessel_code;
  return html`
    <h1>${say('paper-record', { name: v.name })}</h1>
    <table>
      <tbody>
        <tr>
          <th scope="row">${say('paper-species')}</th>
          <td>
            <em>${speciesOf(v)}</em>
          </td>
        </tr>
        ${
          vessel &&
          html`
            <tr>
              <th scope="row">${say('paper-lives')}</th>
              <td>${sayOf('vessel', vessel)}</td>
            </tr>
          `
        }
        ${
          count &&
          html`
            <tr>
              <th scope="row">${say('paper-count')}</th>
              <td>${listed([eventInWords(count), fullDay(count.happened_ms ?? 0)])}</td>
            </tr>
          `
        }
        ${gaugesOf(colony.id).map(
          (gauge) => html`
            <tr>
              <th scope="row">${sayOf('need', gauge.need)}</th>
              <td>${dueInWords(dueAtMs(gauge))}</td>
            </tr>
          `,
        )}
      </tbody>
    </table>
    <table>
      <thead>
        <tr>
          <th scope="col">${say('paper-when')}</th>
          <th scope="col">${say('paper-event')}</th>
          <th scope="col">${say('paper-by')}</th>
        </tr>
      </thead>
      <tbody>
        ${log.slice(0, MOST_EVENTS).map(
          (row) => html`
            <tr key=${row.id}>
              <td>${moment(row.happened_ms ?? 0)}</td>
              <td>${row.set.remark ? labelled(eventInWords(row), row.set.remark) : eventInWords(row)}</td>
              <td>${row.by ? (rows.value.get(row.by)?.set.name ?? '') : ''}</td>
            </tr>
          `,
        )}
      </tbody>
    </table>
  `;
}
