// The history as a diary: by day, newest first. Only the pages near the view are read and drawn, so that years of it
// stay light. Longer than 300 lines because pages, search and lines share how far back is read.
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { eventInWords } from '../components/event-in-words.js';
import { typed } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { Photo } from '../components/photo.js';
import { Sheet } from '../components/sheet.js';
import { watchNear } from '../components/slices.js';
import { SaveState } from '../components/states.js';
import { DAY_MS } from '../care/rules.js';
import { voidLog } from '../signals/actions.js';
import { readBack } from '../signals/history.js';
import { now, today } from '../signals/clock.js';
import { outbox, rowOf, stored } from '../signals/rows.js';
import { lazy } from '../components/lazy.js';
import { EVENT_KINDS } from '../care/codes.js';
import { labelled, say, sayOf } from '../words/say.js';
import { dayAndYear, dayInFull, timeOfDay } from '../words/shown.js';

const Past = lazy(() => import('./past.js'), 'Past', 'online');

/**
 * @typedef {import('../care/overlay.js').ShownRow} ShownRow
 * @typedef {{edge_ms: number, day: string}} End of a page: the instant it goes back to, and the day of its last line
 */

const PAGE = 6; // as many lines as a slow phone makes in a moment
const KINDS = EVENT_KINDS.filter((kind) => kind !== 'climate');

/** @param {{colonyId: string}} props */
export function Diary({ colonyId }) {
  const [kind, setKind] = useState('');
  const [wanted, setWanted] = useState('');
  const [long, setLong] = useState(false);
  const text = wanted.trim().toLowerCase();
  /** @param {ShownRow} row */
  const fits = (row) =>
    (!kind || row.kind === kind) &&
    (!text || `${eventInWords(row)} ${row.set.remark ?? ''}`.toLowerCase().includes(text));
  return html`
    <section class="stack" aria-label=${say('colony-diary')}>
      <h2>${say('colony-diary')}</h2>
      ${
        long &&
        html`
          <div class="pair screen-only">
            <label>
              ${say('diary-search')}
              <input type="search" value=${wanted} onInput=${typed(setWanted)} />
            </label>
            <label>
              ${say('diary-kind')}
              <select onChange=${typed(setKind)}>
                <option value="">${say('diary-all')}</option>
                ${KINDS.map(
                  (each) => html`
                    <option value=${each}>${sayOf('event-kind', each)}</option>
                  `,
                )}
              </select>
            </label>
          </div>
        `
      }
      <${Pages}
        key=${`${kind} ${text}`}
        colonyId=${colonyId}
        fits=${fits}
        none=${kind || text ? say('diary-none') : say('diary-empty')}
        onLong=${() => setLong(true)}
      />
    </section>
  `;
}

/**
 * The pages that were asked for so far, and the next one as soon as their end comes into view.
 * @param {{colonyId: string, fits: (row: ShownRow) => boolean, none: string, onLong: () => void}} props
 */
function Pages({ colonyId, fits, none, onLong }) {
  const [ends, setEnds] = useState(/** @type {End[]} */ ([]));
  const [asked, setAsked] = useState(1);
  const button = useRef(/** @type {HTMLButtonElement | null} */ (null));
  const last = ends[asked - 1];
  const more = last ? last.edge_ms > 1 : asked > 1;
  const next = () => {
    if (last) setAsked(asked + 1);
  };
  // the same at each drawing, so a page that is read leaves all others as they are
  const onRead = useCallback(
    (/** @type {number} */ place, /** @type {End} */ end) =>
      setEnds((known) => Object.assign([...known], { [place]: end })),
    [],
  );
  useEffect(() => {
    if (!last || !more) return undefined;
    onLong();
    return watchNear(/** @type {HTMLButtonElement} */ (button.current), (near) => {
      if (near) next();
    });
  }, [asked, last?.edge_ms]);
  return html`
    ${Array.from(
      { length: asked },
      (_, i) => html`
        <${Page}
          key=${i}
          colonyId=${colonyId}
          fits=${fits}
          place=${i}
          before=${ends[i - 1]}
          end=${ends[i]}
          onRead=${onRead}
        />
      `,
    )}
    ${
      more &&
      html`
        <button type="button" class="button" ref=${button} onClick=${next}>${say('diary-earlier')}</button>
      `
    }
    ${
      last &&
      !more &&
      !ends.some((end) => end.day) &&
      html`
        <p class="soft">${none}</p>
      `
    }
  `;
}

/**
 * One page: read when it comes near the view, and an empty space of its height when it is far.
 * @param {{colonyId: string, fits: (row: ShownRow) => boolean, place: number, before?: End, end?: End,
 *   onRead: (place: number, end: End) => void}} props
 */
