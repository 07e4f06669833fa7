// Codes into words with the one word table of the catalogue; the same as server/broodshelf/care/wording.py.

/** @typedef {Record<string, Record<string, string>>} Words */
/** @typedef {{amount: number, unit: string, food_code: string, form?: string, size_class?: string}} Portion */

/** Fill `{name}` and `[n|one|other]`. @param {string} template @param {Record<string, unknown>} args */
export function fill(template, args) {
  return template
    .replace(/\[(\w+)\|([^|\]]*)\|([^\]]*)\]/g, (_all, name, one, other) => (args[name] === 1 ? one : other))
    .replace(/\{(\w+)\}/g, (_all, name) => shown(args[name] ?? '?'));
}

/**
 * The words for a code of a section; the code itself if the table lacks it.
 * @param {Words} words @param {string} section @param {string} code @param {Record<string, unknown>} [args]
 */
export function sayCode(words, section, code, args = {}) {
  const template = words[section]?.[code];
  return template === undefined ? code.replaceAll('_', ' ') : fill(template, args);
}

/** A portion in words. @param {Words} words @param {Portion} portion */
export function sayPortion(words, portion) {
  let food = sayCode(words, 'food', portion.food_code);
  const crumb = portion.unit === 'piece' && portion.form === 'piece'; // of what is no animal
  if (portion.unit === 'piece' && !crumb && portion.amount !== 1) food = plural(food);
  else if (['seed', 'leaf'].includes(portion.unit) && portion.amount === 1) food = singular(food);
  const size = portion.size_class ? sayCode(words, 'size', portion.size_class) : '';
  const form = portion.form ? sayCode(words, 'form', portion.form) : '';
  const parts = [
    shown(portion.amount),
    sayCode(words, 'unit', crumb ? 'crumb' : portion.unit, { n: portion.amount }),
    size,
    food,
  ];
  return parts.filter(Boolean).join(' ') + (form ? `, ${form}` : '');
}

/** @param {string} food */
function plural(food) {
  if (food.endsWith('fly')) return `${food.slice(0, -1)}ies`;
  return `${food}s`;
}

/** One of what is counted in seeds or leaves; these foods are named by their plural. @param {string} food */
function singular(food) {
  return food.endsWith('leaves') ? `${food.slice(0, -3)}f` : food.replace(/s$/, '');
}

/** @param {unknown} value */
function shown(value) {
  if (typeof value !== 'number' || Number.isInteger(value)) return String(value);
  // what is small keeps two digits, or it would read as none
  const places = Math.abs(value) >= 0.1 ? 2 : Math.min(9, 1 - Math.floor(Math.log10(Math.abs(value))));
  return value.toFixed(places).replace(/\.?0+$/, '');
}
