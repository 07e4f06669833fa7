// The service worker. This address never changes and is never cached by HTTP; the rest comes under one build id.
// @ts-nocheck: the addresses below are filled in by the server; what it imports is checked.
import { install, activate, answer, routePastWorker } from '/static/{{build}}/worker/shell.js';
import { onPush, onClick, onSync } from '/static/{{build}}/worker/events.js';

const BUILD = '{{build}}';
/** @type {import('./worker/shell.js').Ahead} */
const AHEAD = '{{ahead}}';
const worker = /** @type {ServiceWorkerSelf} */ (self);

worker.addEventListener('install', (event) => {
  event.waitUntil(Promise.all([routePastWorker(event, BUILD), install(BUILD, AHEAD)]));
});
worker.addEventListener('activate', (event) => event.waitUntil(activate(BUILD)));
worker.addEventListener('fetch', (event) => answer(event, BUILD));
worker.addEventListener('push', (event) => event.waitUntil(onPush(event)));
worker.addEventListener('notificationclick', (event) => event.waitUntil(onClick(event)));
worker.addEventListener('sync', (event) => event.waitUntil(onSync()));
worker.addEventListener('message', (event) => {
  if (event.data === 'skip-waiting') worker.skipWaiting();
  if (event.data === 'which-build') event.source.postMessage({ build: BUILD });
});
