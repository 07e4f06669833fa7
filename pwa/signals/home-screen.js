// The app on the home screen: how it gets there, and the number on its icon. Fetched after the first paint.
import { effect, signal } from '@preact/signals';
import { askToKeep } from '../database/open.js';
import { round } from './rows.js';
import { session } from './session.js';

/**
 * The browser's offer to install, kept until a tap wants it.
 * @type {import('@preact/signals').Signal<BeforeInstallPromptEvent | null>}
 */
export const offer = signal(null);

globalThis.addEventListener?.('beforeinstallprompt', (event) => {
  event.preventDefault();
  offer.value = /** @type {BeforeInstallPromptEvent} */ (event);
});
globalThis.addEventListener?.('appinstalled', () => {
  offer.value = null;
  void askToKeep({ again: true });
});

/** @returns {'installed' | 'ios' | 'android' | 'desktop'} */
export function platform() {
  const agent = navigator.userAgent;
  if (matchMedia('(display-mode: standalone)').matches || navigator.standalone) return 'installed';
  if (/iPhone|iPad/.test(agent) || (/Macintosh/.test(agent) && navigator.maxTouchPoints > 1)) return 'ios';
  return /Android/.test(agent) ? 'android' : 'desktop';
}

const phone = navigator;
const SETTLED_MS = 1000;
/** @type {ReturnType<typeof setTimeout> | undefined} */
let settled;

if (phone.setAppBadge) {
  // what is due now, where the platform draws a number
  let shown = -1;
  effect(() => {
    const due =
      session.value && !session.value.ended ? round.value.items.filter((item) => item.group === 'now').length : 0;
    if (due === shown) return;
    shown = due;
    clearTimeout(settled); // the system takes its time over a number: once, after the taps
    settled = setTimeout(
      () => void (shown ? phone.setAppBadge(shown) : phone.clearAppBadge()).catch(() => undefined),
      SETTLED_MS,
    ); // not installed, or not allowed
  });
}
