// The app shell in the cache: one cache a build, filled whole or not at all.

const PREFIX = 'shell-';
const worker = /** @type {any} */ (self);

/** @param {string} build @param {string[]} list */
export async function install(build, list) {
  const cache = await caches.open(PREFIX + build);
  try {
    await Promise.all(list.map((path) => fetchInto(cache, build, path)));
  } catch (error) {
    await caches.delete(PREFIX + build);
    throw error;
  }
}

/** @param {Cache} cache @param {string} build @param {string} path */
async function fetchInto(cache, build, path) {
  const response = await fetch(new Request(path, { cache: 'no-cache', credentials: 'same-origin' }));
  // a proxy's login page or an error must never become part of the app
  if (!isOurs(response, path)) throw new Error(`The shell could not be fetched whole: ${path} (${response.status})`);
  // addresses that all builds share: the server may have moved on since this worker was fetched
  if (!path.includes(build) && !(await response.clone().text()).includes(build)) {
    throw new Error(`${path} is of another build than ${build}`);
  }
  await cache.put(path, response);
}

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
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== PREFIX + build);
  await Promise.all(old.map((name) => caches.delete(name)));
  await worker.clients.claim();
}

/**
 * Answer from the cache of this build; everything else goes to the network untouched.
 * @param {any} event @param {string} build @param {string[]} list
 */
export function answer(event, build, list) {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin) return;
  if (event.request.mode === 'navigate' ? url.pathname !== '/' : !list.includes(url.pathname)) return;
  event.respondWith(fromCache(url.pathname, event.request, build));
}

/** @param {string} path @param {Request} request @param {string} build */
async function fromCache(path, request, build) {
  const cache = await caches.open(PREFIX + build);
  return (await cache.match(path)) ?? fetch(request);
}
