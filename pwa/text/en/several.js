// Several colonies at once.
import { count } from './counted.js';

export const severalText = {
  title: 'Several at once',
  what: 'What they got',
  who: 'Which colonies',
  none: 'Choose at least one colony.',
  water: 'Filled up',
  look: 'Looked in, all calm',
  go: (/** @type {number} */ n) => `Log it for ${count(n, 'colony', 'colonies')}`,
};
