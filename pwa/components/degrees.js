// Temperatures in the degrees that the reader is used to. What is stored and sent is always °C.

/** Where the weather is told in °F (Unicode CLDR, unit preferences; from memory). */
const FAHRENHEIT = ['BS', 'BZ', 'KY', 'PR', 'PW', 'US'];

/**
 * Whether this phone shows °F: as chosen under House, else by its region.
 * @param {string | null} [choice] `c`, `f` or nothing
 * @param {string} [language]
 */
export function fahrenheit(choice = localStorage.getItem('degrees'), language = navigator.language) {
  return choice ? choice === 'f' : FAHRENHEIT.includes(new Intl.Locale(language).region ?? '');
}

/** @param {number} c */
const toF = (c) => c * 1.8 + 32;

/**
 * A text with every "22 °C" and "20 to 25 °C" in whole °F, where °F is shown; no line ends before the degrees.
 * @param {string} text
 * @param {boolean} [f]
 */
export function inDegrees(text, f = fahrenheit()) {
  if (!f) return text.replaceAll(' °C', '\u00a0°C');
  const whole = (/** @type {string} */ c) => String(Math.round(toF(Number(c))));
  return text
    .replace(
      /(?:(-?[\d.]+) to )?(-?[\d.]*\d) °C/g,
      (_all, low, c) => `${low ? `${whole(low)} to ` : ''}${whole(c)}\u00a0°F`,
    )
    .replaceAll('°C', '°F');
}

/**
 * What stands in a field for a stored temperature; a typed °F comes back as it was typed.
 * @param {number | null | undefined} c
 * @param {boolean} [f]
 */
export const typedOf = (c, f = fahrenheit()) =>
  c == null ? '' : String(f ? Math.round(toF(c) * 10) / 10 : Math.round(c * 100) / 100);

/**
 * The °C to store for what a field says; as it was where nobody changed it.
 * @param {number | null} typed
 * @param {number | null} [was]
 * @param {boolean} [f]
 */
export function storedOf(typed, was = null, f = fahrenheit()) {
  if (typed === null) return null;
  if (typedOf(was, f) === String(typed)) return was;
  return f ? Math.round(((typed - 32) / 1.8) * 1e4) / 1e4 : typed;
}

/** A stored temperature in words: what was typed in °C in whole °F. @param {number} c @param {boolean} [f] */
export function temperature(c, f = fahrenheit()) {
  if (!f) return `${Math.round(c * 10) / 10} °C`;
  return Number.isInteger(Math.round(c * 1e6) / 1e5) ? inDegrees(`${c} °C`, f) : `${typedOf(c, f)} °F`;
}
