// What can be chosen from, in the order in which it is offered. The lists themselves are the server's (kinds.d.ts).

/** @type {Array<import('../kinds.d.ts').Stage>} */
export const STAGES = ['founding', 'nanitics', 'growing', 'mature'];
/** @type {Array<import('../kinds.d.ts').Condition>} */
export const CONDITIONS = ['well', 'settling', 'resting', 'queenless_suspected', 'quarantine', 'given_away', 'dead'];
/** @type {Array<import('../kinds.d.ts').Guild>} */
export const GUILDS = ['omnivore', 'predator', 'harvester', 'honeypot', 'fungus_grower'];
/** @type {Array<import('../kinds.d.ts').FoundingMode>} */
export const FOUNDING_MODES = ['claustral', 'semi_claustral', 'parasitic'];
/** @type {Array<import('../kinds.d.ts').PlaceType>} */
export const PLACE_TYPES = ['cabinet', 'room', 'cellar', 'fridge'];
/** @type {Array<import('../kinds.d.ts').SizeClass>} */
export const SIZES = ['tiny', 'extra_small', 'small', 'medium', 'large'];
/** @type {Array<import('../kinds.d.ts').Tint>} */
export const TINTS = ['blue', 'green', 'yellow', 'red'];
/** @type {Array<import('../kinds.d.ts').WaterReading>} */
export const READINGS = ['full', 'three_quarters', 'half', 'quarter', 'empty'];
/** @type {Array<import('../kinds.d.ts').Outcome>} */
export const OUTCOMES = ['all', 'some', 'ignored'];
/** @type {Array<import('../kinds.d.ts').Coarse>} */
export const COARSE = ['none', 'few', 'some', 'many'];
/** @type {Array<import('../kinds.d.ts').FaultCode>} */
export const FAULTS = ['leak', 'flood', 'mould', 'escape', 'mites', 'many_dead', 'heater'];
/** @type {Array<import('../kinds.d.ts').EventKind>} */
export const EVENT_KINDS = [
  'feeding',
  'check',
  'water',
  'fault',
  'count',
  'move',
  'boost',
  'note',
  'climate',
  'photo',
  'later',
];
