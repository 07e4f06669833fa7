// Bodies: blobs in a row, as head, thorax and gaster are, joined by direction and distance. Pure.
//
// Blobs say where to look. Around each, every direction is tried; the body that explains most of what is dark there is
// taken, and what it explains is taken away before the next is looked for, so that one of two that touch is left for
// the second (matching pursuit: S. G. Mallat, Z. Zhang, IEEE Trans. Signal Processing 41(12):3397-3415, 1993).
import { blobsIn, scales, topsIn } from './blobs.js';
import { at, blurred } from './grey.js';

/** @typedef {import('./grey.js').Grey} Grey */
/**
 * A body: its middle in px, its direction in radians (0 to π), and how dark it is against what lies around it.
 * @typedef {{x: number, y: number, angle: number, strength: number}} Body
 */

/** All in bodies' lengths: the blobs that are looked for, and how far legs and noise are blurred away. */
const FINEST = 0.09;
const WIDEST = 0.14;
const BLUR = 0.06;
/** Where along its axis a body is looked at, and how far beside and beyond it should be free. */
const ALONG = [-0.36, -0.24, -0.12, 0, 0.12, 0.24, 0.36];
const BESIDE = 0.27;
const BEYOND = 0.62;
/** What dark places beside and beyond a body take from it (chosen on rendered tubes of other seeds than are judged). */
const BESIDE_COSTS = 0.45;
const BEYOND_COSTS = 0.2;
const DIRECTIONS = 16;
/** A blob may be the middle of a body or either end. */
const SHIFTS = [-0.26, -0.13, 0, 0.13, 0.26];
/** Half the length and width of what a body explains whole, and how many times as far out that ends. */
const EXPLAINED = { long: 0.5, wide: 0.16, fade: 1.45 };
/** What is weaker than this share of the plainest bodies is none. */
const WEAKEST = 0.25;
const MOST_BLOBS = 4000;
const MOST_BODIES = 2000;
/** What is this far along both ways, without a gap, is a scratch or the edge of the glass. */
const SCRATCH = { from: 0.5, to: 1.3, step: 0.08, aside: 0.12, share: 0.55 };
/** Whoever looks around a blob looks no farther than this. */
const REACH = 1.2;

/**
 * The bodies in a picture, in the order in which they were found: the plainest first.
 * @param {Grey} dark how dark each place is against what lies around it @param {number} body_px the length of a body
 * @param {number} least strength
 * @returns {Body[]}
 */
export function bodiesIn(dark, body_px, least) {
  const margin = Math.ceil(REACH * body_px);
  const whole = padded(blurred(dark, BLUR * body_px), margin);
  const left = { ...whole, data: whole.data.slice() };
  const ways = waysOf(body_px, left.width);
  /** @type {Body[]} */
  const found = [];
  const blobs = blobsIn(whole, scales(FINEST * body_px, WIDEST * body_px), least / 2);
  const seeds = seedsOf(left, blobs, ways, least);
  const floor = Math.max(least, WEAKEST * thirdOf(seeds));
  pursue(whole, left, seeds, ways, { body_px, least: floor, found });
  // what the first look left of a crowd is darkest somewhere
  pursue(whole, left, seedsOf(left, topsIn(left, floor), ways, floor), ways, { body_px, least: floor, found });
  return found.map((body) => ({ ...body, x: body.x - margin, y: body.y - margin }));
}

/** @param {Grey} left @param {Array<{x: number, y: number}>} places the most telling first @param {Way[]} ways
 * @param {number} least @returns {Seed[]} */
function seedsOf(left, places, ways, least) {
  return places
    .slice(0, MOST_BLOBS)
    .map(({ x, y }) => ({ x, y, best: bestAround(left, x, y, ways) }))
    .filter((seed) => (seed.best?.strength ?? 0) > least);
}

/** The third strongest: one or two may be anything. @param {Seed[]} seeds */
function thirdOf(seeds) {
  const strengths = seeds.map((seed) => seed.best?.strength ?? 0).sort((a, b) => b - a);
  return strengths[2] ?? 0;
}

/** @param {Grey} grey @param {number} margin in px, filled with nothing @returns {Grey} */
function padded(grey, margin) {
  const width = grey.width + 2 * margin;
  const height = grey.height + 2 * margin;
  const data = new Float32Array(width * height);
  for (let y = 0; y < grey.height; y += 1) {
    data.set(grey.data.subarray(y * grey.width, (y + 1) * grey.width), (y + margin) * width + margin);
  }
  return { data, width, height };
}

/**
 * Where a body that lies in one direction is looked at, as distances in the row of all pixels.
 * @typedef {object} Way
 * @property {number} angle
 * @property {number} du one body's length along, in px
 * @property {number} dv
 * @property {Array<[number, number]>} shifts to where its middle may be, in whole px
 * @property {Int32Array} along
 * @property {Int32Array} beside
 * @property {Int32Array} beyond
 */

