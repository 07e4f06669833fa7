// How a place was over time, and the files of its sensors. Fetched when it is opened.
import { count } from './counted.js';

export const climateText = {
  which: 'What is drawn',
  span: 'For how long',
  temperature: 'Temperature',
  humidity: 'Humidity',
  spans: { days: 'Two weeks', weeks: 'Three months', year: 'A year' },
  nothing: 'Nothing was measured or logged here in this time, and nothing is set.',
  summary: (/** @type {string} */ mean, /** @type {string} */ low, /** @type {string} */ high) =>
    `${mean} on average, ${low} to ${high}.`,
  measured: (/** @type {number} */ n, /** @type {number} */ all) =>
    n === all ? 'All of it was measured or read.' : `${n} of ${count(all, 'day')} measured or read.`,
  key: 'The shade goes from the least to the most of a day. Dashed: assumed, as it is set.',
  key_weeks: 'The shade goes from the least to the most of a week. Dashed: assumed, as it is set.',
  comfort: (/** @type {string} */ low, /** @type {string} */ high) =>
    `The strip behind: what suits all who live here, ${low} to ${high}.`,
  no_comfort: 'No temperature suits all who live here.',
  degree_days: (
    /** @type {string} */ name,
    /** @type {number} */ sum,
    /** @type {string} */ threshold,
    /** @type {string} */ since,
  ) => `${name}: ${sum} degree-days above ${threshold} since ${since}`,
  assumed: (/** @type {number} */ pct) => `${pct} % of it assumed`,
  day: 'Day',
  week: 'Week of',
  mean: 'Mean',
  low: 'Least',
  high: 'Most',
  basis: 'How it is known',
  bases: { measured: 'measured', typed: 'read', assumed: 'assumed' },
  file: 'A file of a sensor',
  file_hint: 'a table in CSV, its headings in the first line',
  too_large: 'This file is larger than 4 MB: bring it in parts, the headings in the first line of each.',
  time_column: 'Column of the time',
  temperature_column: 'Column of the temperature',
  humidity_column: 'Column of the humidity',
  no_column: 'none',
  unit: 'Measured in',
  dates: 'Times are written',
  date_forms: {
    iso: '2026-12-31 18:30',
    dmy: '31.12.2026 18:30',
    mdy: '12/31/2026 6:30 PM',
    unix: 'seconds since 1970',
  },
  zone: 'Times are of',
  zones: { '': 'the household', utc: 'UTC' },
  look: 'Look at it first',
  take: 'Take it in',
  taken: (/** @type {number} */ n) => `Taken in: ${count(n, 'hour')}. The days are drawn within ten minutes.`,
  found: (/** @type {number} */ rows, /** @type {string} */ from, /** @type {string} */ until) =>
    `${count(rows, 'reading')} from ${from} to ${until}.`,
  found_nothing: 'No row can be read.',
  range: (/** @type {string} */ low, /** @type {string} */ high) => `From ${low} to ${high}.`,
  new_hours: (/** @type {number} */ fresh, /** @type {number} */ all) =>
    fresh === all
      ? `${count(all, 'hour')}, all of them new.`
      : `${count(all, 'hour')}, ${fresh} of them new: the others were measured already and stay as they are.`,
  bad_rows: (/** @type {number} */ n) => `${count(n, 'row')} cannot be read and will be left out:`,
  bad_line: (/** @type {number} */ line, /** @type {string} */ why) => `Line ${line}: ${why}`,
  give_out: 'Save all hours as a file',
};
