// What a tap writes, the same on the page and in a nudge, and what of a form is written. Pure.

/** @typedef {import('../kinds.d.ts').ChangeOf} Change */

/**
 * Doing a task as the plan suggests it.
 * @param {{colony_id: string, task_key: string, suggested: Change}} task
 * @returns {Change}
 */
export const asSuggested = ({ colony_id, task_key, suggested }) =>
  /** @type {Change} */ ({ kind: suggested.kind, set: { ...suggested.set, colony_id, task_key, suggested: true } });

/**
 * Putting a need off.
 * @param {{colony_id: string, need: string}} task
 * @param {string} until an instant with its offset
 * @param {string} [why]
 * @returns {Change}
 */
export const putOff = ({ colony_id, need }, until, why) =>
  /** @type {Change} */ ({ kind: 'later', set: { colony_id, need, until, ...(why ? { why } : {}) } });

/** Whether a field says the same; what is not there is null. @param {unknown} one @param {unknown} other */
export const same = (one, other) => JSON.stringify(one ?? null) === JSON.stringify(other ?? null);

/**
 * What of a form differs from the record with which it was opened. What nobody touched is not written: another phone
 * may have set it since.
 * @param {object} was @param {object} set undefined: the form does not ask for it
 */
export const changed = (was, set) =>
  Object.fromEntries(
    Object.entries(set).filter(([name, value]) => value !== undefined && !same(value, Reflect.get(was, name))),
  );
