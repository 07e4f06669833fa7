// What a stand-in sees.
import { count } from './counted.js';

export const standInText = {
  from: (/** @type {string} */ day) => `From ${day}`,
  today: (/** @type {number} */ n) => `Today: ${count(n, 'thing')}, about ${count(n * 2, 'minute')}`,
  nothing: 'Nothing today',
  calm: 'A missed day is fine. Do not open the nest, shake, or give extra.',
  from_keeper: 'From the keeper',
  call: (/** @type {string} */ who) => `Call ${who}`,
  yours: 'Your colonies',
};
