// Rows in lists by what they belong to: the events of each colony, the registers of each kind. A change makes only the
// lists anew that it touches, so whoever shows the others has nothing to do. Pure.
// `python -m tests.bench.full_shelf` (tap to saved among 100,000 rows) pays for it.

/**
 * @typedef {import('./overlay.js').ShownRow} ShownRow
 * @typedef {import('./overlay.js').EventRow} EventRow
 * @typedef {Map<string, ShownRow[]>} Lists
 * @typedef {{id: string, was: ShownRow | undefined, is: ShownRow | undefined}} Change of a row: what was shown, what is
 * @typedef {{keyOf: (row: ShownRow) => string | null, order: (a: ShownRow, b: ShownRow) => number}} Sorting
 *   `keyOf`: of the list that a row stands in, null for none
 */

/** Where repeats stand among the events. */
export const REPEATS = 'repeats';

/**
 * Events by colony in the order of their happening, under '' what happens at a place. Repeats that nobody has
 * confirmed are of no colony: they stand in a list of their own.
 * @type {Sorting}
 */
export const EVENTS = {
  keyOf: (row) => {
    if (row.happened_ms === null) return null;
    const { set } = /** @type {EventRow} */ (row);
    return set.possible_repeat && !set.confirmed ? REPEATS : (set.colony_id ?? '');
  },
  order: (a, b) => (a.happened_ms ?? 0) - (b.happened_ms ?? 0),
};

/** All but events by kind, in the order of their making. @type {Sorting} */
export const REGISTERS = {
  keyOf: (row) => (row.happened_ms === null ? row.kind : null),
  order: (a, b) => (a.id < b.id ? -1 : 1),
};

/** @param {Iterable<ShownRow>} rows @param {Sorting} sorting @returns {Lists} */
export function sortedOut(rows, { keyOf, order }) {
  /** @type {Lists} */
  const lists = new Map();
  for (const row of rows) {
    const key = keyOf(row);
    if (key === null) continue;
    const list = lists.get(key);
    if (list) list.push(row);
    else lists.set(key, [row]);
  }
  for (const list of lists.values()) list.sort(order);
  return lists;
}

/**
 * The lists after some rows have changed; the same where the change touches none of them.
 * @param {Lists} lists @param {Change[]} changes @param {Sorting} sorting @returns {Lists}
 */
export function sortedAnew(lists, changes, { keyOf, order }) {
  const rows = changes.flatMap(({ was, is }) => [was, is]).filter((row) => row !== undefined);
  const touched = new Set(rows.map(keyOf).filter((key) => key !== null));
  if (!touched.size) return lists;
  const ids = new Set(changes.map(({ id }) => id));
  const after = new Map(lists);
  for (const key of touched) {
    const stays = (lists.get(key) ?? []).filter((row) => !ids.has(row.id));
    const comes = changes.map(({ is }) => is).filter((row) => row !== undefined && keyOf(row) === key);
    after.set(key, [...stays, .../** @type {ShownRow[]} */ (comes)].sort(order));
  }
  return after;
}

/**
 * A list that was made anew, or the one before where both hold the same things: then nobody has to look at it.
 * @template T @param {T[]} before @param {T[]} after @returns {T[]}
 */
export const keptIfSame = (before, after) =>
  before.length === after.length && after.every((each, i) => each === before[i]) ? before : after;

/** @param {Map<string, ShownRow>} rows @returns {Map<string, EventRow[]>} */
export const eventsByColony = (rows) => /** @type {Map<string, EventRow[]>} */ (sortedOut(rows.values(), EVENTS));
