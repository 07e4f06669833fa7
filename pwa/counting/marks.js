// The dots of a picture as they stand: what was proposed and is plain enough, what the person drew and took away. Pure.

/** @typedef {import('./propose.js').Proposed} Proposed */
/** @typedef {'worker' | 'brood'} What */
/**
 * A dot that stands: where in px, what it is, how sure where it was proposed. `sort` and `index`: which of the
 * proposals, of the drawn or of the kept ones it is; `key`: both as one text.
 * @typedef {{key: string, sort: Sort, index: number, x: number, y: number, what: What, score: number | null}} Dot
 * @typedef {'proposed' | 'drawn' | 'kept'} Sort
 */
/**
 * `kept`: proposals that count whatever the threshold; `removed`: that never do; `drawn`: where none was proposed.
 * @typedef {{kept: Set<number>, removed: Set<number>, drawn: Array<{x: number, y: number, what: What}>}} Marks
 */
/** @typedef {import('./propose.js').Frame} Frame */

/** @returns {Marks} */
export const noMarks = () => ({ kept: new Set(), removed: new Set(), drawn: [] });

/** As many dots as a record keeps. */
export const MOST_DOTS = 1000;
/** Places are kept in so many parts of the picture's width and height. */
const PARTS = 10_000;
/** In the record: 0 a worker, 1 brood; 2 and 3 the same, drawn by hand. */
const SORTS = /** @type {const} */ (['worker', 'brood']);

/** @param {Sort} sort @param {number} index */
const known = (sort, index) => ({ key: `${sort}${index}`, sort, index });
/** The key of a dot that was drawn. @param {number} index */
export const keyOfDrawn = (index) => known('drawn', index).key;

/** @param {Frame} frame @param {{x: number, y: number}} place */
const isIn = (frame, { x, y }) => x >= frame.left && x <= frame.right && y >= frame.top && y <= frame.bottom;

/**
 * The dots that count now, row by row from the top, so that stepping through them goes as one reads.
 * @param {Proposed[]} proposed @param {Marks} marks @param {number} threshold @param {Frame} frame
 * @param {number} row_px how high a row is
 * @returns {Dot[]}
 */
export function standing(proposed, marks, threshold, frame, row_px) {
  const dots = /** @type {Dot[]} */ ([]);
  proposed.forEach(({ x, y, what, score }, i) => {
    const counts = marks.kept.has(i) || (score >= threshold && !marks.removed.has(i));
    if (counts) dots.push({ ...known('proposed', i), x, y, what, score });
  });
  marks.drawn.forEach(({ x, y, what }, i) => dots.push({ ...known('drawn', i), x, y, what, score: null }));
  const row = (/** @type {Dot} */ dot) => Math.floor(dot.y / row_px);
  return dots.filter((dot) => isIn(frame, dot)).sort((a, b) => row(a) - row(b) || a.x - b.x);
}

/**
 * The dot nearest to a place.
 * @template {{x: number, y: number}} D @param {D[]} dots @param {{x: number, y: number}} place @param {number} reach_px
 * @returns {D | null}
 */
export function nearest(dots, place, reach_px) {
  let best = null;
  let least = reach_px;
  for (const dot of dots) {
    const apart = Math.hypot(dot.x - place.x, dot.y - place.y);
    if (apart <= least) [best, least] = [dot, apart];
  }
  return best;
}

/** Take a dot away. @param {Marks} marks @param {{sort: Sort, index: number}} dot @returns {Marks} */
export function without(marks, { sort, index }) {
  if (sort === 'drawn') return { ...marks, drawn: marks.drawn.filter((_, n) => n !== index) };
  return { ...marks, kept: minus(marks.kept, index), removed: new Set(marks.removed).add(index) };
}

/** @param {Set<number>} set @param {number} i */
const minus = (set, i) => new Set([...set].filter((each) => each !== i));

/**
 * Add one: a proposal that was too weak, where there is one within reach, else a dot of the person's own.
 * @param {Marks} marks @param {Proposed[]} proposed @param {{x: number, y: number}} place @param {What} what
 * @param {number} reach_px
 * @returns {Marks}
 */
export function plus(marks, proposed, place, what, reach_px) {
  const near = nearest(
    proposed.filter((each) => each.what === what),
    place,
    reach_px,
  );
  if (!near) return { ...marks, drawn: [...marks.drawn, { ...place, what }] };
  const i = proposed.indexOf(near);
  return { ...marks, kept: new Set(marks.kept).add(i), removed: minus(marks.removed, i) };
}

/** Move a dot; one that was proposed becomes the person's own. @param {Marks} marks @param {Dot} dot @param {number} u
 * @param {number} v @returns {{marks: Marks, key: string}} */
export function moved(marks, dot, u, v) {
  const left = without(marks, dot);
  const drawn = [...left.drawn, { x: dot.x + u, y: dot.y + v, what: dot.what }];
  return { marks: { ...left, drawn }, key: keyOfDrawn(drawn.length - 1) };
}

/** As a record keeps them. @param {Dot[]} dots @param {{width_px: number, height_px: number}} size */
export const asKept = (dots, { width_px, height_px }) =>
  dots
    .slice(0, MOST_DOTS)
    .map(({ x, y, what, score }) => [
      part(x / width_px),
      part(y / height_px),
      SORTS.indexOf(what) + (score === null ? SORTS.length : 0),
    ]);

/** @param {number} share */
const part = (share) => Math.round(PARTS * Math.min(1, Math.max(0, share)));

/**
 * The dots that a record keeps, in px; what is of a newer app is left out.
 * @param {number[][] | null | undefined} kept @param {{width_px: number, height_px: number}} size
 * @returns {Dot[]}
 */
export function fromKept(kept, { width_px, height_px }) {
  return (kept ?? []).flatMap(([x, y, code], i) => {
    const what = SORTS[(code ?? -1) % SORTS.length];
    if (x === undefined || y === undefined || code === undefined || !what || code >= 2 * SORTS.length) return [];
    const place = { x: (x / PARTS) * width_px, y: (y / PARTS) * height_px };
    return [{ ...known('kept', i), ...place, what, score: code < SORTS.length ? 1 : null }];
  });
}

/**
 * The marks with which proposals come to the dots that were kept.
 * @param {Proposed[]} proposed @param {Dot[]} kept @param {number} reach_px
 * @returns {Marks}
 */
export function marksOf(proposed, kept, reach_px) {
  const marks = { kept: new Set(), removed: new Set(proposed.keys()), drawn: /** @type {Marks['drawn']} */ ([]) };
  for (const { x, y, what } of kept) {
    const free = proposed.filter((each, i) => each.what === what && marks.removed.has(i));
    const near = nearest(free, { x, y }, reach_px);
    if (!near) {
      marks.drawn.push({ x, y, what });
      continue;
    }
    const i = proposed.indexOf(near);
    marks.kept.add(i);
    marks.removed.delete(i);
  }
  return marks;
}

/** @param {number[] | null | undefined} kept @param {{width_px: number, height_px: number}} size @returns {Frame} */
export function frameOf(kept, { width_px, height_px }) {
  const [left = 0, top = 0, right = PARTS, bottom = PARTS] = kept ?? [];
  const across = width_px / PARTS;
  const down = height_px / PARTS;
  return { left: left * across, top: top * down, right: right * across, bottom: bottom * down };
}

/** @param {Frame} frame @param {{width_px: number, height_px: number}} size @returns {number[]} */
export const frameKept = ({ left, top, right, bottom }, { width_px, height_px }) => [
  part(left / width_px),
  part(top / height_px),
  part(right / width_px),
  part(bottom / height_px),
];
