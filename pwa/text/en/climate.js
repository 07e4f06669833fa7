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
};
