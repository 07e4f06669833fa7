// Instants as events carry them: ISO 8601 with the phone's own UTC offset.

/** @param {Date} when @returns {string} e.g. 2026-05-01T18:30:00.000+02:00 */
export function withOffset(when) {
  const minutes = -when.getTimezoneOffset();
  const local = new Date(when.getTime() + minutes * 60_000).toISOString().slice(0, -1);
  const two = (/** @type {number} */ n) => String(Math.floor(Math.abs(n))).padStart(2, '0');
  return `${local}${minutes < 0 ? '-' : '+'}${two(minutes / 60)}:${two(minutes % 60)}`;
}

/** The local calendar day. @param {Date} when @returns {string} */
export const dayOf = (when) => withOffset(when).slice(0, 10);

/** Midnight at the end of the local day, in ms. @param {Date} when */
export function endOfDayMs(when) {
  return new Date(when.getFullYear(), when.getMonth(), when.getDate() + 1).getTime();
}

/** A difference below this is the network's delay and no wrong clock. */
const DELAY_MS = 60_000;

/**
 * An instant of this phone's clock, as the server would have it.
 * @param {number} ms
 * @param {number} skew_ms server time minus the phone's
 */
export const setRight = (ms, skew_ms) => (Math.abs(skew_ms) < DELAY_MS ? ms : ms + skew_ms);
