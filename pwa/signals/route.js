// Where in the app we are: a small router over the fragment, so that it works offline and secrets stay off the wire.
import { signal } from '@preact/signals';

/** @type {import('@preact/signals').Signal<{name: string, id: string, nudge: boolean}>} */
export const route = signal(read());

function read() {
  const [path = '', query = ''] = globalThis.location?.hash.replace(/^#\//, '').split('?') ?? [];
  const [name = '', id = ''] = path.split('/');
  return { name: name || 'round', id: decodeURIComponent(id), nudge: new URLSearchParams(query).has('nudge') };
}

/** @param {string} hash e.g. `#/shelf` */
export function go(hash) {
  location.hash = hash;
}

/** Take a secret out of the address bar at once. */
export function hideFragment() {
  history.replaceState(null, '', '/');
}

globalThis.addEventListener?.('hashchange', () => {
  route.value = read();
});
globalThis.navigator?.serviceWorker?.addEventListener('message', (event) => {
  if (typeof event.data?.open === 'string') location.hash = new URL(event.data.open, location.href).hash;
});
