// The larder, and what to get.
import { count } from './counted.js';

export const larderText = {
  title: 'The larder',
  empty: 'No food is noted. Note what is in the house, and logging a feeding offers it first.',
  used: 'Used up',
  left_now: 'How much is left',
  by_logs: (/** @type {number} */ left, /** @type {string} */ whole) =>
    `about ${left} left of ${whole}, by the feedings logged`,
  how_much: (/** @type {string} */ unit) => `How much, in ${unit}`,
  no_amount: 'Type a number.',
  used_up: 'Marked as used up',
  use_by: (/** @type {string} */ day) => `use by ${day}`,
  got: (/** @type {string} */ day) => `since ${day}`,
  never: 'Never offer this.',
  held: (/** @type {string} */ day, /** @type {number} */ d) => `On hold until ${day}, ${count(d, 'more day')}.`,
  over: 'Past its day: throw it away.',
  left: (/** @type {number} */ d) => (d === 0 ? 'Use it today.' : `Good for ${count(d, 'more day')}.`),
  add: 'Add a food',
  mix: 'Mix sugar water',
  size: 'Size',
  size_open: 'Mixed or not known',
  tint: 'Food colour in it',
  no_tint: 'None',
  tint_why:
    'To see who drank: a blue food colour without carmine, the weakest tint that shows, one colony, one day, ' +
    'with undyed sugar water beside it. Common practice: no published strength, fading time or safety test for ' +
    'ants was found; keepers tell of deaths with a red one.',
  food: 'Food',
  origin: 'Where it comes from',
  name: 'Name',
  optional: '(optional)',
  use_by_field: 'Use by',
  refused: 'This does not go into the larder.',
  go: 'Add it',
  percent: 'Sugar',
  of_weight: '% sugar by weight',
  water: 'Water',
  ml_water: 'mL of water',
  recipe: (/** @type {string} */ sugar, /** @type {string} */ water, /** @type {string} */ total) =>
    `Stir ${sugar} g of sugar into ${water} mL of warm water: about ${total} mL.`,
  cool: 'Let it cool until it feels cold on your wrist. Warm water can scald: keep it away from children.',
  keeps: 'In the fridge about 7 days (common practice); throw it away when it is cloudy.',
  batch: 'Keep this batch in the larder',
  batch_name: (/** @type {number} */ p) => `sugar water ${p} %`,
  lots: 'In the house',
  get: {
    title: 'What to get',
    today: 'Get it today.',
    by: (/** @type {string} */ day) => `Get it by ${day}.`,
    spoils: 'Spoils first',
  },
};