/** @param {number} body_px @param {number} width of the padded picture @returns {Way[]} */
function waysOf(body_px, width) {
  return Array.from({ length: DIRECTIONS }, (_, i) => {
    const angle = (i * Math.PI) / DIRECTIONS;
    const du = Math.cos(angle) * body_px;
    const dv = Math.sin(angle) * body_px;
    /** @param {number} t along @param {number} s aside */
    const to = (t, s) => Math.round(t * dv + s * du) * width + Math.round(t * du - s * dv);
    return {
      angle,
      du,
      dv,
      shifts: SHIFTS.map((t) => [Math.round(t * du), Math.round(t * dv)]),
      along: Int32Array.from(ALONG, (t) => to(t, 0)),
      beside: Int32Array.from(ALONG.flatMap((t) => [to(t, -BESIDE), to(t, BESIDE)])),
      beyond: Int32Array.of(to(-BEYOND, 0), to(BEYOND, 0)),
    };
  });
}

/** @typedef {{x: number, y: number, best: Body | null}} Seed */

/**
 * Take body after body until none is strong enough.
 * @param {Grey} whole @param {Grey} left what no body explains yet; changed @param {Seed[]} seeds @param {Way[]} ways
 * @param {{body_px: number, least: number, found: Body[]}} told `found` is added to
 */
function pursue(whole, left, seeds, ways, { body_px, least, found }) {
  const reach = (REACH * body_px) ** 2;
  const near = (/** @type {number} */ u, /** @type {number} */ v) => u * u + v * v < reach;
  while (found.length < MOST_BODIES) {
    /** @type {Body | null} */
    let next = null;
    for (const { best } of seeds) if (best && best.strength > (next?.strength ?? least)) next = best;
    if (!next) return;
    if (!isScratch(whole, next, body_px)) found.push(next);
    takeAway(left, next, body_px);
    for (const seed of seeds) {
      if (seed.best && near(seed.x - next.x, seed.y - next.y)) {
        seed.best = bestAround(left, seed.x, seed.y, ways);
      }
    }
  }
}

/** @param {Grey} left padded @param {number} x @param {number} y @param {Way[]} ways @returns {Body | null} */
function bestAround({ data, width, height }, x, y, ways) {
  /** @type {Body | null} */
  let best = null;
  let most = 0;
  for (const way of ways) {
    for (const [u, v] of way.shifts) {
      if (x + u < 0 || y + v < 0 || x + u >= width || y + v >= height) continue;
      const middle = (y + v) * width + x + u;
      const along = sumAt(data, middle, way.along) / way.along.length;
      // what lies beside and beyond can only take from it
      if (along <= most) continue;
      const strength = along - costsAt(data, middle, way);
      if (strength <= most) continue;
      most = strength;
      best = { x: x + u, y: y + v, angle: way.angle, strength };
    }
  }
  return best;
}

/** What is dark beside and beyond a body. @param {Float32Array} data @param {number} middle @param {Way} way */
function costsAt(data, middle, { beside, beyond }) {
  return (
    (BESIDE_COSTS * sumAt(data, middle, beside)) / beside.length +
    (BEYOND_COSTS * sumAt(data, middle, beyond)) / beyond.length
  );
}

/** @param {Float32Array} data @param {number} middle @param {Int32Array} places */
function sumAt(data, middle, places) {
  let sum = 0;
  for (let i = 0; i < places.length; i += 1) sum += data[middle + /** @type {number} */ (places[i])] ?? 0;
  return sum;
}

/** Whether it is part of a straight line that goes on both ways. @param {Grey} whole @param {Body} body
 * @param {number} body_px */
function isScratch(whole, { x, y, angle, strength }, body_px) {
  const du = Math.cos(angle) * body_px;
  const dv = Math.sin(angle) * body_px;
  for (let t = SCRATCH.from; t <= SCRATCH.to; t += SCRATCH.step) {
    for (const way of [-t, t]) {
      let most = 0;
      for (const aside of [-SCRATCH.aside, 0, SCRATCH.aside]) {
        most = Math.max(most, valueAt(whole, x + way * du - aside * dv, y + way * dv + aside * du));
      }
      if (most < SCRATCH.share * strength) return false;
    }
  }
  return true;
}

/** @param {Grey} grey @param {number} x @param {number} y of the nearest pixel; 0 outside */
function valueAt({ data, width, height }, x, y) {
  const column = Math.round(x);
  const row = Math.round(y);
  return column < 0 || row < 0 || column >= width || row >= height ? 0 : at(data, row * width + column);
}

/** @param {Grey} left changed @param {Body} body @param {number} body_px */
function takeAway({ data, width, height }, { x, y, angle }, body_px) {
  const reach = EXPLAINED.long * EXPLAINED.fade * body_px;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  for (let v = Math.max(0, Math.ceil(y - reach)); v <= Math.min(height - 1, y + reach); v += 1) {
    for (let u = Math.max(0, Math.ceil(x - reach)); u <= Math.min(width - 1, x + reach); u += 1) {
      const t = ((u - x) * cos + (v - y) * sin) / (EXPLAINED.long * body_px);
      const s = ((v - y) * cos - (u - x) * sin) / (EXPLAINED.wide * body_px);
      const off = Math.sqrt(t * t + s * s);
      if (off >= EXPLAINED.fade) continue;
      data[v * width + u] = off <= 1 ? 0 : (at(data, v * width + u) * (off - 1)) / (EXPLAINED.fade - 1);
    }
  }
}
