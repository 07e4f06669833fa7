// What time it is for the screens.
import { computed, signal } from '@preact/signals';
import { dayOf } from '../care/instants.js';

const TICK_MS = 30_000;

/** Now, in ms; ticks while the app is in view. */
export const now = signal(Date.now());
export const today = computed(() => dayOf(new Date(now.value)));

/** Say that time has passed. */
export function tick() {
  now.value = Date.now();
}

/** Let time pass for what is shown. */
export function startClock() {
  setInterval(tick, TICK_MS);
}
