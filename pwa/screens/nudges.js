// Nudges on this phone, in words: will they come, when did one last come, and a test.
import { useEffect } from 'preact/hooks';
import { html } from '../components/html.js';
import { askForNudges, pushState, refreshPush, sendTest, stopNudges } from '../signals/push.js';

/** @type {Record<string, string>} */
const WORDS = {
  unsupported: 'This browser cannot receive nudges. The round here is always up to date when you open the app.',
  install_first: 'On an iPhone or iPad put the app on the home screen first: Share, then Add to Home Screen. Open it there and come back to this page.',
  denied: 'Nudges are blocked for this app in the browser’s settings. Allow notifications there, then come back.',
  off: 'Nudges are off. When something is due at your care hours, this phone can tell you.',
  on: 'Nudges come to this phone.',
};

/** @type {Record<string, string>} */
const TESTED = { waiting: 'Sent; waiting for this phone to say that it came…', heard: 'It came. Nudges work on this phone.', silent: 'It did not come.' };

export function Nudges() {
  const { state, problem, health, tested } = pushState.value;
  useEffect(() => { void refreshPush(); }, []);
  const silent = (health?.devices ?? []).filter((/** @type {any} */ phone) => phone.silent && !phone.here);
  return html`<section class="card"><h2>Nudges on this phone</h2><p>${WORDS[state]}</p>
    ${state === 'on' && html`<p class="soft">${health?.last_ack_ms ? `The last one came ${new Date(health.last_ack_ms).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' })}.` : 'None has come yet.'}</p>`}
    ${silent.map((/** @type {any} */ phone) => html`<p class="caution">${phone.name} has not answered for a while: open the app on it.</p>`)}
    ${tested && html`<p role="status">${TESTED[tested]}</p>`}
    ${problem && html`<p role="alert" class="caution">${problem}</p>`}
    <div class="wrap">${state === 'off' && html`<button type="button" class="button main" onClick=${() => askForNudges()}>Tell me when something is due</button>`}
      ${state === 'on' && html`<button type="button" class="button main" disabled=${tested === 'waiting'} onClick=${() => sendTest()}>Send a test</button><button type="button" class="button" onClick=${() => stopNudges()}>Turn off here</button>`}</div></section>`;
}
