// The past, which only the server keeps: a record's revisions, what went, and bringing either back by an operation.
import { get } from '../sync/api.js';
import { keep } from './actions.js';
import { openStore, syncNow } from './shelf.js';
import { m } from '../text/en-more.js';

/** @typedef {{rev: number, at_ms: number, by: string | null, op_id: string | null, asked: Record<string, any>, before: Record<string, any>, lost: Record<string, any>}} Revision */
/** @typedef {{id: string, kind: string, rev: number, at_ms: number, by: string | null, set: Record<string, any>}} Gone */

/** @param {string} path */
async function ask(path) {
  try {
    return await get(path);
  } catch (problem) {
    if (/** @type {any} */ (problem).code === 'offline') throw new Error(m.past.offline);
    throw problem;
  }
}

/** @param {string} id @returns {Promise<Revision[]>} newest first */
export const revisionsOf = async (id) => (await ask(`/api/records/${id}/history`)).revisions;

/** What was deleted last and can be taken back, newest first. @returns {Promise<Gone[]>} */
export const whatWent = async () => (await ask('/api/records/gone')).gone;

/** Let a field have an earlier value again. @param {{id: string, kind: string}} row @param {string} field @param {unknown} value */
export const bringBack = (row, field, value) => keep(row.kind, { [field]: value }, row.id);

/** Take a deletion back; it is seen again once it has synced. @param {Gone} gone */
export async function takeBack(gone) {
  await openStore().enqueue([{ kind: gone.kind, id: gone.id, set: { gone: false }, rev: gone.rev }]);
  await syncNow();
}
