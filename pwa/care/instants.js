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
