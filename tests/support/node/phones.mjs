// The app's own storage and sync (pwa/database, pwa/sync), as many phones of it as a world has, driven line by line by
// tests/support/world/phones.py. A line is one thing that happens; most are not answered: many are read at once.
// A tab stops wherever it waits for the network and, if it is asked to, before each transaction with its storage.
import { readSync, writeSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { forget, recordsOf, running, valuesOf } from './disk.mjs';
import { doOn, mendOn } from './person.mjs';

let clock = 0;
Date.now = () => clock;
let drawn = 0; // the same run chooses the same ids each time it is played
Object.defineProperty(globalThis.crypto, 'getRandomValues', {
  value(bytes) {
    drawn += 1;
    for (let i = 0; i < bytes.length; i += 1) {
      bytes[i] = i < 8 ? i : Math.floor(drawn / 256 ** (bytes.length - 1 - i)) & 0xff;
    }
    return bytes;
  },
});

globalThis.fetch = (_path, { body }) =>
  new Promise((resolve, reject) => {
    const { tab } = running;
    tab.answered = (status, text) =>
      resolve(new Response(text, { status, headers: { 'Content-Type': 'application/json' } }));
    tab.lost = () => reject(new TypeError('the connection broke'));
    tab.stopped({ at: 'network' }, asAsked(body, tab));
  });

/** The request as a phone of this page size and version sends it. */
function asAsked(body, { limit, schema }) {
  return limit === 1000 && schema === 1 ? body : JSON.stringify({ ...JSON.parse(body), limit, schema });
}

/** Builds of the app by their folder: a copy with a fault beside the one that ships. */
const apps = new Map();

async function appIn(folder) {
  const load = (path) => import(pathToFileURL(`${folder}/${path}`).href);
  const [{ Store }, { drain }, { overlayRows }] = await Promise.all(
    ['database/store.js', 'sync/drain.js', 'care/overlay.js'].map(load),
  );
  return { Store, drain, overlayRows };
}

const phones = new Map();
const tabs = new Map();

/** Let a tab run until its next stop. @returns {Promise<any[]>} what is said of it: a line, and the request's if any */
async function untilStop(tab, goOn) {
  const stop = new Promise((resolve) => {
    tab.stopped = (...said) => resolve(said);
  });
  running.tab = tab;
  goOn();
  const said = await stop;
  if (said[0].at === 'storage') await new Promise(setImmediate); // it asks for all that it wants of this transaction
  running.tab = null;
  return said;
}

function ended(phone, error = null) {
  const entries = valuesOf(phone.store.name, 'outbox');
  const count = (state) => entries.filter((entry) => entry.state === state).length;
  return { at: 'end', error, waiting: count('waiting'), rejected: count('rejected') };
}

const commands = {
  async phone({ device, folder, me }) {
    if (!apps.has(folder)) apps.set(folder, await appIn(folder));
    const app = apps.get(folder);
    const phone = { app, store: new app.Store(device), written: [] };
    phones.set(device, phone);
    await phone.store.setMeta({ me });
  },
  person: ({ device, ...asked }) => doOn(phones.get(device), asked),
  mend: async ({ device }) => [await mendOn(phones.get(device))],
  begin({ device, tab: number, limit, schema }) {
    const phone = phones.get(device);
    const tab = { limit, schema };
    tabs.set(number, tab);
    return untilStop(tab, () => {
      phone.app.drain(phone.store).then(
        () => tab.stopped(ended(phone)),
        (error) => tab.stopped(ended(phone, { status: error.status ?? -1, text: String(error.stack) })),
      );
    });
  },
  reply({ tab: number, status, holds }) {
    const tab = tabs.get(number);
    const text = status ? nextLine() : '';
    tab.holds = holds;
    return untilStop(tab, () => (status ? tab.answered(status, text) : tab.lost()));
  },
  goOn: ({ tab: number }) => untilStop(tabs.get(number), tabs.get(number).letGo),
  close({ tab: number }) {
    tabs.delete(number); // of one that was killed: what it waits for never comes
  },
  read({ device }) {
    const { store, written } = phones.get(device);
    const names = ['rows', 'gone', 'outbox', 'journal', 'conflicts', 'meta'];
    const kept = (name) => Object.fromEntries(recordsOf(store.name, name).map(({ key, value }) => [key, value]));
    return [{ ...Object.fromEntries(names.map((name) => [name, kept(name)])), written }];
  },
  used() {
    const { user, system } = process.cpuUsage();
    return [(user + system) / 1e6];
  },
  async forget({ device }) {
    await forget(phones.get(device).store.name);
    phones.delete(device);
  },
};

const chunk = Buffer.alloc(1 << 16);
let unread = [];
let part = '';
const decoder = new TextDecoder();

/** The next line of what this process is told; it waits, as nothing happens here unasked. Null: no more will come. */
function nextLine() {
  while (!unread.length) {
    const length = readSync(0, chunk);
    if (!length) return null;
    const lines = (part + decoder.decode(chunk.subarray(0, length), { stream: true })).split('\n');
    part = lines.pop();
    unread = lines;
    unread.reverse();
  }
  return unread.pop();
}

function say(lines) {
  const text = Buffer.from(lines.map((line) => `${typeof line === 'string' ? line : JSON.stringify(line)}\n`).join(''));
  for (let at = 0; at < text.length;) at += writeSync(1, text, at);
}

let failed = null; // of what was not answered: told with the next answer
for (let line = nextLine(); line !== null; line = nextLine()) {
  const { do: name, now, ask, ...asked } = JSON.parse(line);
  clock = now;
  let said = [null];
  try {
    said = (await commands[name](asked)) ?? said;
  } catch (error) {
    failed ??= `${name}: ${error.stack ?? error}`;
  }
  if (ask) {
    say(failed ? [{ failed }] : said);
    failed = null;
  }
}
