// What a person does with entries that need attention: drop, mend, send again, settle.
import { openStore, reload, syncNow } from './shelf.js';

/** Drop an entry for good. @param {string} opId */
export async function discard(opId) {
  await openStore().discard(opId);
  await reload();
}

/** Send a refused entry again, mended where fields are given. @param {import('../care/overlay.js').Entry} entry @param {Record<string, unknown>} [mended] */
export async function sendAgain(entry, mended = {}) {
  await openStore().mend(entry.op_id, { ...entry.op.set, ...mended });
  await reload();
  void syncNow();
}

/** Leave a conflict as it stands, or bring this phone's values back. @param {any} met @param {boolean} mine */
export async function settle(met, mine) {
  if (mine) {
    const set = Object.fromEntries(met.conflicts.map((/** @type {any} */ c) => [c.field, c.mine]));
    await openStore().enqueue([{ kind: met.op.kind, id: met.op.id, set }]);
  }
  await openStore().settle(met.op_id);
  await reload();
  void syncNow();
}
