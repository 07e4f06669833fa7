// Tastings of a colony: the one that runs, those that ended, and what may be tasted.
import { NOT_WHILE } from '../care/codes.js';
import { today } from './clock.js';
import { catalogue, rowsOf } from './rows.js';
import { keep } from './actions.js';

/** @typedef {import('../care/overlay.js').ShownRow} ShownRow */
/** @typedef {import('../care/overlay.js').ShownRow<'colony'>} ColonyRow */
/** @typedef {import('../care/overlay.js').ShownRow<'tasting'>} TastingRow */

/** @param {string} colonyId */
const tastingsOf = (colonyId) => rowsOf('tasting').filter(({ set }) => set.colony_ids?.includes(colonyId));

/**
 * The latest that has not ended: the one that the plan goes by.
 * @param {string} colonyId
 * @returns {TastingRow | undefined}
 */
export const runningTasting = (colonyId) =>
  tastingsOf(colonyId)
    .filter(({ set }) => !set.ended_on)
    .sort((a, b) => (a.set.started_on < b.set.started_on ? 1 : -1))[0];

/** Those that ended, the latest first. @param {string} colonyId */
export const endedTastings = (colonyId) =>
  tastingsOf(colonyId)
    .filter(({ set }) => set.ended_on)
    .sort((a, b) => ((a.set.ended_on ?? '') < (b.set.ended_on ?? '') ? 1 : -1));

/**
 * The stage or condition that stops a tasting now, or undefined.
 * @param {ColonyRow} colony
 * @returns {string | undefined}
 */
export const unfitFor = (colony) =>
  [colony.set.stage, colony.set.condition].find((state) => state && NOT_WHILE.includes(state)) ?? undefined;

/**
 * Foods of its guild by the need that they serve, where there are two to compare.
 * @param {ColonyRow} colony
 * @returns {Array<[string, string[]]>}
 */
export function foodsToTaste(colony) {
  const guild = catalogue.value?.species?.[colony.set.species_code ?? '']?.guild ?? colony.set.guild ?? 'omnivore';
  /** @type {Map<string, string[]>} */
  const byNeed = new Map();
  for (const [code, food] of Object.entries(catalogue.value?.foods ?? {})) {
    if (food.serves.includes(guild)) byNeed.set(food.need, [...(byNeed.get(food.need) ?? []), code]);
  }
  return [...byNeed].filter(([, codes]) => codes.length > 1);
}

/** @param {string} colonyId @param {string} name @param {string[]} foods */
export const startTasting = (colonyId, name, foods) =>
  keep('tasting', { name, colony_ids: [colonyId], food_codes: foods, started_on: today.peek() });

/** End it today, or with null let it go on. @param {TastingRow} tasting @param {string | null} [on] */
export const endTasting = (tasting, on = today.peek()) => keep('tasting', { ended_on: on }, tasting.id);

/**
 * What became of a tasting's offers, counted from the log.
 * @param {ShownRow[]} log @param {TastingRow} tasting @returns {Array<{food: string, checked: number,
 *   taken: number}>} `taken`: all or some of it
 */
export function tally(log, tasting) {
  const outcomes = new Map(
    log.filter((row) => row.kind === 'check' && row.set.outcome).map((row) => [row.set.feeding_id, row.set.outcome]),
  );
  const offers = log.filter(
    (row) => row.kind === 'feeding' && row.set.tasting_id === tasting.id && outcomes.has(row.id),
  );
  return tasting.set.food_codes.map((food) => {
    const mine = offers.filter((row) => row.set.food_code === food);
    return { food, checked: mine.length, taken: mine.filter((row) => outcomes.get(row.id) !== 'ignored').length };
  });
}
