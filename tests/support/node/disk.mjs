// The disk of the phones in one Node process: an IndexedDB in memory whose transactions can be held before they begin,
// and whose stores can be read without asking the code under test.
import 'fake-indexeddb/auto';

/** The tab whose code runs at this moment, or null: only one does at a time. */
export const running = { tab: null };

const databases = new Map();
const begin = IDBDatabase.prototype.transaction;

IDBDatabase.prototype.transaction = function transaction(...asked) {
  const tx = begin.apply(this, asked);
  const database = this._rawDatabase;
  databases.set(this.name, database);
  const { tab } = running;
  if (tab?.holds) {
    // as if the tab had not come to ask for it: others' transactions go first, and a killed tab's never begins
    database.transactions.splice(database.transactions.indexOf(tx), 1);
    tab.letGo = () => {
      database.transactions.push(tx);
      database.processTransactions();
    };
    tab.stopped({ at: 'storage' });
  }
  return tx;
};

/** What stands in a store. @param {string} database @param {string} store @returns {Array<{key: any, value: any}>} */
export const recordsOf = (database, store) => [
  ...(databases.get(database)?.rawObjectStores.get(store)?.records.values() ?? []),
];

/** @param {string} database @param {string} store */
export const valuesOf = (database, store) => recordsOf(database, store).map(({ value }) => value);

/** Throw a phone's database away. @param {string} name */
export const forget = (name) =>
  new Promise((resolve, reject) => {
    databases.delete(name);
    const asked = indexedDB.deleteDatabase(name);
    asked.onsuccess = resolve;
    asked.onerror = reject;
  });

// Plain rows are most of what is copied, and the general copy takes ten times as long over them.
const copyOfAnything = globalThis.structuredClone;

/** @param {any} value */
function copyOf(value) {
  if (Array.isArray(value)) return value.map(copyOf);
  if (typeof value !== 'object' || value === null) {
    return typeof value === 'function' || typeof value === 'symbol' ? copyOfAnything(value) : value;
  }
  if (Object.getPrototypeOf(value) !== Object.prototype) return copyOfAnything(value);
  const copy = {};
  for (const name of Object.keys(value)) copy[name] = copyOf(value[name]);
  return copy;
}

globalThis.structuredClone = (value, how) => (how ? copyOfAnything(value, how) : copyOf(value));
