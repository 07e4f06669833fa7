// How much darker, or lighter, each place is than what lies around it at the size of a body. Pure.
import { at, extreme } from './grey.js';

/** @typedef {import('./grey.js').Grey} Grey */

/** What is usual is looked for in squares of so many bodies' lengths. */
const SQUARE = 4;
/** So much of a square may be darker than what is usual in it: ants in a crowd. The rest is glass, cotton, glare. */
const USUAL = 0.7;
/** Half the side, in bodies' lengths, of what is filled: less than this must be free beside a body. */
const FILLED = 0.7;
const HALF = 0.5;
const BINS = 64;

/**
 * How dark each place is against what lies around it. What is brighter than usual there, glare on the glass and cotton,
 * is first brought down to the usual; then dark places that a square of about a body's length can pass over are filled
 * (a closing, here flat and square), and what was filled is the answer.
 * @param {Grey} grey @param {number} body_px @returns {Grey} from 0, in luminance
 */
export function darkness(grey, body_px) {
  const usual = usualLevel(grey, body_px, USUAL);
  const even = new Float32Array(grey.data.length);
  for (let i = 0; i < even.length; i += 1) even[i] = Math.min(at(grey.data, i), at(usual.data, i));
  return filledBy({ ...grey, data: even }, body_px);
}

/**
 * How light each place is, for brood: the same of the negative, with ants first brought up to the usual.
 * @param {Grey} grey @param {number} body_px @returns {Grey}
 */
export function lightness(grey, body_px) {
  const usual = usualLevel(grey, body_px, HALF);
  const even = new Float32Array(grey.data.length);
  for (let i = 0; i < even.length; i += 1) even[i] = 1 - Math.max(at(grey.data, i), at(usual.data, i));
  return filledBy({ ...grey, data: even }, body_px);
}

/** @param {Grey} grey @param {number} body_px @returns {Grey} */
function filledBy(grey, body_px) {
  const radius = Math.max(1, Math.round(FILLED * body_px));
  const closed = extreme(extreme(grey, radius, true), radius, false);
  const { data } = closed;
  for (let i = 0; i < data.length; i += 1) data[i] = at(data, i) - at(grey.data, i);
  return closed;
}

/** The usual luminance around each place: of squares, and between their middles in proportion.
 * @param {Grey} grey @param {number} body_px @param {number} share that is darker @returns {Grey} */
function usualLevel(grey, body_px, share) {
  const columns = Math.max(1, Math.round(grey.width / (SQUARE * body_px)));
  const rows = Math.max(1, Math.round(grey.height / (SQUARE * body_px)));
  const usual = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      usual[row * columns + column] = quantile(
        grey,
        Math.floor((column * grey.width) / columns),
        Math.floor((row * grey.height) / rows),
        Math.ceil(((column + 1) * grey.width) / columns),
        Math.ceil(((row + 1) * grey.height) / rows),
        share,
      );
    }
  }
  const data = new Float32Array(grey.data.length);
  for (let y = 0; y < grey.height; y += 1) {
    const v = between(((y + 0.5) * rows) / grey.height - 0.5, rows);
    for (let x = 0; x < grey.width; x += 1) {
      const u = between(((x + 0.5) * columns) / grey.width - 0.5, columns);
      const upper = mixed(at(usual, v.low * columns + u.low), at(usual, v.low * columns + u.high), u.share);
      const lower = mixed(at(usual, v.high * columns + u.low), at(usual, v.high * columns + u.high), u.share);
      data[y * grey.width + x] = mixed(upper, lower, v.share);
    }
  }
  return { data, width: grey.width, height: grey.height };
}

/** @param {number} a @param {number} b @param {number} share */
const mixed = (a, b, share) => a + (b - a) * share;

/** Between which two of so many places it lies. @param {number} place @param {number} many */
function between(place, many) {
  const inside = Math.min(many - 1, Math.max(0, place));
  const low = Math.floor(inside);
  return { low, high: Math.min(many - 1, low + 1), share: inside - low };
}

/** @param {Grey} grey @param {number} left @param {number} top @param {number} right @param {number} bottom
 * @param {number} share */
function quantile({ data, width }, left, top, right, bottom, share) {
  const counts = new Float32Array(BINS);
  let many = 0;
  for (let y = top; y < bottom; y += 1) {
    for (let x = left; x < right; x += 1) {
      const bin = Math.min(BINS - 1, Math.floor(at(data, y * width + x) * BINS));
      counts[bin] = at(counts, bin) + 1;
      many += 1;
    }
  }
  let below = 0;
  for (let bin = 0; bin < BINS; bin += 1) {
    below += at(counts, bin);
    if (below >= share * many) return (bin + 1) / BINS;
  }
  return 1;
}
