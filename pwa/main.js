// The start: show what this phone holds, then fetch words, register the worker and sync.
import { effect } from '@preact/signals';
import { h, render } from 'preact';
import { App } from './screens/app.js';
import { say } from './signals/actions.js';
import { catalogue, patchSaving, saving, session, start } from './signals/shelf.js';

const build = document.body.dataset.build ?? '';
const look = localStorage.getItem('look');
if (look) document.documentElement.dataset.look = look;

async function loadCatalogue() {
  const response = await fetch(`/static/${build}/catalogue.json`);
  catalogue.value = await response.json();
}

async function registerWorker() {
  if (!('serviceWorker' in navigator) || document.body.dataset.worker === 'off') return;
  try {
    const registration = await navigator.serviceWorker.register('/worker.js', { type: 'module', updateViaCache: 'none' });
    const announce = () => patchSaving({ update_ready: Boolean(registration.waiting && navigator.serviceWorker.controller) });
    registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', announce));
    announce();
    let controlled = Boolean(navigator.serviceWorker.controller);
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      if (controlled) location.reload(); // a new build took over: never mix two
      controlled = true;
    });
  } catch { /* without a worker the app works online */ }
}

// whatever wrote: a log that did not reach the disk is never passed over in silence
addEventListener('unhandledrejection', (event) => {
  if (event.reason?.name !== 'NotSaved') return;
  event.preventDefault();
  say(event.reason.message);
});

if (!localStorage.getItem('device')) void import('./screens/start.js').catch(() => undefined); // a first visit: ask for its screen at once
const words = loadCatalogue();
words.catch(() => undefined); // awaited below by those who need it
await start();
if (session.peek()) await words;
const place = document.getElementById('app');
if (place) {
  place.textContent = '';
  render(h(App, null), place);
}
void import('./signals/install.js').catch(() => undefined); // keeps the browser's offer to install until a tap wants it
await registerWorker();
effect(() => {
  if (saving.value.problem?.code === 'upgrade_required') void navigator.serviceWorker?.getRegistration().then((found) => found?.update()).catch(() => undefined);
});
if (session.peek()) void import('./signals/push.js').then((push) => push.refreshPush()).catch(() => undefined);
