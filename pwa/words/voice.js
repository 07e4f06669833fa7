// The voice of the rooms below the screens, for the few sentences that begin there. The worker has those rooms, too; it
// fetches no messages, and nobody reads there: an id stands for its words.

/** @typedef {import('../messages.d.ts').Messages} Messages */
/**
 * What is told nothing.
 * @typedef {{[id in keyof Messages]: Messages[id] extends null ? id : never}[keyof Messages]} Plain
 */

/** `say` is the page's, from the moment when its messages are there. */
export const voice = {
  say: (/** @type {Plain} */ id) => /** @type {string} */ (id),
  /** What the server is asked to speak; nothing: what the browser says by itself. */
  language: '',
};
