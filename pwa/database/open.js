// The only module that opens IndexedDB. One database per device id, and a tiny one that says which.
import { openDB, unwrap } from '../vendor/idb.js';
import { voice } from '../words/voice.js';

const WHICH = 'broodshelf';
const VERSION = 3;

/** @typedef {import('../vendor/idb.js').Database} Database */
/** @typedef {import('../vendor/idb.js').Transaction} Transaction */

/** @type {Map<string, Promise<Database>>} */
const handles = new Map();

/** What is under way in this page. @type {Set<Transaction>} */
const running = new Set();
/** Resolves when this page is shown, at once unless it was left. */
let shown = Promise.resolve();
// a browser may keep a page that is left, and WebKit its open transactions with it: all other pages would wait for ever
globalThis.addEventListener?.('pagehide', () => {
  shown = new Promise((done) => addEventListener('pageshow', () => done(), { once: true }));
  running.forEach(abort);
});

/** A write that did not reach the disk. Nothing of it is stored; the screen says "not saved". */
export class NotSaved extends Error {
  /** @param {unknown} cause */
  constructor(cause) {
    super(voice.say('saving-not-saved'));
    this.name = 'NotSaved';
    this.cause = cause;
  }
}

/** @param {string} name @returns {Promise<Database>} */
function open(name) {
  const known = handles.get(name);
  if (known) return known;
  const drop = () => handles.delete(name);
  const opened = openDB(name, VERSION, {
    upgrade(db, from) {
      if (name === WHICH) {
        if (from < 1) db.createObjectStore('which');
        return;
      }
      if (from < 2) db.createObjectStore('photos', { keyPath: 'id' }).createIndex('by_sent', 'sent');
      if (from < 3) db.createObjectStore('gone', { keyPath: 'id' });
      if (from >= 1) return;
      const rows = db.createObjectStore('rows', { keyPath: 'id' });
      rows.createIndex('by_kind', 'kind');
      rows.createIndex('by_colony', ['set.colony_id', 'happened_ms']);
      const outbox = db.createObjectStore('outbox', { keyPath: 'op_id' });
      outbox.createIndex('by_n', 'n');
      db.createObjectStore('journal', { keyPath: 'op_id' });
      db.createObjectStore('conflicts', { keyPath: 'op_id' });
      db.createObjectStore('meta');
    },
    blocking(_current, _blocked, event) {
      drop(); // a newer tab wants to upgrade: let go at once
      event?.target?.close?.();
    },
    terminated: drop,
  });
  handles.set(name, opened);
  opened.catch(drop);
  return opened;
}

/**
 * Run `work` in one transaction and resolve only when it is complete. A dead handle is dropped, opened anew and the
 * work tried once more.
 * @template T
 * @param {string} name @param {string[]} stores @param {'readonly' | 'readwrite'} mode
 * @param {(tx: Transaction) => Promise<T>} work awaits nothing but the transaction's own requests
 * @returns {Promise<T>}
 */
export async function inTransaction(name, stores, mode, work) {
  try {
    return await once(name, stores, mode, work);
  } catch (error) {
    const gone =
      error instanceof DOMException && ['InvalidStateError', 'UnknownError', 'AbortError'].includes(error.name);
    if (!gone) throw mode === 'readwrite' ? new NotSaved(error) : error;
    handles.delete(name);
  }
  try {
    return await once(name, stores, mode, work);
  } catch (error) {
    throw mode === 'readwrite' ? new NotSaved(error) : error;
  }
}

/**
 * @template T
 * @param {string} name @param {string[]} stores @param {'readonly' | 'readwrite'} mode
 * @param {(tx: Transaction) => Promise<T>} work @returns {Promise<T>}
 */
async function once(name, stores, mode, work) {
  const db = await open(name);
  await shown;
  // strict: the default lets the browser call a write done before it is on the disk
  const tx = db.transaction(stores, mode, { durability: mode === 'readwrite' ? 'strict' : 'default' });
  running.add(tx);
  const failed = tx.done.catch((error) => error).finally(() => running.delete(tx));
  let result;
  try {
    result = await work(tx);
  } catch (error) {
    abort(tx);
    await failed;
    throw error;
  }
  const error = await failed;
  if (error) throw error;
  return result;
}

/** @param {Transaction} tx */
function abort(tx) {
  try {
    tx.abort();
  } catch {
    /* already over */
  }
}

/**
 * A store to write much into: nobody waits for each write, for the transaction is complete only with all of them, and
 * one that fails takes it back. A promise for each would cost as much as the write
 * (`python -m tests.bench.phone_sync`, the first pull of 10,000 rows).
 * @param {Transaction} tx @param {string} name
 */
export const inBulk = (tx, name) => unwrap(tx.objectStore(name));

/** The device that this browser is, or null before the first sign-in. @returns {Promise<string | null>} */
export async function currentDevice() {
  return (await inTransaction(WHICH, ['which'], 'readonly', (tx) => tx.objectStore('which').get('device'))) ?? null;
}

/** @param {string} deviceId */
export async function setCurrentDevice(deviceId) {
  await inTransaction(WHICH, ['which'], 'readwrite', (tx) => tx.objectStore('which').put(deviceId, 'device'));
}

/** The database's name of a device. @param {string} deviceId */
export const databaseOf = (deviceId) => `${WHICH}-${deviceId}`;

/** All devices that this browser has been and of which it keeps something. @returns {Promise<string[]>} */
export async function knownDevices() {
  const names = (await indexedDB.databases()).map(({ name = '' }) => name);
  return names.filter((name) => name.startsWith(databaseOf(''))).map((name) => name.slice(databaseOf('').length));
}

const ASKED = 'asked_to_keep';

/**
 * Ask the browser to keep what this phone holds even when space runs short: when there is something to keep, and only
 * once, because some browsers ask the person; again after installing, which may change the answer.
 * @param {{again?: boolean}} [how]
 */
export async function askToKeep({ again = false } = {}) {
  if (!navigator.storage?.persist || (localStorage.getItem(ASKED) && !again)) return;
  localStorage.setItem(ASKED, 'yes');
  await navigator.storage.persist().catch(() => false); // House shows what it said
}
