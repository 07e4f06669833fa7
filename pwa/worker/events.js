// Nudges and background sync. Every push shows a notification, whatever fails; a tap opens the round.
import { currentDevice } from '../database/open.js';
import { Store } from '../database/store.js';
import { uuid7 } from '../database/ids.js';
import { drain } from '../sync/drain.js';
import { sendPhotos } from '../sync/photos.js';
import { post } from '../sync/api.js';
import { asSuggested, putOff } from '../care/changes.js';
import { setRight, withOffset } from '../care/instants.js';
import { languageHere, SHELL } from './shell.js';
import { HOUR_MS } from '../care/rules.js';

/** @typedef {import('../answers.d.ts').NudgedTask} NudgedTask */
/** @typedef {Partial<import('../answers.d.ts').Pushed['broodshelf']> & {navigate?: string}} Data of a notification */
/** @typedef {{title: string, options: NotificationOptions & {data: Data}, badge?: number}} Nudge */

const worker = /** @type {ServiceWorkerSelf} */ (self);
const LATER_MS = HOUR_MS;

/** @param {PushEvent} event */
export async function onPush(event) {
  const nudge = read(event, await keptMessages().catch(() => ''));
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

/** The messages that are kept with the app, in the language of this phone. @returns {Promise<string>} */
async function keptMessages() {
  const shell = (await caches.keys()).find((name) => name.startsWith(SHELL));
  if (!shell) return '';
  const cache = await caches.open(shell);
  const kept = (await cache.keys()).filter(({ url }) => url.endsWith('/first.ftl'));
  const language = await languageHere(kept.map(languageIn));
  const spoken = kept.find((each) => languageIn(each) === language) ?? kept[0];
  return (spoken && (await (await cache.match(spoken))?.text())) ?? '';
}

/** Which language messages are of. @param {Request} kept their address */
const languageIn = ({ url }) => url.split('/').at(-2) ?? '';

/** A message of one line that is told nothing. @param {string} messages @param {string} id @returns {string} */
const said = (messages, id) => messages.match(new RegExp(`^${id}=(.*)$`, 'm'))?.[1] ?? '';

/** @param {PushEvent} event @param {string} messages @returns {Nudge} */
function read(event, messages) {
  try {
    /** @type {import('../answers.d.ts').Pushed} */
    const payload = event.data?.json();
    const { title, body, navigate, tag, lang } = payload.notification;
    if (typeof title !== 'string') throw new TypeError('a nudge without a title');
    const data = { ...payload.broodshelf, navigate };
    const actions = data.items?.length
      ? [
          { action: 'log', title: said(messages, 'phone-nudges-done') },
          { action: 'later', title: said(messages, 'phone-nudges-in-an-hour') },
        ]
      : [];
    return { title, options: { body: String(body ?? ''), tag, lang, data, actions }, badge: payload.app_badge };
  } catch {
    const body = said(messages, 'phone-nudges-something');
    return { title: 'Broodshelf', options: { body, data: { navigate: '/#/round' } } };
  }
}

/** @param {NotificationEvent} event */
export async function onClick(event) {
  event.notification.close();
  /** @type {Data} */
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
/** @typedef {Parameters<typeof asSuggested>[0]} Doable a task with its log */

/** @param {'log' | 'later'} action @param {NudgedTask[]} items */
async function write(action, items) {
  const device = await currentDevice();
  if (!device) return;
  const store = new Store(device);
  const nowMs = setRight(Date.now(), (await store.meta('skew_ms')) ?? 0);
  const happened_at = withOffset(new Date(nowMs));
  const until = withOffset(new Date(nowMs + LATER_MS));
  const changes = items
    .filter((item) => action === 'later' || item.suggested)
    .map((item) => (action === 'later' ? putOff(item, until) : asSuggested(/** @type {Doable} */ (item))))
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
