// The brood on one line of time. Fetched when it is opened.
import { count } from './counted.js';

export const lineText = {
  ahead: 'How far ahead',
  reach: { 56: '8 weeks', 182: 'Half a year' },
  stages: {
    eggs: 'Eggs',
    small_larvae: 'Small larvae',
    large_larvae: 'Large larvae',
    pupae: 'Pupae',
    workers: 'Workers',
  },
  one: { eggs: 'egg', small_larvae: 'small larva', large_larvae: 'large larva', pupae: 'pupa', workers: 'worker' },
  day: 'Day',
  today: 'today',
  now: (/** @type {string} */ told) => `now ${told}`,
  about: (/** @type {number} */ best, /** @type {number} */ low, /** @type {number} */ high) =>
    low === high ? `${best}` : `${best} (${low}–${high})`,
  summary: (/** @type {string} */ now, /** @type {string} */ day, /** @type {string} */ then) =>
    `Today probably ${now}. By ${day}: ${then}.`,
  some: (/** @type {number} */ n, /** @type {string} */ one, /** @type {string} */ many) =>
    n === 0 ? `no ${many}` : count(n, one, many),
  likely: (/** @type {number} */ best, /** @type {number} */ low, /** @type {number} */ high) =>
    `about ${count(best, 'worker')}, likely ${low} to ${high}`,
  list: (/** @type {string[]} */ all) => `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`,
  /** What the marks of the drawing mean, by the class that draws them. */
  marks: {
    line: 'most likely; dashed: still to come',
    band: 'eight of ten',
    dot: 'you counted, or saw some',
    hollow: 'you looked, and there were none',
    due: 'when workers hatch',
  },
  scale: 'Each row has a height of its own. The past is drawn as it was believed then.',
};
