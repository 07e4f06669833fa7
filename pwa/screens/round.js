// The round: what is due now, later today and next, how far it has come, and what was done. Each task has its tube,
// what to do in real units, why, and one tap to log it as suggested.
import { useCallback, useMemo, useState } from 'preact/hooks';
import { html, Icon } from '../components/html.js';
import { eventInWords } from '../components/event-in-words.js';
import { Empty, NoColonies, SaveState } from '../components/states.js';
import { LyingTube } from '../components/tube.js';
import { logAsSuggested, voidLog } from '../signals/actions.js';
import { nowMs } from '../signals/clock.js';
import { route } from '../signals/route.js';
import { round, rowOf, rowsOf } from '../signals/rows.js';
import { joining } from '../signals/saving.js';
import { lazy } from '../components/lazy.js';
import { useSlices } from '../components/slices.js';
import { CompactTask, Task } from '../components/task.js';
import { nameOf } from '../components/in-words.js';
import { labelled, say, sayOf } from '../words/say.js';
import { nameOfDay, timeOfDay } from '../words/shown.js';

const LogSheet = lazy(() => import('./log.js'), 'LogSheet');
const LaterSheet = lazy(() => import('./round-sheets.js'), 'LaterSheet');
const ManySheet = lazy(() => import('./round-sheets.js'), 'ManySheet');

/** @typedef {import('../care/round.js').Item} Item */
/** @typedef {{what: 'log' | 'later', item: Item} | {what: 'many'}} Opened */

const PART_OF_A_ROUND = ['feeding', 'check', 'water'];
export function RoundScreen() {
  const { items, done } = round.value;
  const [sheet, setSheet] = useState(/** @type {Opened | null} */ (null));
  const { made: made_so_far, end } = useSlices([...items.map((item) => item.key), ...done.map((row) => row.id)]);
  // the same at each drawing, so a task is drawn again only when it is another
  const onOther = useCallback((/** @type {Item} */ item) => setSheet({ what: 'log', item }), []);
  const onLater = useCallback((/** @type {Item} */ item) => setSheet({ what: 'later', item }), []);
  if (joining.value !== null || !rowsOf('colony').length) {
    return html`
      <${NoColonies} title=${say('round-title')} joining=${joining.value} />
    `;
  }
  const due = items.filter((item) => item.group === 'now');
  const made = items.slice(0, made_so_far);
  const easy = due.filter((item) => item.suggested && !item.urgent);
  const all = html`
    <button type="button" class="button main wide" onClick=${() => logAsSuggested(easy)}>
      <${Icon} name="many" />
      ${say('round-all', { count: easy.length, colony: nameOf(easy[0]?.colony_id ?? '') })}
    </button>
  `;
  // some systems show a nudge without buttons: then its one tap is the first thing on the page that it opens
  const nudged = route.value.nudge && easy.length > 0;
  const close = () => setSheet(null);
  return html`
    <h1>${say('round-title')}</h1>
    ${nudged && all}
    <${Progress}
      left=${due.length}
      done=${done.filter((row) => PART_OF_A_ROUND.includes(row.kind)).length}
      next=${items[0]}
    />
    ${
      /** @type {const} */ (['now', 'today', 'next']).map((group) => {
        const part = made.filter((item) => item.group === group);
        return (
          part.length > 0 &&
          html`
            <section class="stack" aria-label=${sayOf('round', group)}>
              <h2>${sayOf('round', group)}</h2>
              ${part.map((item) =>
                group === 'next'
                  ? html`
                      <${CompactTask} key=${item.key} item=${item} />
                    `
                  : html`
                      <${Task} key=${item.key} item=${item} onOther=${onOther} onLater=${onLater} />
                    `,
              )}
              ${group === 'now' && part.length === due.length && !nudged && easy.length > 1 && all}
            </section>
          `
        );
      })
    }
    ${
      made_so_far >= items.length &&
      html`
        <button type="button" class="button wide" onClick=${() => setSheet({ what: 'many' })}>
          <${Icon} name="many" />
          ${say('round-many')}
        </button>
      `
    }
    ${
      made_so_far > items.length &&
      done.length > 0 &&
      html`
        <section class="stack" aria-label=${say('round-done')}>
          <h2>${say('round-done')}</h2>
          <ul class="done-list">
            <${DoneList} rows=${done.slice(0, made_so_far - items.length)} />
          </ul>
        </section>
      `
    }
    ${end}
    ${
      sheet?.what === 'log' &&
      html`
        <${LogSheet} colonyId=${sheet.item.colony_id} need=${sheet.item.need} item=${sheet.item} onClose=${close} />
      `
    }
    ${
      sheet?.what === 'later' &&
      html`
        <${LaterSheet} item=${sheet.item} onClose=${close} />
      `
    }
    ${
      sheet?.what === 'many' &&
      html`
        <${ManySheet} onClose=${close} />
      `
    }
  `;
}

/** @param {{left: number, done: number, next: import('../care/round.js').Item | undefined}} props */
function Progress({ left, done, next }) {
  if (!left) {
    return html`
      <${Empty} title=${next ? say('round-next-at', { day: dayInWords(next.due_at_ms) }) : say('round-quiet')}>
        <p class="soft">${done ? say('round-finished') : ''} ${say('round-calm')}</p>
      </${Empty}>
    `;
  }
  const words = say('round-progress', { part: done, whole: done + left });
  return html`
    <div class="progress">
      <${LyingTube} part=${done} whole=${done + left} words=${words} />
      <p class="soft" aria-hidden="true">${words}</p>
    </div>
  `;
}

/** @param {number} ms @returns {string} a weekday, and the hour if it is today */
function dayInWords(ms) {
  const when = new Date(ms);
  const same = when.toDateString() === new Date(nowMs()).toDateString();
  return same ? timeOfDay(ms) : nameOfDay(ms);
}

/** @typedef {import('../care/overlay.js').EventRow} EventRow */

const PART_MS = 900_000;

/**
 * What was done, in parts of a quarter of an hour: what is logged now draws its own part anew and leaves all others.
 * @param {{rows: EventRow[]}} props
 */
function DoneList({ rows }) {
  /** @type {Map<number, EventRow[]>} */
  const parts = new Map();
  for (const row of rows) {
    const time = Math.floor((row.happened_ms ?? 0) / PART_MS);
    parts.set(time, [...(parts.get(time) ?? []), row]);
  }
  return [...parts].map(
    ([time, part]) => html`
      <${DonePart} key=${time} rows=${part} />
    `,
  );
}

/** @param {{rows: EventRow[]}} props */
const DonePart = ({ rows }) =>
  useMemo(
    () =>
      rows.map(
        (row) => html`
          <${Done} key=${row.id} row=${row} />
        `,
      ),
    rows,
  );

/** @param {{row: import('../care/overlay.js').ShownRow}} props */
function Done({ row }) {
  const who = row.by ? rowOf(row.by)?.set.name : null;
  const words = eventInWords(row);
  return html`
    <li>
      <${Icon} name="done" />
      <div class="grow">
        <p>
          <strong>${nameOf(row.set.colony_id)}</strong>
          ${' '}${words}
        </p>
        <p class="soft">
          ${timeOfDay(row.happened_ms ?? 0)}${' '}${who ? say('round-by', { who }) : ''}${' · '}
          <${SaveState} state=${row.state} />
        </p>
      </div>
      <button
        type="button"
        class="button quiet"
        onClick=${() => voidLog(row)}
        aria-label=${labelled(say('round-undo'), words)}
      >
        ${say('round-undo')}
      </button>
    </li>
  `;
}
