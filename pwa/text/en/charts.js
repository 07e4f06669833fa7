// The words of the charts, which are fetched when they are opened.
import { count } from './counted.js';

export const chartsText = {
  growth: 'Growth',
  water: 'Water',
  feeding: 'Food',
  which: 'Chart',
  day: 'Day',
  workers: 'Workers',
  level: 'Level',
  share: 'Share as a picture',
  few: 'A chart needs at least two counts with a number.',
  few_water: 'No water reading yet.',
  few_food: 'No feeding logged yet.',
  week: 'Week of',
  sugar: 'Sugar',
  protein: 'Protein and other food',
  growth_words: (/** @type {number} */ first, /** @type {number} */ last) =>
    `Workers counted: from ${first} to ${last}.`,
  water_words: (/** @type {string} */ left) => `At this pace ${left} left until it is due.`,
  never: 'The level does not fall at present.',
  due_now: 'The water is due now.',
  food_words: (/** @type {number} */ n) => `${count(n, 'feeding')} in the last half year.`,
  estimate: 'The dashed line is an estimate, the shade its range.',
  growth_ahead: (
    /** @type {string} */ day,
    /** @type {number} */ best,
    /** @type {number} */ low,
    /** @type {number} */ high,
  ) => `At this pace about ${best} by ${day}, likely ${low} to ${high}.`,
  behind: (/** @type {string} */ low, /** @type {string} */ high) =>
    `The shape behind: how warm its place was as measured, ${low} to ${high}.`,
  days: (/** @type {number} */ d) => count(Math.max(0, Math.round(d)), 'day'),
};
