// The calculators.

export const calculatorText = {
  title: 'Calculators',
  about: 'Each one says how it reckons, where that comes from, and where it stops being true.',
  without: 'Sugar water can be mixed in the larder without a connection.',
  back: 'All calculators',
  back_larder: 'Back to the larder',
  go: 'Work it out',
  result: 'What comes out',
  how: 'How it is reckoned',
  formula: 'Formula:',
  source: 'Source:',
  limits: 'Limits:',
  open: 'Leave it open',
  in_unit: (/** @type {string} */ unit) => `in ${unit}`,
  range: (/** @type {string} */ low, /** @type {string} */ high) => `${low} to ${high}`,
  up_to: (/** @type {string} */ high) => `up to ${high}`,
  left_out: (/** @type {string} */ usual) => `left empty: ${usual}`,
  may_be_empty: 'may stay empty',
};

// What the calculators ask for, by the code of the input; `calculator.input` where one code means two things.
/** @type {Record<string, string>} */
export const inputs = {
  percent: 'strength',
  ml: 'volume to make',
  sugar_parts: 'parts of sugar, instead of a strength',
  water_parts: 'parts of water',
  parts_by: 'what the parts are by',
  mol_per_l: 'molarity, instead of a strength',
  'dilute.food': 'what to dilute',
  from_c: 'temperature now, or at the first of two readings',
  room_c: 'temperature of the room',
  to_c: 'temperature to offer at',
  vessel: 'open vessel',
  later_c: 'a later reading of your own vessel',
  later_min: 'minutes between the two readings',
  worker_mm: 'length of a usual worker',
  workers: 'workers',
  days: 'days until the next serving',
  protein_mg: 'protein need',
  worker_mg: 'fresh mass of a worker',
  'prey.food': 'only this food',
  majors: 'the species has majors',
  hunts_by_sight: 'it hunts by sight',
  slow: 'it eats slowly',
  in_tube: 'they live in a test tube',
  first: 'first servings of a new colony: a third',
  bore_mm: 'inner diameter of the tube',
  length_mm: 'length of the tube',
  reservoir_mm: 'length of the full reservoir',
  temp_c: 'temperature around it',
  humidity_pct: 'relative humidity around it',
  species: 'species',
  day_c: 'day temperature',
  night_c: 'night temperature',
  eggs: 'eggs of a founding queen',
};
/** What counts where an input is left empty, unless it is a figure. @type {Record<string, string>} */
export const leftOut = { night_c: 'as by day', protein_mg: 'by mass', worker_mg: 'by length' };
/** What can be chosen, beside foods and species. @type {Record<string, string>} */
export const choices = {
  mass: 'mass',
  volume: 'volume',
  drop: 'drop',
  small_glass: 'small glass',
  cup: 'cup',
  jar: 'jar',
  pan: 'pan',
};
/** Units that are words. @type {Record<string, string>} */
export const units = {
  d: 'days',
  min: 'minutes',
  'mg/d': 'mg a day',
  '% by mass': '% by mass',
  parts: 'parts',
  workers: 'workers',
  eggs: 'eggs',
  'mol/L': 'mol/L',
};