function Page({ colonyId, fits, place, before, end, onRead }) {
  const [log, setLog] = useState(/** @type {ShownRow[] | null} */ (null));
  const [near, setNear] = useState(true);
  const [back_ms, setBack] = useState(0);
  const [opened, setOpened] = useState('');
  const box = useRef(/** @type {HTMLDivElement | null} */ (null));
  const height_px = useRef(0);
  const inReach = useRef(true); // at once: an effect ends a moment after what it waited for may have come
  useEffect(
    () =>
      place === 0
        ? undefined
        : watchNear(/** @type {HTMLDivElement} */ (box.current), (comes, height) => {
            // never take away where the keyboard is
            if (!comes && box.current?.contains(document.activeElement)) return;
            inReach.current = comes;
            if (!comes) {
              height_px.current = height;
              setLog(null);
            }
            setNear(comes);
          }),
    [],
  );
  useEffect(() => {
    if (!near) return undefined;
    let current = true;
    const wanted = () => current && inReach.current;
    void readBack(
      colonyId,
      { before_ms: before?.edge_ms, from_ms: end?.edge_ms, most: end ? 2 * PAGE : PAGE, fits },
      (soFar) => {
        if (wanted() && !end) {
          setLog([...soFar.log]); // it grows on
          setBack(soFar.edge_ms);
        }
        return wanted();
      },
    ).then((read) => {
      if (!wanted() || !read) return;
      setLog(read.log);
      setBack(0);
      onRead(place, { edge_ms: read.edge_ms, day: read.log.length ? dayOf(read.log.at(-1)) : (before?.day ?? '') });
    });
    return () => {
      current = false;
    };
  }, [near, before?.edge_ms, outbox.value, stored.value]);
  const open = log?.find((row) => row.id === opened);
  return html`
    <div class="stack" ref=${box} style=${log ? '' : `height: ${height_px.current}px`}>
      ${
        log &&
        html`
          <${Lines} log=${log} day=${before?.day} onOpen=${setOpened} />
        `
      }
      ${
        back_ms > 0 &&
        html`
          <p class="soft">${say('diary-looking', { day: dayInWords(back_ms) })}</p>
        `
      }
      ${
        open &&
        html`
          <${Sheet} title=${eventInWords(open)} onClose=${() => setOpened('')}>
            <${Past} row=${open} />
          </${Sheet}>
        `
      }
    </div>
  `;
}

/**
 * The lines of a page, all at once: a page that grew under the eyes of its watcher would come and go without end.
 * @param {{log: ShownRow[], day?: string, onOpen: (id: string) => void}} props `day`: of the last line above
 */
function Lines({ log, day: above, onOpen }) {
  const days = useMemo(
    () =>
      byDay(log).map(
        ([day, entries]) => html`
          <div key=${day}>
            ${
              day !== above &&
              html`
                <h3 class="day">${dayInWords(entries[0]?.happened_ms ?? 0)}</h3>
              `
            }
            <ul class="diary">
              ${entries.map(
                (row) => html`
                  <${Entry} key=${row.id} row=${row} onOpen=${onOpen} />
                `,
              )}
            </ul>
          </div>
        `,
      ),
    [log, above, today.value],
  );
  return html`
    <div class="stack">${days}</div>
  `;
}

/** @param {ShownRow | undefined} row */
const dayOf = (row) => new Date(row?.happened_ms ?? 0).toDateString();

/** @param {ShownRow[]} log @returns {Array<[string, ShownRow[]]>} */
function byDay(log) {
  /** @type {Map<string, ShownRow[]>} */
  const days = new Map();
  for (const row of log) {
    const day = dayOf(row);
    days.set(day, [...(days.get(day) ?? []), row]);
  }
  return [...days];
}

/** @param {number} ms */
function dayInWords(ms) {
  const day = new Date(ms);
  if (day.toDateString() === new Date(now.peek()).toDateString()) return say('diary-today');
  if (day.toDateString() === new Date(now.peek() - DAY_MS).toDateString()) return say('diary-yesterday');
  return day.getFullYear() === new Date(now.peek()).getFullYear() ? dayInFull(ms) : dayAndYear(ms);
}

/** @param {{row: ShownRow, onOpen: (id: string) => void}} props */
function Entry({ row, onOpen }) {
  const who = row.by ? rowOf(row.by)?.set.name : null;
  const tasting = row.set.tasting_id && rowOf(row.set.tasting_id)?.set.name;
  const words = eventInWords(row);
  return html`
    <li class="row">
      <span class=${`badge ${row.kind === 'fault' && !row.set.resolved_at ? 'warn' : ''}`}>
        <${Icon} name=${row.kind === 'feeding' ? row.set.need : row.kind} />
      </span>
      <button type="button" class="open grow" aria-haspopup="dialog" onClick=${() => onOpen(row.id)}>
        <span class="words">${words}</span>
        ${
          row.set.remark &&
          html`
            <span class="soft">${row.set.remark}</span>
          `
        }${
          tasting &&
          html`
            <span class="soft">${say('tasting-part', { name: tasting })}</span>
          `
        }
        <span class="soft">
          ${timeOfDay(row.happened_ms ?? 0)}${' '}${who ? say('round-by', { who }) : ''}${
            row.state === 'synced'
              ? ''
              : html`
                  ${' · '}
                  <${SaveState} state=${row.state} />
                `
          }
        </span>
      </button>
      ${
        row.kind === 'photo' &&
        html`
          <${Photo} id=${row.id} size=${row.set} words="" />
        `
      }
      <button
        type="button"
        class="button quiet screen-only"
        aria-label=${labelled(say('diary-void'), words)}
        onClick=${() => voidLog(row)}
      >
        ${say('diary-void')}
      </button>
    </li>
  `;
}
