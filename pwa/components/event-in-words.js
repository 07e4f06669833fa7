// A line of the diary: what a log says, in words.
import { portionInWords } from '../words/portions.js';
import { say, sayIf, sayOf } from '../words/say.js';
import { listed } from '../words/shown.js';

/**
 * @typedef {import('../kinds.d.ts').Kind} Kind
 * @typedef {import('../kinds.d.ts').ChangeOf} Change
 */
/** @template {Kind} K @typedef {Partial<import('../kinds.d.ts').Fields<K>>} Said what a log of that kind says */

/** @param {Said<'feeding'>} said */
function feeding(said) {
  const portion = /** @type {import('../kinds.d.ts').Portion} */ (said);
  const told = said.food_code && said.amount ? portionInWords(portion) : sayOf('need', said.need ?? '');
  return said.possible_repeat && !said.confirmed ? say('event-repeat', { told }) : told;
}

/** What a check is told by: the first of these that says something. @type {Array<(said: Said<'check'>) => unknown>} */
const CHECKS = [
  ({ level }) => level && say('event-feeder', { level: sayOf('event-reading', level) }),
  ({ outcome }) => outcome && sayOf('event-outcome', outcome),
  (said) => said.colour_seen && colourSeen(said.colour_seen),
  (said) => said.leftovers_removed && say('event-leftovers'),
];

/** @param {Array<import('../kinds.d.ts').ColourSeen>} places */
const colourSeen = (places) =>
  places.length
    ? say('event-colour', { where: listed(places.map((each) => sayOf('event-colour-seen', each))) })
    : say('event-colour-nowhere');

/** @param {Said<'check'>} said */
function check(said) {
  for (const tell of CHECKS) {
    const told = tell(said);
    if (told) return String(told);
  }
  return sayOf('need', said.need ?? 'glance');
}

/** @param {Said<'water'>} said */
function water({ action, reading, level_mm }) {
  if (action !== 'read') return action ? sayOf('event-water', action) : say('event-kind-water');
  return reading
    ? say('event-read', { level: sayOf('event-reading', reading) })
    : say('event-read-mm', { mm: level_mm ?? 0 });
}

/** @param {Said<'fault'>} said */
function fault(said) {
  const name = sayOf('fault', said.fault ?? '');
  return said.resolved_at ? say('event-mended', { fault: name }) : name;
}

const STAGES = /** @type {const} */ (['larvae', 'eggs', 'pupae']);

const workersInWords = (/** @type {number} */ number) => say('event-workers', { count: number });

/** @param {Said<'count'>} said */
function count(said) {
  const { workers = null, workers_coarse, workers_at_least, queens = null } = said;
  const seen = [];
  if (workers !== null) seen.push(workersInWords(workers));
  else if (workers_coarse) seen.push(say('event-workers-roughly', { amount: workers_coarse }));
  else if (workers_at_least) seen.push(say('event-workers-at-least', { seen: workersInWords(workers_at_least) }));
  for (const stage of STAGES) {
    const amount = said[stage];
    if (amount) seen.push(sayOf('event-counted', stage, { amount }));
  }
  if (queens !== null) seen.push(say('event-queens', { count: queens }));
  if (said.males_only) seen.push(say('event-males-only'));
  return seen.length ? say('event-counted', { seen: listed(seen) }) : say('event-counted-nothing');
}

/** @param {Said<'boost'>} said */
const boost = ({ number, brood = 'pupae' }) =>
  number ? say('event-brood-added-some', { count: number, brood }) : say('event-brood-added', { brood });

/** @param {Said<'later'>} said */
function later(said) {
  const need = sayOf('need', said.need ?? '');
  return said.why
    ? say('later-was-skipped', { need, why: sayIf('later-why', said.why) || said.why })
    : say('later-was-put-off', { need });
}

/** How each kind of log is told. @type {{[k in Kind]?: (said: Said<k>) => string}} */
const KINDS = {
  feeding,
  check,
  water,
  fault,
  count,
  boost,
  later,
  note: ({ text = '' }) => text,
  move: ({ how }) => (how === 'offered' ? say('round-offered') : say('event-kind-move')),
};

/** One line of the diary. @param {Change} row @returns {string} */
export function eventInWords({ kind, set }) {
  const tell = /** @type {((said: Change['set']) => string) | undefined} */ (KINDS[kind]);
  return tell ? tell(set) : sayOf('event-kind', kind);
}
