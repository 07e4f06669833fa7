// The app shell in the cache: one cache a build, filled whole or not at all.

import { CHOICE, languageOf, messagesAddress } from '../words/language.js';

export const SHELL = 'shell-';
const MANIFEST = '/manifest.webmanifest';
const worker = /** @type {ServiceWorkerSelf} */ (self);

/**
 * What is fetched ahead, so that the app opens without a connection: addresses.
 * @typedef {object} Ahead
 * @property {string[]} files kept as they come
 * @property {string[]} [languages] that there are; one of them is kept
 * @property {string[]} [words] the parts of it
 * @property {string[]} parcels many scripts in one answer: name and text of each, parted by a null
 * @property {string} decoder what reads labels where the browser cannot
 */

/** @param {string} build @param {Ahead} ahead */
export async function install(build, { files, languages = [], words = [], parcels, decoder }) {
  const cache = await caches.open(SHELL + build);
  const language = await languageHere(languages);
  const spoken = words.map((part) => messagesAddress(language, build, part));
  const single = [...files, ...spoken, ...((await readsLabels()) ? [] : [decoder])];
  try {
    await Promise.all([
      ...single.map(async (path) => cache.put(path, await fetchOurs(path, build))),
      ...parcels.map((path) => unpackInto(cache, path, build)),
    ]);
  } catch (error) {
    await caches.delete(SHELL + build);
    throw error;
  }
}

/** What the page speaks of these. @param {string[]} languages */
export async function languageHere(languages) {
  const chosen = await caches.match(CHOICE.address, { cacheName: CHOICE.cache });
  return languageOf(await chosen?.text(), worker.navigator.languages, languages);
}

/** Whether this browser's own detector knows the labels' code. @returns {Promise<boolean>} */
async function readsLabels() {
  /** @type {string[] | undefined} */
  const formats = await worker.BarcodeDetector?.getSupportedFormats().catch(() => []);
  return formats?.includes('qr_code') ?? false;
}

/** @param {Cache} cache @param {string} path @param {string} build */
async function unpackInto(cache, path, build) {
  const parts = (await (await fetchOurs(path, build)).text()).split('\0');
  const headers = { 'Content-Type': 'text/javascript; charset=utf-8' };
  for (let at = 0; at < parts.length; at += 2) {
    await cache.put(addressOf(parts[at] ?? '', build), new Response(parts[at + 1], { headers }));
  }
}

/** @param {string} name @param {string} build */
const addressOf = (name, build) => `/static/${build}/${name}`;

/**
 * Fetch what must be of this build and of our server.
 * @param {string} path @param {string} build
 */
async function fetchOurs(path, build) {
  const of_one_build = path.startsWith(addressOf('', build));
  // such a file never changes, so the one that the page has just fetched does
  let response = await ask(path, of_one_build ? 'default' : 'no-cache');
  if (of_one_build && !isOurs(response, path)) response = await ask(path, 'reload');
  // a proxy's login page or an error must never become part of the app
  if (!isOurs(response, path)) throw new Error(`The shell could not be fetched whole: ${path} (${response.status})`);
  // addresses that all builds share: the server may have moved on since this worker was fetched
  if (!of_one_build && !(await response.clone().text()).includes(build)) {
    throw new Error(`${path} is of another build than ${build}`);
  }
  return response;
}

/** @param {string} path @param {RequestCache} cache */
const ask = (path, cache) => fetch(new Request(path, { cache, credentials: 'same-origin' }));

/** @param {Response} response @param {string} path */
function isOurs(response, path) {
  const policy = response.headers.get('Content-Security-Policy') ?? '';
  const html = (response.headers.get('Content-Type') ?? '').includes('text/html');
  return (
    response.status === 200 &&
    !response.redirected &&
    response.type === 'basic' &&
    html === (path === '/') &&
    policy.includes("default-src 'none'")
  );
}

/** @param {string} build */
export async function activate(build) {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(SHELL) && name !== SHELL + build);
  await Promise.all(old.map((name) => caches.delete(name)));
  await worker.clients.claim();
}

/**
 * Let the browser take this build's files from the cache by itself, where it can: a start then asks the worker once and
 * not for each module. What the cache lacks comes from the network, as in `answer`.
 * https://w3c.github.io/ServiceWorker/#register-router-method
 * @param {WorkerInstallEvent} event @param {string} build
 */
export async function routePastWorker(event, build) {
  try {
    await event.addRoutes?.({
      condition: { urlPattern: { pathname: addressOf('*', build) }, requestMethod: 'get' },
      source: { cacheName: SHELL + build },
    });
  } catch {
    /* a browser with another idea of routes: the worker answers */
  }
}

/**
 * Answer from the cache of this build; everything else goes to the network untouched.
 * @param {FetchEvent} event @param {string} build
 */
export function answer(event, build) {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== location.origin) return;
  const kept = pathname === '/' || pathname === MANIFEST || pathname.startsWith(addressOf('', build));
  if (!kept || (mode === 'navigate' && pathname !== '/')) return;
  event.respondWith(fromCache(pathname, event.request, build));
}

/** @param {string} path @param {Request} request @param {string} build */
async function fromCache(path, request, build) {
  const cache = await caches.open(SHELL + build);
  return (await cache.match(path)) ?? fetch(request);
}
