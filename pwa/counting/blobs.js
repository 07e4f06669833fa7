// Blobs at every size: maxima of differences of Gaussians over place and scale. Pure.
//
// T. Lindeberg, "Feature detection with automatic scale selection", Int. J. Computer Vision 30(2):79-116, 1998: a blob
// answers most at the scale that fits it. D. G. Lowe, "Distinctive image features from scale-invariant keypoints",
// Int. J. Computer Vision 60(2):91-110, 2004: the difference of two blurs, a factor apart, stands for the Laplacian.
import { at, blurred } from './grey.js';

/** @typedef {import('./grey.js').Grey} Grey */
/** @typedef {{x: number, y: number, sigma_px: number, strength: number}} Blob in px of the picture looked at */

/** How far apart the blurs of a difference are. Lowe: 2^(1/3) and less; the answer of a wider step is steadier. */
const RATIO = 1.6;

/**
 * The scales that are looked at, from `low_px` until one is at least `high_px`.
 * @param {number} low_px @param {number} high_px @param {number} [ratio]
 */
export function scales(low_px, high_px, ratio = RATIO) {
  const steps = Math.max(1, Math.ceil(Math.log(high_px / low_px) / Math.log(ratio)) + 1);
  return Array.from({ length: steps }, (_, i) => low_px * ratio ** i);
}

/**
 * Differences of Gaussians, normalised so that a blob answers alike at every scale.
 * @param {Grey} grey in which blobs are bright @param {number[]} sigmas_px @param {number} [ratio]
 * @returns {Grey[]} one a scale
 */
export function differences(grey, sigmas_px, ratio = RATIO) {
  /** @type {Grey[]} */
  const blurs = [];
  let last_px = 0;
  let last = grey;
  for (const sigma_px of [...sigmas_px, /** @type {number} */ (sigmas_px.at(-1)) * ratio]) {
    // a blur of a blur: variances add up
    last = blurred(last, Math.sqrt(sigma_px ** 2 - last_px ** 2));
    last_px = sigma_px;
    blurs.push(last);
  }
  return sigmas_px.map((_, i) => {
    const [fine, coarse] = /** @type {[Grey, Grey]} */ ([blurs[i], blurs[i + 1]]);
    // in place of the finer blur, which nothing needs any more
    const { data } = fine;
    for (let n = 0; n < data.length; n += 1) data[n] = (at(data, n) - at(coarse.data, n)) / (ratio - 1);
    return fine;
  });
}

/**
 * The places that answer more than all around them, in place and scale; the outermost line of pixels is left out.
 * @param {Grey} grey in which blobs are bright @param {number[]} sigmas_px @param {number} least strength
 * @param {number} [ratio]
 * @returns {Blob[]} the strongest first
 */
export function blobsIn(grey, sigmas_px, least, ratio = RATIO) {
  return topsOf(differences(grey, sigmas_px, ratio), least)
    .map(({ x, y, strength, scale }) => ({ x, y, strength, sigma_px: /** @type {number} */ (sigmas_px[scale]) }))
    .sort((a, b) => b.strength - a.strength);
}

/**
 * The same with a size between those that are looked at: the top of the parabola through the answers of the scale and
 * its neighbours (Lowe 2004, section 4, along the scale alone).
 * @param {Grey} grey @param {number[]} sigmas_px @param {number} least @param {number} ratio
 * @returns {Array<{scale: number, sigma_px: number, strength: number}>} `scale`: which of those that are looked at
 */
export function sizedBlobs(grey, sigmas_px, least, ratio) {
  const levels = differences(grey, sigmas_px, ratio);
  return topsOf(levels, least).map(({ x, y, strength, scale }) => {
    const place = y * grey.width + x;
    const finer = levels[scale - 1]?.data[place];
    const coarser = levels[scale + 1]?.data[place];
    const bend = (finer ?? 0) - 2 * strength + (coarser ?? 0);
    const inner = finer !== undefined && coarser !== undefined && bend < 0;
    const off = inner ? Math.max(-0.5, Math.min(0.5, (finer - coarser) / (2 * bend))) : 0;
    return { scale, strength, sigma_px: /** @type {number} */ (sigmas_px[scale]) * ratio ** off };
  });
}

/** @param {Grey[]} levels one a scale @param {number} least */
function topsOf(levels, least) {
  return levels.flatMap((level, scale) => {
    const others = [levels[scale - 1], levels[scale + 1]].filter((each) => each !== undefined);
    return topsIn(level, least)
      .filter(({ x, y, strength }) =>
        others.every((each) => !isHigher(each.data, y * level.width + x, level.width, strength)),
      )
      .map((top) => ({ ...top, scale }));
  });
}

/**
 * The places of a picture that are above `least` and all around them, the highest first; none at its edge.
 * @param {Grey} grey @param {number} least
 * @returns {Array<{x: number, y: number, strength: number}>}
 */
export function topsIn({ data, width, height }, least) {
  const tops = [];
  for (let y = 1; y < height - 1; y += 1) {
    for (let x = 1, i = y * width + 1; x < width - 1; x += 1, i += 1) {
      const strength = at(data, i);
      if (strength > least && isTop(data, i, width, strength)) tops.push({ x, y, strength });
    }
  }
  return tops.sort((a, b) => b.strength - a.strength);
}

/** Whether nothing beside is higher; of equals the first in reading order stands. @param {Float32Array} data
 * @param {number} i not at the edge @param {number} width @param {number} strength */
const isTop = (data, i, width, strength) =>
  strength > at(data, i - 1) &&
  strength >= at(data, i + 1) &&
  strength > at(data, i - width) &&
  strength >= at(data, i + width) &&
  strength > at(data, i - width - 1) &&
  strength > at(data, i - width + 1) &&
  strength >= at(data, i + width - 1) &&
  strength >= at(data, i + width + 1);

/** Whether something is higher there or beside. @param {Float32Array} data @param {number} i not at the edge
 * @param {number} width @param {number} strength */
function isHigher(data, i, width, strength) {
  for (let row = i - width; row <= i + width; row += width) {
    if (at(data, row - 1) > strength || at(data, row) > strength || at(data, row + 1) > strength) return true;
  }
  return false;
}
