// What stands before the catalogue came, and what its codes are made into. Its rows: kinds.d.ts. Pure.

/** @type {import('../kinds.d.ts').CatalogueRows} */
export const NO_CATALOGUE = {
  species: {},
  default_source: {},
  foods: {},
  vessels: {},
  cautions: {},
  origins: {},
  needs: {},
  faults: {},
  tasks: {},
  again_days: {},
  drop_ul: 0,
  fields: {},
};

/**
 * A task's key as a text: what it asks for, and the id of what it is about. Nothing takes it apart again; tasks say
 * both beside it. Server: model/tasks.py, `TaskKey`.
 * @param {import('../kinds.d.ts').What} what @param {string} [about]
 */
export const keyOf = (what, about = 'start') => `${what}:${about}`;

/** What a stand-in is told one after the other (care/plan/steps.py). @param {Array<string | null | undefined>} codes */
export const toldInSteps = (codes) => codes.flatMap((code) => (code ? [{ code, args: {} }] : []));
