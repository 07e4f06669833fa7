// Numbers with the words that they count.

/** @param {number} n @param {string} one @param {string} [many] */
export const count = (n, one, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;

/** How long something is, in the largest unit that fits it. @param {number} min */
export function span(min) {
  if (min < 120) return count(Math.round(min), 'minute');
  return min < 2880 ? count(Math.round(min / 60), 'hour') : count(Math.round(min / 1440), 'day');
}
