// A line of the diary: what a log says, in words.
import { eventText } from '../text/en/events.js';
import { laterText } from '../text/en/later.js';
import { roundText } from '../text/en/round.js';
import { capital, portionInWords, wordFor } from './in-words.js';

/**
 * @typedef {import('../kinds.d.ts').Kind} Kind
 * @typedef {import('../care/overlay.js').ShownRow} ShownRow
 */
/** @template {Kind} K @typedef {Partial<import('../kinds.d.ts').Fields<K>>} Said what a log of that kind says */

const { outcomes, colour_seen, readings, coarse, brood_seen, water: actions } = eventText;
/** @type {Record<string, string>} */
const REASONS = Object.fromEntries(laterText.why);

/** @param {Said<'feeding'>} said */
function feeding(said) {
  const portion = /** @type {import('../kinds.d.ts').Portion} */ (said);
  const told = said.food_code && said.amount ? portionInWords(portion) : wordFor('need', said.need ?? '');
  return said.possible_repeat && !said.confirmed ? eventText.repeat(told) : told;
}

/** What a check is told by: the first of these that says something. @type {Array<(said: Said<'check'>) => unknown>} */
const CHECKS = [
  ({ level }) => level && eventText.feeder(readings[level] ?? level),
  ({ outcome }) => outcome && outcomes[outcome],
  (said) => said.colour_seen && colourSeen(said.colour_seen),
  (said) => said.leftovers_removed && eventText.leftovers,
];

/** @param {Array<import('../kinds.d.ts').ColourSeen>} places */
const colourSeen = (places) =>
  places.length ? eventText.colour(places.map((each) => colour_seen[each]).join(', ')) : eventText.colour_nowhere;

/** @param {Said<'check'>} said */
function check(said) {
  for (const tell of CHECKS) {
    const told = tell(said);
    if (told) return String(told);
  }
  return wordFor('need', said.need ?? 'glance');
}

/** @param {Said<'water'>} said */
function water({ action, reading, level_mm }) {
  if (action !== 'read') return action ? actions[action] : eventText.kinds.water;
  return reading ? eventText.read(readings[reading]) : eventText.read_mm(level_mm ?? 0);
}

/** @param {Said<'fault'>} said */
function fault(said) {
  const name = capital(wordFor('fault', said.fault ?? ''));
  return said.resolved_at ? eventText.mended(name) : name;
}

const STAGES = /** @type {const} */ (['larvae', 'eggs', 'pupae']);

/** @param {Said<'count'>} said */
function count(said) {
  const workers = said.workers ?? (said.workers_coarse && coarse[said.workers_coarse]) ?? null;
  const brood = STAGES.flatMap((stage) => {
    const word = said[stage];
    return word ? [`${eventText.stages[stage]}: ${brood_seen[word]}`.toLowerCase()] : [];
  });
  return eventText.counted([...(workers === null ? [] : [eventText.workers(workers)]), ...brood]);
}

/** @param {Said<'boost'>} said */
const boost = ({ number, brood = 'pupae' }) =>
  number ? eventText.brood_added_some(number, brood) : eventText.brood_added(brood);

/** @param {Said<'later'>} said */
function later(said) {
  const need = wordFor('need', said.need ?? '');
  return said.why ? laterText.was_skipped(need, REASONS[said.why] ?? said.why) : laterText.was_put_off(need);
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
  move: ({ how }) => (how === 'offered' ? roundText.offered : eventText.kinds.move),
  photo: () => eventText.kinds.photo,
};

/** One line of the diary. @param {ShownRow} row @returns {string} */
export function eventInWords({ kind, set }) {
  const tell = /** @type {((said: ShownRow['set']) => string) | undefined} */ (KINDS[kind]);
  return tell ? tell(set) : kind;
}
