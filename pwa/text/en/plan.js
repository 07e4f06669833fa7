// The plan of a colony and the keeper's own rhythm.
import { count } from './counted.js';

export const planText = {
  own: 'Your own interval',
  set: 'Set your own interval',
  every: (/** @type {number} */ d) => `You set this to every ${count(d, 'day')}.`,
  keep: 'Keep this interval',
  clear: 'Let the plan decide',
  days: (/** @type {number} */ d) => (d === 1 ? 'day' : 'days'),
  spread: (/** @type {number} */ low, /** @type {number} */ high) => `Likely due in ${low} to ${count(high, 'day')}.`,
  kept: 'Your interval is set',
  cleared: 'The plan decides again',
  rhythm: {
    open: 'Days, hour or a pause',
    title: 'days and hour',
    days: 'On these days',
    hour: 'At this hour',
    until: 'Pause until',
    daily: 'Every day',
    at: (/** @type {string} */ hour) => `at ${hour}`,
    paused: (/** @type {string} */ day) => `Paused until ${day}.`,
    urgent: 'Without a choice the plan decides. What is urgent, like a leak, is told all the same.',
  },
};
