// What the catalogue brings: tables that the server's rules read, too. Types, and what stands before it came. Pure.

/**
 * @typedef {import('../kinds.d.ts').Need} Need
 * @typedef {import('../kinds.d.ts').What} What
 * @typedef {{species: Record<string, any>, default_source: Record<string, string>, foods: Record<string, any>,
 *   vessels: Record<string, any>, cautions: Record<string, any>, origins: Record<string, any>,
 *   words: Record<string, Record<string, string>>,
 *   needs: Partial<Record<Need, import('../kinds.d.ts').NeedRow>>,
 *   faults: Partial<Record<import('../kinds.d.ts').FaultCode, import('../kinds.d.ts').FaultRow>>,
 *   tasks: Partial<Record<What, import('../kinds.d.ts').TaskRow>>,
 *   again_days: Partial<Record<What, number>>, drop_ul: number}} Catalogue
 */

/** @type {Catalogue} */
export const NO_CATALOGUE = {
  species: {},
  default_source: {},
  foods: {},
  vessels: {},
  cautions: {},
  origins: {},
  words: {},
  needs: {},
  faults: {},
  tasks: {},
  again_days: {},
  drop_ul: 0,
};

/**
 * A task's key as a text: what it asks for, and the id of what it is about. Nothing takes it apart again; tasks say
 * both beside it. Server: model/tasks.py, `TaskKey`.
 * @param {What} what @param {string} [about]
 */
export const keyOf = (what, about = 'start') => `${what}:${about}`;

/** What a stand-in is told one after the other (care/plan/steps.py). @param {Array<string | null | undefined>} codes */
export const toldInSteps = (codes) => codes.flatMap((code) => (code ? [{ code, args: {} }] : []));
