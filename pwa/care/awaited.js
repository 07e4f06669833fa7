// Whether a founding asks its question now: 'pupae should be there by the 20th: seen them?' Pure.
import { dayOf } from './instants.js';
import { ASK_AHEAD_DAYS, FOUNDING_LOOK_DAYS, STALLED_LOOK_DAYS } from './codes.js';
import { DAY_MS } from './rules.js';

/**
 * @typedef {import('./overlay.js').EventRow} EventRow
 * @typedef {NonNullable<import('../kinds.d.ts').LivingCensus['asks']>} Asked
 * @typedef {'yes' | 'not_yet' | 'cannot_see'} Answer
 * @typedef {{brood: Asked['brood'], by_on: string, turn: 'ask' | 'early' | 'rest' | 'told',
 *   looked_ms: number | null, again_ms: number | null}} Question
 * `turn`: ask now; it is too early to ask; somebody looked lately, so it rests until `again_ms`; it was seen, and the
 * plan does not know it yet
 */

/**
 * What to ask, or why nothing is asked now; null where nothing is awaited.
 * @param {Asked | null | undefined} asked of the plan
 * @param {EventRow[]} events of the colony, in the order in which they happened
 * @param {number} nowMs @param {boolean} [stalled] whether the founding has stalled @returns {Question | null}
 */
export function questionOf(asked, events, nowMs, stalled = false) {
  if (!asked) return null;
  const rest_ms = (stalled ? STALLED_LOOK_DAYS : FOUNDING_LOOK_DAYS) * DAY_MS;
  const { brood, by_on } = asked;
  const looks = events.filter((event) => (event.happened_ms ?? 0) > nowMs - rest_ms && isLook(event));
  const looked_ms = looks.at(-1)?.happened_ms ?? null;
  const again_ms = looked_ms === null ? null : looked_ms + rest_ms;
  /** @param {Question['turn']} turn @returns {Question} */
  const say = (turn) => ({ brood, by_on, turn, looked_ms, again_ms });
  if (looks.some((event) => event.kind === 'count' && (event.set[brood] ?? 'none') !== 'none')) return say('told');
  if (by_on > dayOf(new Date(nowMs + ASK_AHEAD_DAYS * DAY_MS))) return say('early');
  return say(again_ms === null ? 'ask' : 'rest');
}

/** Whether somebody looked into the nest. @param {EventRow} event */
const isLook = ({ kind, set }) => kind === 'count' || (kind === 'check' && set.need === 'glance');

/**
 * The log that an answer is: what was seen or not seen teaches the census, and what could not be seen teaches nothing.
 * @param {string} colony_id @param {Asked['brood']} brood @param {Answer} answer
 * @param {string} remark for the diary, where nothing could be seen
 * @returns {import('./overlay.js').Change}
 */
export function logOf(colony_id, brood, answer, remark) {
  if (answer === 'cannot_see') return { kind: 'check', set: { colony_id, need: 'glance', remark } };
  return { kind: 'count', set: { colony_id, [brood]: answer === 'yes' ? 'seen' : 'none' } };
}
