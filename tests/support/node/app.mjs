// The app's own modules in Node, as a page has them: bare names led where its import map leads them, a disk in memory,
// and a server that the test is. Of components only what a call does is seen: hooks keep nothing and draw nothing.
import { register } from 'node:module';
import 'fake-indexeddb/auto';

const pwa = new URL('../../../pwa/', import.meta.url).href;
const hooks = `
  const state = (value) => [typeof value === 'function' ? value() : value, () => {}];
  export const useState = state, useRef = (current) => ({ current }), useMemo = (make) => make();
  export const useEffect = (effect) => globalThis.effects.push(effect);
`;
const libraries = {
  preact: `${pwa}vendor/preact.mjs`,
  'preact/hooks': `data:text/javascript,${encodeURIComponent(hooks)}`,
  htm: `${pwa}vendor/htm.module.js`,
  '@preact/signals': `${pwa}vendor/signals-core.module.js`,
  '@preact/signals-core': `${pwa}vendor/signals-core.module.js`,
};
register(
  `data:text/javascript,${encodeURIComponent(`
    const libraries = ${JSON.stringify(libraries)};
    export async function resolve(name, from, next) {
      const { url } = libraries[name] ? { url: libraries[name] } : await next(name, from);
      const tab = from.parentURL?.split('?')[1]; // what a tab loads is its own, down to the last module
      return { url: tab && url.startsWith('file:') ? url.split('?')[0] + '?' + tab : url, shortCircuit: true };
    }
  `)}`,
);

/** The effects of the components that were called. @type {Array<() => unknown>} */
globalThis.effects = [];
globalThis.addEventListener = () => {};
globalThis.location = { reload() {}, search: '' };
globalThis.document = Object.assign(new EventTarget(), { body: { dataset: {} }, visibilityState: 'visible' });
globalThis.document.documentElement = {};
globalThis.localStorage = { getItem: () => null, setItem() {}, removeItem() {} };
export const navigator = { userAgent: 'a test', language: 'en', onLine: true };
Object.defineProperty(globalThis, 'navigator', { value: navigator, configurable: true });
const every = globalThis.setInterval; // the app's clocks hold up no test that is over
globalThis.setInterval = (...given) => every(...given).unref();

const Channel = globalThis.BroadcastChannel;
globalThis.BroadcastChannel = class extends Channel {
  constructor(name) {
    super(name);
    this.unref();
  }
};

/** @param {string} path below `pwa/` @param {string} [tab] each has modules of its own, and one disk with the others */
export const load = (path, tab = 'one') => import(`${pwa}${path}?${tab}`);

/** Answer from now on: `answer(path, body)` gives `[status, what]`, or throws where there is no connection. */
export function serve(answer) {
  globalThis.fetch = async (path, { body }) => {
    const [status, what] = await answer(path, typeof body === 'string' ? JSON.parse(body) : body);
    return new Response(typeof what === 'string' ? what : JSON.stringify(what), {
      status,
      headers: { 'Content-Type': typeof what === 'string' ? 'text/html' : 'application/json' },
    });
  };
}

/** What a round trip brings that is told nothing. @param {object} [more] */
export const nothingNew = (more = {}) => ({
  ...{ answers: [], rows: [], gone: [], epoch: 'e', cursor: 'c', more: false, reset: false, first: false },
  ...{ schema: 1, server_time: Date.now(), pass: null, ...more },
});

/** Wait for a state. @param {() => unknown} holds */
export async function until(holds) {
  while (!holds()) await new Promise(setImmediate);
}
