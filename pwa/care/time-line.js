// The stages of a colony on one line of time: which part is drawn, and what is there on a day. Pure.

/**
 * @typedef {[number, number, number]} Range low, best, high
 * @typedef {[number, ...Range[]]} Column an instant in ms, then a range for each of `SERIES`
 * @typedef {{ms: number, range: Range}} Point
 */

/** The order of the plan's columns. */
export const SERIES = /** @type {const} */ (['eggs', 'small_larvae', 'large_larvae', 'pupae', 'workers']);

/** @type {Range} */
const NOTHING = [0, 0, 0];

/** A range between two known ones, as straight lines. @param {Range} from @param {Range} to @param {number} share */
function between(from, to, share) {
  const [low, best, high] = from.map((each, i) => each + share * ((to[i] ?? each) - each));
  return /** @type {Range} */ ([low, best, high]);
}

/**
 * What is in the nest at an instant; before the first column and after the last one as there.
 * @param {Column[]} columns in order, at least one @param {number} ms @returns {Range[]} one for each of `SERIES`
 */
export function nestAt(columns, ms) {
  const after = columns.findIndex(([at]) => at >= ms);
  const [to = columns.at(-1), from = to] = [columns[after], columns[after - 1]];
  const [toMs = 0, ...there] = to ?? [];
  const [fromMs = 0, ...here] = from ?? [];
  const share = toMs > fromMs ? (ms - fromMs) / (toMs - fromMs) : 1;
  return SERIES.map((_, i) => between(here[i] ?? NOTHING, there[i] ?? NOTHING, share));
}

/**
 * The columns from one instant to another, cut at both ends.
 * @param {Column[]} columns @param {number} fromMs @param {number} toMs @returns {Column[]}
 */
export function cut(columns, fromMs, toMs) {
  const first = columns[0]?.[0] ?? 0;
  const last = columns.at(-1)?.[0] ?? 0;
  const [from, to] = [Math.max(fromMs, first), Math.min(toMs, last)];
  if (from >= to) return [];
  const inside = columns.filter(([ms]) => ms > from && ms < to);
  return [[from, ...nestAt(columns, from)], ...inside, [to, ...nestAt(columns, to)]];
}

/** A stage along the line. @param {Column[]} columns @param {number} series @returns {Point[]} */
export const laneOf = (columns, series) => columns.map(([ms, ...ranges]) => ({ ms, range: ranges[series] ?? NOTHING }));

/** @typedef {{ms: number, number: number | null, found: boolean}} Mark `number`: where workers were counted */

/**
 * What was seen of a stage: a number of workers, or whether there was any. A look that says larvae does not say how
 * old they are: it stands with the large ones.
 * @param {import('./overlay.js').EventRow[]} counts @param {(typeof SERIES)[number]} stage @returns {Mark[]}
 */
export function seenIn(counts, stage) {
  /** @type {Mark[]} */
  const marks = [];
  for (const { happened_ms, set } of counts) {
    const ms = happened_ms ?? 0;
    const number = stage === 'workers' ? set.workers : null;
    const word = stage === 'large_larvae' ? set.larvae : stage === 'eggs' || stage === 'pupae' ? set[stage] : null;
    if (typeof number === 'number') marks.push({ ms, number, found: number > 0 });
    else if (word) marks.push({ ms, number: null, found: word !== 'none' });
  }
  return marks;
}

/**
 * The first of each month between two instants, where the line is marked.
 * @param {number} fromMs @param {number} toMs
 */
export function months(fromMs, toMs) {
  const first = new Date(fromMs);
  const found = [];
  for (let month = first.getMonth() + 1; ; month += 1) {
    const ms = new Date(first.getFullYear(), month, 1).getTime();
    if (ms > toMs) return found;
    found.push(ms);
  }
}
