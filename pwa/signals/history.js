// What the phone's disk holds of the past, with what waits laid over it: a colony's log read back piece by piece, and
// all rows of a kind.
import { useEffect, useState } from 'preact/hooks';
import { overlayRows } from '../care/overlay.js';
import { outbox, stored } from './rows.js';
import { openStore, session } from './session.js';

/**
 * @typedef {import('../care/overlay.js').Row} Row
 * @typedef {import('../care/overlay.js').EventRow} EventRow
 * @typedef {{before_ms?: number, from_ms?: number, most?: number, fits?: (row: EventRow) => boolean}} Piece of a log;
 *   `most`: end where so many rows fit
 * @typedef {{log: EventRow[], edge_ms: number}} Read newest first,
 *   and the instant that it goes back to: 1 at the end of all
 */

/** How many rows one slice takes: enough for a page at first, then as many as a slow phone reads without a stutter. */
const FIRST_ROWS = 10;
const MOST_ROWS = 320;

/** @param {{id: string, happened_ms: number | null}} a @param {{id: string, happened_ms: number | null}} b */
const newestFirst = (a, b) => (b.happened_ms ?? 0) - (a.happened_ms ?? 0) || (a.id < b.id ? 1 : -1);

/**
 * Read a piece of a colony's log. Every slice waits for the disk, and meanwhile the page can be drawn and scrolled.
 * @param {string} colonyId @param {Piece} piece @param {(soFar: Read) => boolean} goOn asked between two slices
 * @returns {Promise<Read | null>} null: it was not to go on
 */
export async function readBack(
  colonyId,
  { before_ms = Infinity, from_ms = 1, most = Infinity, fits = () => true },
  goOn,
) {
  const entries = outbox.peek();
  const touched = new Set(entries.map((entry) => entry.op?.id).filter((id) => typeof id === 'string'));
  const under = await openStore().rowsById([...touched]);
  const waiting = [...overlayRows(under, entries, session.peek()?.person_id ?? null).values()].filter(
    (row) => row.set.colony_id === colonyId,
  );
  /** @type {EventRow[]} */
  const log = [];
  let edge_ms = before_ms;
  for (let size = FIRST_ROWS; edge_ms > from_ms; size = Math.min(MOST_ROWS, size * 2)) {
    if (edge_ms < before_ms && !goOn({ log, edge_ms })) return null;
    const slice = await openStore().slice(colonyId, from_ms, edge_ms, size);
    const untouched = overlayRows(
      slice.rows.filter((row) => !touched.has(row.id)),
      [],
      null,
    );
    const here = waiting.filter((row) => (row.happened_ms ?? 0) >= slice.from_ms && (row.happened_ms ?? 0) < edge_ms);
    const both = /** @type {EventRow[]} */ ([...untouched.values(), ...here]);
    for (const row of both.sort(newestFirst)) {
      if (log.length >= most && row.happened_ms !== log.at(-1)?.happened_ms) {
        return { log, edge_ms: log.at(-1)?.happened_ms ?? 1 };
      }
      if (fits(row)) log.push(row);
    }
    edge_ms = slice.from_ms;
  }
  return { log, edge_ms };
}

/**
 * Everything in a colony's log that fits, oldest first; null until it is read.
 * @param {string} colonyId @param {Piece} piece @returns {EventRow[] | null}
 */
export function useHistory(colonyId, piece) {
  const [log, setLog] = useState(/** @type {EventRow[] | null} */ (null));
  useEffect(() => {
    let wanted = true;
    void readBack(colonyId, piece, () => wanted).then((read) => {
      if (wanted && read) setLog(read.log.reverse());
    });
    return () => {
      wanted = false;
    };
  }, [colonyId, outbox.value, stored.value]);
  return log;
}

/**
 * All rows of a kind, those that wait among them, newest first.
 * @template {import('../kinds.d.ts').Kind} K
 * @param {K} kind
 * @returns {Array<import('../care/overlay.js').ShownRow<K>>}
 */
export function useKind(kind) {
  const [found, setFound] = useState({ rows: /** @type {Row[]} */ ([]), entries: outbox.peek() });
  useEffect(() => {
    let wanted = true;
    // together: what has just been sent leaves the outbox before it is read back, and must not be gone in between
    const entries = outbox.value;
    void openStore()
      .ofKind(kind)
      .then((rows) => {
        if (wanted) setFound({ rows, entries });
      });
    return () => {
      wanted = false;
    };
  }, [outbox.value, stored.value]);
  const waiting = found.entries.filter((entry) => entry.op?.kind === kind);
  const shown = overlayRows(found.rows, waiting, null).values();
  return /** @type {Array<import('../care/overlay.js').ShownRow<K>>} */ ([...shown]).sort(newestFirst);
}
