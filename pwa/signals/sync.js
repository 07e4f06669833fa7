// Round trips with the server: when they happen, and what they bring to the screens.
import { currentDevice } from '../database/open.js';
import { ApiProblem } from '../sync/api.js';
import { drain } from '../sync/drain.js';
import { sendPhotos } from '../sync/photos.js';
import { startClock, tick } from './clock.js';
import { reload, showStored } from './rows.js';
import { patchSaving, saving } from './saving.js';
import { heldStore, holdStore, openStore, session } from './session.js';

/** @typedef {import('../care/overlay.js').Row} Row */
/** @typedef {import('../database/store.js').Store} Store */
/** @typedef {import('../answers.d.ts').Known} Known */

const SYNC_EVERY_MS = 60_000;
const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('broodshelf') : null;

/**
 * Open the store of the device that this browser is, if it is one, and show what it holds.
 * @returns {Promise<{first: Promise<void>}>} the round trips that begin then
 */
export async function start() {
  const device = await currentDevice();
  if (device) {
    holdStore(device);
    await reload();
  } else {
    session.value = null;
  }
  channel?.addEventListener('message', () => void lookAgain());
  globalThis.addEventListener('online', () => void syncNow());
  globalThis.addEventListener('offline', () => patchSaving({ online: false }));
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') {
      tick();
      void syncNow();
    }
  });
  startClock();
  setInterval(() => {
    if (document.visibilityState === 'visible') void syncNow();
  }, SYNC_EVERY_MS);
  return { first: syncNow() };
}

/** Show what another tab has stored; be who this browser is by now, if one has signed in meanwhile. */
async function lookAgain() {
  if ((await currentDevice()) === (heldStore()?.deviceId ?? null)) await reload();
  else location.reload();
}

/** Keep of this phone itself what is known, and show it here and in other tabs. @param {Known} facts */
export async function know(facts) {
  await openStore().setMeta(facts);
  await reload();
  channel?.postMessage('changed');
}

/**
 * Sign this browser in as a device.
 * @param {import('../answers.d.ts').Me} me the server's answer
 * @param {{emptied?: boolean}} facts `emptied`: its storage was, so logs may be lost
 */
export async function enter(me, { emptied = false }) {
  holdStore(me.device_id);
  await know({ me, ended: null, left: false, emptied });
  void syncNow(); // the screen says what is on its way: nobody waits before a form that has done its work
}

/** The round trips under way, and for which store. @type {{store: Store, done: Promise<void>} | null} */
let running = null;
let asked_again = false;

/** Make both sides even; safe to call at any time. @returns {Promise<void>} */
export function syncNow() {
  const store = heldStore();
  if (!store || session.peek() === null) return Promise.resolve();
  if (running?.store === store) {
    asked_again = true; // what is under way may be failing already: whoever asks now gets a try of its own
    return running.done;
  }
  const done = run(store).finally(() => {
    if (running?.done !== done) return undefined; // this browser is another device by now, which does not wait for it
    running = null;
    if (!asked_again) return undefined;
    asked_again = false;
    return syncNow();
  });
  running = { store, done };
  return done;
}

/** @param {Store} mine */
async function run(mine) {
  /** Nothing is said of a device that this browser no longer is. @type {typeof patchSaving} */
  const tell = (facts) => {
    if (heldStore() === mine) patchSaving(facts);
  };
  tell({ syncing: true });
  /** @type {Map<string, Row | null>} */
  const news = new Map();
  let replaced = false;
  try {
    await drain(mine, (answer) => {
      replaced ||= answer.reset;
      if (JSON.stringify(answer.told ?? null) !== JSON.stringify(saving.peek().told)) {
        tell({ told: answer.told ?? null });
      }
      const { joining } = saving.peek();
      if (joining !== null) tell({ joining: joining + answer.rows.length });
      for (const row of answer.rows) news.set(row.id, row);
      for (const row of answer.gone) news.set(row.id, null);
    });
    await sendPhotos(mine.deviceId);
    if (session.peek()?.ended) await mine.setMeta({ ended: null }); // a server that knew nobody, and does again
    tell({ online: true, problem: null });
  } catch (error) {
    const problem = error instanceof ApiProblem ? error : new ApiProblem(0, 'failed', String(error));
    tell({
      online: problem.code !== 'offline',
      problem: problem.code === 'offline' ? null : { code: problem.code, detail: problem.message },
    });
    if (problem.code === 'offline') {
      void navigator.serviceWorker?.ready.then((worker) => worker.sync?.register('logs')).catch(() => undefined);
    } // sent also when the app is closed by then
    if (problem.isOut) await mine.setMeta({ ended: problem.code });
    if (problem.code === 'wrong_device') await lookAgain();
  } finally {
    tell({ syncing: false });
    if (heldStore() === mine) await (replaced ? reload() : showStored(news));
    channel?.postMessage('changed');
  }
}
