// From which score on a proposed dot counts in this colony's pictures: learnt from what the person corrected. Pure.

/** Where nothing was learnt yet (chosen on rendered tubes of other seeds than are judged). */
export const USUAL_THRESHOLD = 0.5;
export const LOWEST = 0.25;
export const HIGHEST = 0.9;
const STEP = 0.01;
/** What was learnt before weighs as if so many dots a tenth off had been seen to be wrong. */
const BEFORE = 2;

/**
 * A dot that the person kept or drew themselves where one was proposed (`real`), or took away.
 * @typedef {{score: number, real: boolean}} Judged
 */

/**
 * The threshold that would have needed the fewest corrections, held back by what was learnt before.
 * @param {Judged[]} judged @param {number} [before]
 */
export function learntThreshold(judged, before = USUAL_THRESHOLD) {
  let best = before;
  let least = wrongAt(judged, before);
  const steps = Math.round((HIGHEST - LOWEST) / STEP);
  for (let i = 0; i <= steps; i += 1) {
    const threshold = Math.round((LOWEST + i * STEP) * 100) / 100;
    const wrong = wrongAt(judged, threshold) + BEFORE * ((threshold - before) / 0.1) ** 2;
    if (wrong < least - 1e-9) {
      least = wrong;
      best = threshold;
    }
  }
  return best;
}

/** How many would have been wrong. @param {Judged[]} judged @param {number} threshold */
const wrongAt = (judged, threshold) => judged.filter(({ score, real }) => real !== score >= threshold).length;

/**
 * What the corrections of a picture say of the dots that were proposed: each proposal within reach of a dot that stood
 * at the end was one, the others were none.
 * @param {Array<{x: number, y: number, score: number}>} proposed @param {Array<{x: number, y: number}>} stood
 * @param {number} reach_px
 * @returns {Judged[]}
 */
export function judgedBy(proposed, stood, reach_px) {
  const free = new Set(stood);
  return proposed.map(({ x, y, score }) => {
    let nearest = null;
    let least = reach_px;
    for (const dot of free) {
      const apart = Math.hypot(dot.x - x, dot.y - y);
      if (apart <= least) [nearest, least] = [dot, apart];
    }
    if (nearest) free.delete(nearest);
    return { score, real: nearest !== null };
  });
}
