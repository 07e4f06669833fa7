// Warmth and volumes in the units that the reader is used to. What is stored and sent is always °C and mL.
import { numeral } from './shown.js';

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

/** A number of a measure, its unit on the same line. @param {string} value @param {string} unit */
const withUnit = (value, unit) => `${value}\u00a0${unit}`;

/** What temperatures are shown in. @param {boolean} [f] */
export const degreeUnit = (f = fahrenheit()) => (f ? '°F' : '°C');

/** A temperature in a message: to a tenth of °C, or in whole °F. @param {number} c @param {boolean} [unit] with it
 * @param {boolean} [f]
 */
export function degrees(c, unit = true, f = fahrenheit()) {
  const value = f ? numeral(toF(c), 0) : numeral(c, 1);
  return unit ? withUnit(value, degreeUnit(f)) : value;
}

/**
 * Each "22 °C" of a text that the server made, as it is shown here. Such a text, an answer of a calculator or why
 * something could not be, comes worded in the reader's language without the numbers beside it.
 * @param {string} text @param {boolean} [f]
 */
export const inDegrees = (text, f = fahrenheit()) =>
  text.replaceAll(/(-?\d+(?:[.,]\d+)?)\s°C/g, (_all, c) => degrees(Number(c.replace(',', '.')), true, f));

/** How far two temperatures lie apart. @param {number} c @param {boolean} [f] */
export const apart = (c, f = fahrenheit()) => withUnit(numeral(f ? c * 1.8 : c, 1), degreeUnit(f));

/** Where kitchens measure in fluid ounces (Unicode CLDR, unit preferences; from memory). */
const OUNCES = ['US', 'PR'];
const ML_PER_FL_OZ = 29.5735;
/** What is less is measured with a syringe or counted in drops, and those are marked in mL everywhere. */
const LEAST_ML = 5;

/** Whether volumes are shown in fluid ounces, too. @param {string | null} [choice] `ml`, `floz` or nothing
 * @param {string} [language]
 */
export const ounces = (choice = localStorage.getItem('volumes'), language = navigator.language) =>
  choice ? choice === 'floz' : OUNCES.includes(new Intl.Locale(language).region ?? '');

/** A volume; a syringe beside the cup is marked in mL, so these stand there in any case.
 * @param {number} ml @param {boolean} [oz]
 */
export function volume(ml, oz = ounces()) {
  const metric = withUnit(numeral(ml), 'mL');
  return oz && ml >= LEAST_ML ? `${withUnit(numeral(ml / ML_PER_FL_OZ, 1), 'fl oz')} (${metric})` : metric;
}

/** What a field that asks for a volume asks in. @param {boolean} [oz] */
export const volumeUnit = (oz = ounces()) => (oz ? 'fl_oz' : 'ml');

/**
 * What stands in such a field for stored mL; typed fluid ounces come back as they were typed.
 * @param {number | null | undefined} ml @param {boolean} [oz]
 */
export const typedVolume = (ml, oz = ounces()) => (ml == null ? '' : String(oz ? hundredths(ml / ML_PER_FL_OZ) : ml));

/**
 * The mL to store for what a field says; as they were where nobody changed it.
 * @param {number | null} typed @param {number | null} [was] @param {boolean} [oz]
 */
export function storedVolume(typed, was = null, oz = ounces()) {
  if (typed === null || !oz) return typed;
  return typedVolume(was, oz) === String(typed) ? was : hundredths(typed * ML_PER_FL_OZ);
}

/** @param {number} value */
const hundredths = (value) => Math.round(value * 100) / 100;

/**
 * What stands in a field for a stored temperature; a typed °F comes back as it was typed.
 * @param {number | null | undefined} c
 * @param {boolean} [f]
 */
export const typedOf = (c, f = fahrenheit()) =>
  c == null ? '' : String(f ? Math.round(toF(c) * 10) / 10 : hundredths(c));

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

/**
 * A stored temperature in words: whole tenths of °C, as they are typed, in whole °F; anything else was typed in °F and
 * shows so.
 * @param {number} c @param {boolean} [f]
 */
export function temperature(c, f = fahrenheit()) {
  const typed_in_c = Number.isInteger(Math.round(c * 1e6) / 1e5);
  return f && !typed_in_c ? withUnit(numeral(Number(typedOf(c, f)), 1), degreeUnit(f)) : degrees(c, true, f);
}
