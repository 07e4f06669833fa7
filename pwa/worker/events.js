// Nudges and background sync. Every push shows a notification, whatever fails; a tap opens the round.
import { currentDevice } from '../database/open.js';
import { Store } from '../database/store.js';
import { uuid7 } from '../database/ids.js';
import { drain } from '../sync/drain.js';
import { sendPhotos } from '../sync/photos.js';
import { post } from '../sync/api.js';
import { asSuggested, putOff } from '../care/changes.js';
import { setRight, withOffset } from '../care/instants.js';

const worker = /** @type {any} */ (self);
const LATER_MS = 3_600_000;

/** @param {any} event */
export async function onPush(event) {
  const nudge = read(event);
  const delivery_id = nudge.options.data.delivery_id;
  let shown = true;
  try {
    await worker.registration.showNotification(nudge.title, nudge.options);
  } catch {
    shown = false;
  }
  try {
    if (nudge.badge !== undefined) await worker.navigator.setAppBadge?.(nudge.badge);
  } catch {
    /* the icon goes without its number */
  }
  if (typeof delivery_id === 'string') await post('/api/push/ack', { delivery_id, shown }).catch(() => undefined);
}

/** @param {any} event */
function read(event) {
  try {
    const payload = event.data.json();
    const { title, body, navigate, tag } = payload.notification;
    if (typeof title !== 'string') throw new TypeError('a nudge without a title');
    const data = { ...payload.broodshelf, navigate };
    const actions = data.items?.length
      ? [
          { action: 'log', title: 'Done as suggested' },
          { action: 'later', title: 'In an hour' },
        ]
      : [];
    return { title, options: { body: String(body ?? ''), tag, data, actions }, badge: payload.app_badge };
  } catch {
    return { title: 'Broodshelf', options: { body: 'Something on the shelf is due.', data: { navigate: '/#/round' } } };
  }
}

/** @param {any} event */
export async function onClick(event) {
  event.notification.close();
  const data = event.notification.data ?? {};
  if (event.action === 'log' || event.action === 'later') {
    await write(event.action, data.items ?? []);
    await onSync()
      .catch(() => worker.registration.sync?.register('logs'))
      .catch(() => undefined); // then the app sends it
    return;
  }
  const url = data.navigate ?? '/#/round';
  const pages = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const page = pages[0];
  if (page) {
    page.postMessage({ open: url });
    await page.focus();
  } else {
    await worker.clients.openWindow(url);
  }
}

/** @typedef {import('../care/overlay.js').Change & {id: string}} Change */

/** @param {'log' | 'later'} action @param {any[]} items */
async function write(action, items) {
  const device = await currentDevice();
  if (!device) return;
  const store = new Store(device);
  const nowMs = setRight(Date.now(), (await store.meta('skew_ms')) ?? 0);
  const happened_at = withOffset(new Date(nowMs));
  const until = withOffset(new Date(nowMs + LATER_MS));
  const changes = items
    .filter((item) => action === 'later' || item.suggested)
    .map((item) => (action === 'later' ? putOff(item, until) : asSuggested(item)))
    .map(({ kind, set }) => /** @type {Change} */ ({ kind, id: uuid7(), set: { happened_at, ...set } }));
  if (changes.length) await store.enqueue(changes);
  new BroadcastChannel('broodshelf').postMessage('changed');
}

/** Send what waits; rejects where it stays in the outbox, and the browser that asked tries again. */
export async function onSync() {
  const device = await currentDevice();
  if (!device) return;
  await drain(new Store(device));
  await sendPhotos(device);
  new BroadcastChannel('broodshelf').postMessage('changed');
}
