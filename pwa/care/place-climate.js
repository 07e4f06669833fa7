// How warm and moist a place was, day by day: what was measured, else what was typed, else what was set. Pure.
import { DAY_MS } from './rules.js';

/**
 * A day of a place. `basis`: by sensors, by a reading of that day, or by the setting; null values: nobody can say.
 * @typedef {{on: string, mean: number | null, low: number | null, high: number | null,
 *   basis: 'measured' | 'typed' | 'assumed'}} PlaceDay
 * @typedef {'temperature' | 'humidity'} Measure
 * @typedef {import('./overlay.js').ShownRow<'place'>['set']} PlaceFields
 * @typedef {import('./overlay.js').ShownRow<'place_day'>['set']} DayFields
 * @typedef {{on: string, temperature_c?: number | null, humidity_pct?: number | null}} Typed a reading and its day
 */

/**
 * The last `count` days up to `today`, oldest first.
 * @param {string} today @param {number} count @returns {string[]}
 */
export const daysUpTo = (today, count) =>
  Array.from({ length: count }, (_, i) =>
    new Date(Date.parse(today) - (count - 1 - i) * DAY_MS).toISOString().slice(0, 10),
  );

/**
 * @param {{days: string[], measured: DayFields[], typed: Typed[], place: PlaceFields, measure: Measure}} known
 * @returns {PlaceDay[]}
 */
export function placeClimate({ days, measured, typed, place, measure }) {
  const rows = new Map(measured.map((row) => [row.on, row]));
  const set = setting(place, measure);
  return days.map((on) => {
    const row = rows.get(on);
    const seen = row && numbersOf(row, measure);
    if (seen && seen.mean !== null) return { on, ...seen, basis: 'measured' };
    const read = typed.filter((one) => one.on === on).flatMap((one) => valueOf(one, measure) ?? []);
    if (read.length) return { on, mean: meanOf(read), low: null, high: null, basis: 'typed' };
    return { on, mean: set, low: null, high: null, basis: 'assumed' };
  });
}

/**
 * Weeks of seven days, each counted under its first day; what was measured or typed goes before what is assumed.
 * @param {PlaceDay[]} days @returns {PlaceDay[]}
 */
export function byWeek(days) {
  const weeks = Array.from({ length: Math.ceil(days.length / 7) }, (_, i) => days.slice(i * 7, i * 7 + 7));
  return weeks.flatMap((week) => {
    const first = week[0];
    if (!first) return [];
    const basis = ORDER.find((each) => week.some((day) => day.basis === each && day.mean !== null)) ?? 'assumed';
    const told = week.filter((day) => day.basis === basis);
    return {
      on: first.on,
      mean: meanOf(told.flatMap((day) => day.mean ?? [])),
      low: endOf(Math.min, told, 'low'),
      high: endOf(Math.max, told, 'high'),
      basis,
    };
  });
}

/**
 * What suits all of these species, in °C: from the highest low end to the lowest high end; null where nothing does.
 * @param {Array<[number, number]>} ranges @returns {[number, number] | null}
 */
export function comfortOf(ranges) {
  const low = Math.max(...ranges.map((range) => range[0]));
  const high = Math.min(...ranges.map((range) => range[1]));
  return ranges.length && low < high ? [low, high] : null;
}

/**
 * The measured warmth of a place between two instants, by the day or, from `WEEKLY` days on, by the week, as a shape of
 * shares of a height, with its least and most in °C; null where too little was measured to be a shape.
 * @param {DayFields[]} measured @param {number} fromMs @param {number} toMs
 * @returns {{shape: Array<[number, number]>, low: number, high: number} | null}
 */
export function warmthBehind(measured, fromMs, toMs) {
  const days = measured
    .filter(({ on, mean_c }) => typeof mean_c === 'number' && Date.parse(on) >= fromMs && Date.parse(on) <= toMs)
    .sort((a, b) => (a.on < b.on ? -1 : 1))
    .map((row) => ({ on: row.on, ...numbersOf(row, 'temperature'), basis: /** @type {const} */ ('measured') }));
  const told = days.length < WEEKLY ? days : byWeek(days);
  const means = told.map(({ mean }) => mean ?? 0);
  if (told.length < LEAST_SHAPE) return null;
  const [low, high] = [Math.min(...means), Math.max(...means)];
  const share = (/** @type {number} */ mean) =>
    LOWEST_SHARE + (0.9 - LOWEST_SHARE) * ((mean - low) / (high - low || 1));
  return { shape: told.map(({ on, mean }) => [Date.parse(on), share(mean ?? 0)]), low, high };
}

const WEEKLY = 60;
const LEAST_SHAPE = 5;
const LOWEST_SHARE = 0.15;

/** @type {Array<PlaceDay['basis']>} */
const ORDER = ['measured', 'typed', 'assumed'];

/** @param {DayFields} row @param {Measure} measure */
const numbersOf = (row, measure) =>
  measure === 'temperature'
    ? { mean: row.mean_c ?? null, low: row.low_c ?? null, high: row.high_c ?? null }
    : { mean: row.humidity_pct ?? null, low: row.humidity_low_pct ?? null, high: row.humidity_high_pct ?? null };

/** @param {Typed} one @param {Measure} measure */
const valueOf = (one, measure) => (measure === 'temperature' ? one.temperature_c : one.humidity_pct);

/** The setting, of the two halves of a day their mean. @param {PlaceFields} place @param {Measure} measure */
function setting(place, measure) {
  if (measure === 'humidity') return place.humidity_pct ?? null;
  return meanOf([place.day_temp_c, place.night_temp_c].flatMap((c) => c ?? []));
}

/** @param {number[]} values */
const meanOf = (values) => (values.length ? values.reduce((sum, value) => sum + value, 0) / values.length : null);

/** @param {(...values: number[]) => number} end @param {PlaceDay[]} days @param {'low' | 'high'} which */
function endOf(end, days, which) {
  const values = days.flatMap((day) => day[which] ?? []);
  return values.length ? end(...values) : null;
}
