// The app's own storage and sync (pwa/database, pwa/sync) in Node, on an IndexedDB in memory, driven line by line by
// tests/support/shipped_phone.py: whoever drives it answers each request, lets another tab run first, or kills one.
import 'fake-indexeddb/auto';
import { AsyncLocalStorage } from 'node:async_hooks';
import { createInterface } from 'node:readline';
import { pathToFileURL } from 'node:url';

const app = (path) => import(pathToFileURL(`${process.argv[2]}/${path}`).href);

let clock = 0;
Date.now = () => clock;
let drawn = 0; // the same run chooses the same ids each time it is played
Object.defineProperty(globalThis.crypto, 'getRandomValues', {
  value: (bytes) => {
    drawn += 1;
    for (let i = 0; i < bytes.length; i += 1) bytes[i] = i < 8 ? i : Math.floor(drawn / 256 ** (bytes.length - 1 - i)) & 0xff;
    return bytes;
  },
});

const running = new AsyncLocalStorage();
/** Each tab: what it waits for, and who waits for its next stop. */
const tabs = new Map();

globalThis.fetch = (_path, { body }) => {
  const tab = running.getStore();
  return new Promise((resolve, reject) => {
    tab.answered = (answer) => resolve(new Response(JSON.stringify(answer), { headers: { 'Content-Type': 'application/json' } }));
    tab.lost = () => reject(new TypeError('the connection broke'));
    tab.stopped({ body: JSON.parse(body) });
  });
};

const [{ Store }, { drain }, { inTransaction }, { overlayRows }] = await Promise.all(
  ['database/store.js', 'sync/drain.js', 'database/open.js', 'care/overlay.js'].map(app),
);

const stores = new Map();
const storeOf = (device) => stores.get(device) ?? stores.set(device, new Store(device)).get(device);

const all = (store, name) => inTransaction(store.name, [name], 'readonly', async (tx) => {
  const kept = tx.objectStore(name);
  const [keys, values] = await Promise.all([kept.getAllKeys(), kept.getAll()]);
  return Object.fromEntries(keys.map((key, i) => [key, values[i]]));
});

const nextStop = (tab) => new Promise((resolve) => { tab.stopped = resolve; });

const commands = {
  enter: ({ device, me }) => storeOf(device).setMeta({ me }),
  write: ({ device, change }) => storeOf(device).enqueue([change]),
  mend: async ({ device, op_id, set }) => {
    const store = storeOf(device);
    const before = await all(store, 'outbox');
    await store.mend(op_id, set);
    const after = await all(store, 'outbox');
    return Object.keys(before).filter((id) => !(id in after));
  },
  read: ({ device, name }) => all(storeOf(device), name),
  overlay: async ({ device }) => {
    const { rows, entries } = await storeOf(device).snapshot();
    return Object.fromEntries([...overlayRows(rows, entries, null)].map(([id, row]) => [id, { ...row.set, kind: row.kind }]));
  },
  begin: ({ device, tab: name }) => {
    const tab = {};
    tabs.set(name, tab);
    const stop = nextStop(tab);
    running.run(tab, () => drain(storeOf(device))).then(
      () => tab.stopped({ done: true }),
      (error) => tab.stopped({ done: true, error: `${error.name}: ${error.message}` }),
    );
    return stop;
  },
  reply: ({ tab: name, answer }) => {
    const tab = tabs.get(name);
    const stop = nextStop(tab);
    if (answer) tab.answered(answer);
    else tab.lost();
    return stop;
  },
  kill: ({ tab: name }) => tabs.delete(name), // what it waits for never comes
};

for await (const line of createInterface({ input: process.stdin })) {
  const { do: name, now, ...asked } = JSON.parse(line);
  clock = now;
  let said;
  try {
    said = { said: (await commands[name](asked)) ?? null };
  } catch (error) {
    said = { failed: String(error.stack ?? error) };
  }
  process.stdout.write(`${JSON.stringify(said)}\n`);
}
