// What is typed and chosen in a form.

/** A number as people type it; null for nothing, NaN where it is none. @param {string} text */
export const numberOf = (text) => (text === '' ? null : Number(text.replace(',', '.')));

/** The form that is sent. @param {Event} event */
export const formOf = ({ target }) => /** @type {HTMLFormElement} */ (target);

/** Its fields, trimmed. @param {Event} event @returns {(name: string) => string} */
export function textsOf(event) {
  const data = new FormData(formOf(event));
  return (name) => String(data.get(name) ?? '').trim();
}

/** @typedef {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} Field */

/**
 * A handler that hands on what a field says; `T`: what can be chosen there.
 * @template {string} [T=string] @param {(text: T) => void} take @returns {(event: Event) => void}
 */
export const typed = (take) => (event) => take(/** @type {T} */ (/** @type {Field} */ (event.target).value));

/** And whether a box is ticked. @param {(ticked: boolean) => void} take @returns {(event: Event) => void} */
export const ticked = (take) => (event) => take(/** @type {HTMLInputElement} */ (event.target).checked);

/** And whether a part is folded out. @param {(open: boolean) => void} take @returns {(event: Event) => void} */
export const unfolded = (take) => (event) => take(/** @type {HTMLDetailsElement} */ (event.target).open);
