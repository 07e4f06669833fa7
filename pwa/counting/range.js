// How far a count on a picture may be off: from how sure the dots are, how they crowd, and past corrections. Pure.
//
// The ends are those between which four of five counts lie (80 %), as the census reads them; the constants were fitted
// on rendered tubes, and `python -m tests.bench.count_pictures` says how often they hold on others.

/**
 * A dot that counts. `score` is null where a person drew it.
 * @typedef {{x: number, y: number, score: number | null}} Counted
 */
/** @typedef {{number: number, at_least: number, low: number, high: number, crowded: boolean}} Range */
/** What was proposed and corrected in earlier pictures of the colony: dots that stood, were added, were taken away.
 * @typedef {{stood: number, added: number, removed: number}} Corrections */

/** How near the threshold a score is doubtful, and how often such a dot is none. These and what follows to the crowded
 * number were chosen on rendered tubes (tests/support/rendered_tubes.py). */
const DOUBT = 0.15;
const NONE_OF_DOUBTFUL = 0.35;
/** How often what lies just below the threshold is one all the same. */
const ONE_OF_WEAK = 0.3;
/** For each of these, how many lie above it and are none: noise that proposes much proposes some that looks plain. */
const NONE_BY_WEAK = 0.1;
/** Whoever has so many others within a body's length may hide one; how often, for each above that. */
const CROWD = 3;
const HIDES = 0.035;
/** From this share of dots in a crowd on, and this number, the picture itself is said to be crowded. */
const CROWDED_SHARE = 0.4;
const CROWDED_NUMBER = 80;
/** Ends of 80 % in deviations. */
const ENDS = 1.28;
/** What is always left: blurred, behind the cotton, in the glass's edge (common practice, no source). */
const ALWAYS = 0.02;
/** Of what persons correct so much is left uncorrected (common practice, no source). */
const UNSEEN = 0.3;

/**
 * @param {Counted[]} dots that count @param {Array<{score: number}>} weaker proposals below the threshold
 * @param {number} threshold @param {number} body_px @param {Corrections} [past]
 * @returns {Range}
 */
export function rangeOf(dots, weaker, threshold, body_px, past = { stood: 0, added: 0, removed: 0 }) {
  const number = dots.length;
  const isDoubtful = (/** @type {Counted} */ dot) => dot.score !== null && dot.score < threshold + DOUBT;
  const doubtful = dots.filter(isDoubtful).length;
  const weak = weaker.filter(({ score }) => score < threshold && score >= threshold - DOUBT).length;
  const neighbours = neighboursOf(dots, body_px);
  const inCrowd = neighbours.filter((many) => many > CROWD).length;
  const hidden = neighbours.reduce((sum, many) => sum + HIDES * Math.max(0, many - CROWD), 0);
  const judged = past.stood + past.added + past.removed;
  const unseen = judged ? (UNSEEN * (past.added + past.removed)) / judged : 0;
  const always = (ALWAYS + unseen) * number;
  const short = ENDS * Math.hypot(NONE_OF_DOUBTFUL * doubtful, NONE_BY_WEAK * weak, always);
  const over = ENDS * Math.hypot(ONE_OF_WEAK * weak, hidden, always);
  return {
    number,
    at_least: Math.max(0, Math.min(Math.floor(number - short), number - doubtful)),
    low: Math.max(0, Math.round(number - short)),
    high: Math.round(number + over),
    crowded: number >= CROWDED_NUMBER && inCrowd >= CROWDED_SHARE * number,
  };
}

/** How many others each has within a body's length. @param {Counted[]} dots @param {number} body_px */
function neighboursOf(dots, body_px) {
  const inRow = dots.map((dot, i) => ({ dot, i })).sort((a, b) => a.dot.x - b.dot.x);
  const many = dots.map(() => 0);
  inRow.forEach(({ dot, i }, place) => {
    for (let n = place + 1; n < inRow.length; n += 1) {
      const { dot: other, i: j } = /** @type {typeof inRow[number]} */ (inRow[n]);
      if (other.x - dot.x > body_px) break;
      if (Math.hypot(other.x - dot.x, other.y - dot.y) > body_px) continue;
      many[i] = (many[i] ?? 0) + 1;
      many[j] = (many[j] ?? 0) + 1;
    }
  });
  return many;
}
