// Numbers, lists, days and measures as they are written in the language that is spoken, where this phone is.
import { SOURCE } from './language.js';

let spoken = SOURCE;
/** How it is written: a language, perhaps with a region. */
export const locale = () => spoken;
/** Formatters are kept: making one takes longer than its use. @type {Map<string, unknown>} */
let kept = new Map();

/** Write from now on as this language does. @param {string} tag */
export function speak(tag) {
  spoken = tag;
  kept = new Map();
}

/** @template T @param {string} name @param {() => T} make @returns {T} */
function keep(name, make) {
  const found = /** @type {T} */ (kept.get(name) ?? make());
  kept.set(name, found);
  return found;
}

/**
 * A figure as it is shown: two places at most, and two digits of what is smaller than 0.1, or it would read as none.
 * Halves go up. Server: languages/numbers.py, `rounded`.
 * @param {number} value @returns {[number, Intl.NumberFormatOptions]}
 */
export function rounded(value) {
  const small = value !== 0 && Math.abs(value) < 0.1;
  const places = small ? Math.min(9, 1 - Math.floor(Math.log10(Math.abs(value)))) : 2;
  return [toPlaces(value, places), { maximumFractionDigits: places }];
}

/** @param {number} value @param {number} places */
const toPlaces = (value, places) => Math.floor(value * 10 ** places + 0.5) / 10 ** places;

/** @param {number} value @param {Intl.NumberFormatOptions} style */
const written = (value, style) =>
  keep(`number ${style.maximumFractionDigits}`, () => new Intl.NumberFormat(spoken, style)).format(value);

/** A figure in words. @param {number} value @param {number} [places] at most; as `rounded` unless it is said */
export const numeral = (value, places) =>
  places === undefined
    ? written(...rounded(value))
    : written(toPlaces(value, places), { maximumFractionDigits: places });

/** Things that belong together: "a, b, and c". @param {string[]} all @returns {string} */
export const together = (all) => keep('and', () => new Intl.ListFormat(spoken, { type: 'conjunction' })).format(all);

/** One thing after the other: "a, b, c". @param {string[]} all @returns {string} */
export const listed = (all) => keep('list', () => new Intl.ListFormat(spoken, { type: 'unit' })).format(all);

/** @param {string} text */
export const capital = (text) => text.charAt(0).toLocaleUpperCase(spoken) + text.slice(1);

/** What a language is called by those who speak it. @param {string} tag */
export const nameOfLanguage = (tag) => {
  const name = new Intl.DisplayNames(tag, { type: 'language' }).of(tag) ?? tag;
  return name.charAt(0).toLocaleUpperCase(tag) + name.slice(1);
};

/**
 * Days and times as this phone writes them.
 * @param {Intl.DateTimeFormatOptions} style @returns {(when: number | string) => string} of ms, an ISO day or an ISO
 *   instant
 */
function writer(style) {
  const name = JSON.stringify(style);
  return (when) => {
    const date = new Date(typeof when === 'string' && when.length === 10 ? `${when}T12:00:00` : when);
    if (Number.isNaN(date.getTime())) return String(when);
    const here_min = new Date().getTimezoneOffset(); // the phone may travel while the app is open
    return keep(`${name} ${here_min}`, () => new Intl.DateTimeFormat(spoken, style)).format(date);
  };
}

export const timeOfDay = writer({ hour: '2-digit', minute: '2-digit' });
/** The day with its year. */
export const fullDay = writer({ dateStyle: 'medium' });
/** The day with its year, and the time. */
export const moment = writer({ dateStyle: 'medium', timeStyle: 'short' });
export const shortDay = writer({ day: 'numeric', month: 'short' });
/** The day with its month in full. */
export const dayOfMonth = writer({ day: 'numeric', month: 'long' });
/** The day in full, with its year. */
export const longDay = writer({ dateStyle: 'long' });
/** The weekday alone. */
export const nameOfDay = writer({ weekday: 'long' });
/** The day with its weekday and month in full. */
export const dayInFull = writer({ weekday: 'long', day: 'numeric', month: 'long' });
/** The same with its year. */
export const dayAndYear = writer({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' });
/** A day near today, by its weekday. */
export const nearDay = writer({ weekday: 'short', day: 'numeric' });
/** The day and the time, without the year. */
export const dayAndTime = writer({
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
});
/** The day with its weekday. */
export const weekDay = writer({ weekday: 'short', day: 'numeric', month: 'short' });
