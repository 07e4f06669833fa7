// What time it is: by the phone's clock, set right by what the server said of it.
import { computed, signal } from '@preact/signals';
import { dayOf, setRight } from '../care/instants.js';

const TICK_MS = 30_000;
const MINUTE_MS = 60_000;
let skew_ms = 0;

/** The present instant in ms since 1970 UTC; a clock that is known to be off is corrected. @returns {number} */
export const nowMs = () => setRight(Date.now(), skew_ms);

/** Now, in ms; ticks while the app is in view. */
export const now = signal(nowMs());
/** Now, for words and drawings, which need to change no oftener: to the minute, so what falls due now is due. */
export const minute = computed(() => Math.ceil(now.value / MINUTE_MS) * MINUTE_MS);
export const today = computed(() => dayOf(new Date(now.value)));

/** Say that time has passed. */
export function tick() {
  now.value = nowMs();
}

/** Server time minus the phone's, as last measured. @param {number} ms */
export function setSkew(ms) {
  skew_ms = ms;
}

/** Let time pass for what is shown. */
export function startClock() {
  setInterval(tick, TICK_MS);
}
