// What the catalogue brings: tables that the server's rules read, too. Types, and what stands before it came. Pure.

/**
 * Its rows, as far as the phone reads them; server: care/catalogue.
 * @typedef {import('../kinds.d.ts').Need} Need
 * @typedef {import('../kinds.d.ts').What} What
 * @typedef {{name: string, worker_mm: [number, number], guild: import('../kinds.d.ts').Guild,
 *   founding: import('../kinds.d.ts').FoundingMode, stings?: boolean, temp_c?: [number, number]}} Species
 * @typedef {{need: import('../kinds.d.ts').FoodNeed, unit: import('../kinds.d.ts').Unit,
 *   form: import('../kinds.d.ts').ServedAs, serves: string[], origin?: import('../kinds.d.ts').Origin,
 *   usual_origin?: import('../kinds.d.ts').Origin, remove_after_h?: number, feeder_h?: number,
 *   size?: Record<string, {length_mm: [number, number]}>}} Food
 *   `serves`: guilds; `feeder_h`: how long it may lie in a closed feeder
 * @typedef {{kind: 'tube' | 'nest' | 'outworld', bore_mm?: number, length_mm?: number}} VesselKind
 * @typedef {{trait?: string, source: string}} Caution
 * @typedef {{verdict: string, hold_days?: number}} OriginRule
 * @typedef {{species: Record<string, Species>, default_source: Record<string, string>, foods: Record<string, Food>,
 *   vessels: Record<string, VesselKind>, cautions: Record<string, Caution>, origins: Record<string, OriginRule>,
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
