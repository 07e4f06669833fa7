// Putting the app on the home screen: what this platform needs, and the browser's own offer where it makes one.
import { signal } from '@preact/signals';
import { askToKeep } from '../database/open.js';

/** The browser's offer to install, kept until a tap wants it. @type {import('@preact/signals').Signal<any>} */
export const offer = signal(null);

globalThis.addEventListener?.('beforeinstallprompt', (event) => {
  event.preventDefault();
  offer.value = event;
});
globalThis.addEventListener?.('appinstalled', () => {
  offer.value = null;
  void askToKeep({ again: true });
});

/** @returns {'installed' | 'ios' | 'android' | 'desktop'} */
export function platform() {
  const agent = navigator.userAgent;
  if (matchMedia('(display-mode: standalone)').matches || /** @type {any} */ (navigator).standalone) return 'installed';
  if (/iPhone|iPad/.test(agent) || (/Macintosh/.test(agent) && navigator.maxTouchPoints > 1)) return 'ios';
  return /Android/.test(agent) ? 'android' : 'desktop';
}
