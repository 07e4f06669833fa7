// A serving in words.
import { isSaid, say, sayOf } from './say.js';

/** @typedef {{amount: number, unit: string, food_code: string, form?: string, size_class?: string}} Portion */

/** What is no animal is served in crumbs. */
const CRUMB = 'crumb';
/** Units in which the food itself is counted. */
const COUNTED = ['piece', 'seed', 'leaf'];

/** @param {Portion} portion @returns {string} e.g. "2 extra small crickets, killed and cut" */
export function portionInWords({ amount, unit, food_code, form = '', size_class = '' }) {
  const kind = unit === 'piece' && form === 'piece' ? CRUMB : unit;
  const sized = `${kind}_sized`;
  const is_sized = size_class && isSaid('portion', sized);
  const portion = sayOf('portion', is_sized ? sized : kind, {
    n: amount,
    food: sayOf('food', food_code, { n: amount }, COUNTED.includes(kind) ? 'counted' : 'of'),
    food_code,
    ...(is_sized ? { size: sayOf('size', size_class), size_class } : {}),
  });
  return isSaid('form', form) ? say('portion-with-form', { portion, form: sayOf('form', form) }) : portion;
}
