// What the phone's screens find in a page, as far as they ask when they are loaded: import it before them.
import './vendored.mjs';

/** What is kept on the phone. @type {Map<string, string>} */
export const kept = new Map();

globalThis.localStorage = {
  getItem: (name) => kept.get(name) ?? null,
  setItem: (name, value) => kept.set(name, value),
  removeItem: (name) => kept.delete(name),
};
globalThis.document = { body: { dataset: {} }, documentElement: { dataset: {} } };
globalThis.location = new URL('http://phone.test/#/round');
globalThis.addEventListener = () => undefined;
delete globalThis.BroadcastChannel; // Node would wait for it
Object.defineProperty(globalThis, 'navigator', { value: { language: 'en', languages: ['en'] }, configurable: true });

/** Every element that a component drew, those inside others too. @param {unknown} drawn @returns {any[]} */
export function elementsIn(drawn) {
  if (Array.isArray(drawn)) return drawn.flatMap(elementsIn);
  return drawn && typeof drawn === 'object' ? [drawn, ...elementsIn(drawn.props?.children)] : [];
}
