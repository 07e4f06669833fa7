// What can be chosen from, in the order in which it is offered, and rules of screens alone.
// Written by `python -m tests.support.phone_rules`; a test fails when it is stale.

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
  'climate',
  'note',
  'photo',
  'later',
];
/** So long may wait what may not: sync/put_off.py. */
export const CAN_WAIT_H = 14;
/** Conditions of a colony for which nothing is asked: model/kinds/words.py. @type {string[]} */
export const NO_LONGER_KEPT = ['dead', 'given_away'];
/** States in which a refusal means nothing: care/feeding/trial.py. @type {string[]} */
export const NOT_WHILE = ['dead', 'founding', 'given_away', 'queenless_suspected', 'resting', 'settling'];
/** A founding queen is looked at once in so many days: model/tasks.py. */
export const FOUNDING_LOOK_DAYS = 7;
/** The same of one whose founding stalled. */
export const STALLED_LOOK_DAYS = 14;
/** So long before the day nobody is asked. */
export const ASK_AHEAD_DAYS = 7;
