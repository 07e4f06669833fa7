// Tastings: what a colony likes.
import { count } from './counted.js';

export const tastingText = {
  title: 'What they like',
  about:
    'A tasting finds out which food they like best: the round offers them in turn, you say what became of it. ' +
    'One new food a week, never while they found or settle.',
  not_now: (/** @type {string} */ state) => `Not now (${state}): a refusal would mean nothing.`,
  kind: 'Kind of food',
  foods: 'Foods, 2 to 5',
  pick: 'Choose 2 to 5 foods.',
  go: 'Start the tasting',
  started: 'The tasting has begun',
  none: 'There are no two foods to compare for what they eat.',
  since: (/** @type {string} */ day) => `Since ${day}`,
  told: 'What it has told so far',
  wait: 'The plan chooses the first food with the next connection.',
  not_offered: 'Not offered yet',
  next: (/** @type {string} */ food, /** @type {string} */ due) => `Next: ${food}, ${due}.`,
  taken: (/** @type {number} */ mean, /** @type {number} */ low, /** @type {number} */ high) =>
    `Taken in about ${mean} %, ${low} to ${high}`,
  offers: (/** @type {number} */ n) => count(n, 'offer'),
  offers_and_likes: (/** @type {number} */ n, /** @type {number} */ others) =>
    `${count(n, 'offer')} and what ${count(others, 'colony', 'colonies')} like it took`,
  best: (/** @type {number} */ n) => `${n} % likely their favourite`,
  range: 'The bar is the estimate, the line its range.',
  food: 'Food',
  offered: 'Offers',
  share: 'Taken',
  spread: 'Range',
  favourite: 'Favourite',
  end: 'End the tasting',
  ended: 'The tasting has ended',
  part: (/** @type {string} */ name) => `Part of the tasting: ${name}`,
  here: 'This counts for the running tasting.',
  earlier: 'Earlier tastings',
  days: (/** @type {string} */ from, /** @type {string} */ to) => `${from} to ${to}`,
  tally: (/** @type {string} */ food, /** @type {number} */ taken, /** @type {number} */ checked) =>
    `${food}: taken ${taken} of ${count(checked, 'time')}`,
  unchecked: (/** @type {string} */ food) => `${food}: never checked`,
};
