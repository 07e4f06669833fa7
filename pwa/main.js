// The start: show what this phone holds, then fetch words, register the worker and sync.
import { effect } from '@preact/signals';
import { h, render } from 'preact';
import { followFocus } from './components/focus.js';
import { followWriting, goOver } from './components/new-version.js';
import { App } from './screens/app.js';
import { tell } from './signals/actions.js';
import { catalogue } from './signals/rows.js';
import { patchSaving, saving } from './signals/saving.js';
import { session } from './signals/session.js';
import { start } from './signals/sync.js';
import { hear, spoken } from './words/fetched.js';
import { HOUR_MS } from './care/rules.js';

const build = document.body.dataset.build ?? '';
const look = localStorage.getItem('look');
if (look) document.documentElement.dataset.look = look;

const LOOK_AGAIN_MS = HOUR_MS;

async function loadCatalogue() {
  const response = await fetch(`/static/${build}/catalogue.json`);
  catalogue.value = await response.json();
}

async function registerWorker() {
  if (!('serviceWorker' in navigator) || document.body.dataset.worker === 'off') return;
  try {
    const registration = await navigator.serviceWorker.register('/worker.js', {
      type: 'module',
      updateViaCache: 'imports', // those have addresses of their build and never change
    });
    const announce = () =>
      patchSaving({ update_ready: Boolean(registration.waiting && navigator.serviceWorker.controller) });
    const watch = () => registration.installing?.addEventListener('statechange', announce);
    registration.addEventListener('updatefound', watch);
    watch(); // one that began before this page listened
    announce();
    lookForUpdates(registration);
    let controlled = Boolean(navigator.serviceWorker.controller);
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      if (controlled) goOver(); // a new build took over: never mix two
      controlled = true;
    });
    navigator.serviceWorker.addEventListener('message', ({ data }) => meet(data.build));
    navigator.serviceWorker.startMessages();
    navigator.serviceWorker.controller?.postMessage('which-build');
  } catch {
    /* without a worker the app works online */
  }
}

/**
 * A new worker may take over while this page still loads, before anything here listens.
 * @param {unknown} workers_build
 */
function meet(workers_build) {
  if (typeof workers_build !== 'string' || workers_build === build) return;
  // once: a copy that is gone could bring us here for ever
  if (sessionStorage.getItem('reloaded_for') === workers_build) return;
  sessionStorage.setItem('reloaded_for', workers_build);
  goOver();
}

/**
 * An app that stays open never navigates, and browsers look for a new version only then.
 * @param {ServiceWorkerRegistration} registration
 */
function lookForUpdates(registration) {
  let looked_ms = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - looked_ms < LOOK_AGAIN_MS) return;
    registration.update().then(
      () => {
        looked_ms = Date.now();
      },
      () => undefined,
    ); // without a connection: next time
  });
}

// whatever wrote: a log that did not reach the disk is never passed over in silence
addEventListener('unhandledrejection', (event) => {
  if (event.reason?.name !== 'NotSaved') return;
  event.preventDefault();
  tell(event.reason.message);
});

/** Not at the module's top: what is loaded later needs this file, and would wait until all of it is done. */
async function begin() {
  // a first visit: ask for its screen at once
  if (!localStorage.getItem('device')) {
    void Promise.all([import('./screens/start.js'), hear('screens')]).catch(() => undefined);
  }
  const known = Promise.all([loadCatalogue(), hear('catalogue')]);
  known.catch(() => undefined); // awaited below by those who need it
  const [{ first }] = await Promise.all([start(), spoken]);
  if (session.peek()) await known;
  else void import('./signals/people.js').then((people) => people.comeBack()).catch(() => undefined);
  const place = document.getElementById('app');
  if (place) {
    followFocus(place);
    followWriting(place);
    place.textContent = '';
    render(h(App, null), place);
  }
  void hear('screens').catch(() => undefined); // before the first screen asks
  // also keeps the browser's offer to install until a tap wants it
  void import('./signals/home-screen.js').catch(() => undefined);
  await registerWorker();
  effect(() => {
    if (saving.value.problem?.code === 'upgrade_required') {
      void navigator.serviceWorker
        ?.getRegistration()
        .then((found) => found?.update())
        .catch(() => undefined);
    }
  });
  await first;
  if (!session.peek() || !saving.peek().online) return; // no phone keeps what only talks with the server
  void import('./signals/push.js').then((push) => push.refreshPush()).catch(() => undefined);
}

void begin();
