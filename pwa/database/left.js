// What an earlier sign-in of this browser has not sent goes over into the store of the present one (docs/sync.md).
import { inTransaction } from './open.js';

/** @typedef {import('./store.js').Store} Store */

const WAITING = ['outbox', 'conflicts', 'photos'];
/** What the present store makes next comes after what it takes over. @type {Array<'n' | 'last_made_ms'>} */
const LAST = ['n', 'last_made_ms'];

/**
 * Take over what waits. It goes from the old store when the new one has it on the disk: an app that is killed in
 * between finds it in both, takes it over again, and the server knows an operation by its id.
 * @param {Store} from of the same person in the same household @param {Store} to
 * @returns {Promise<boolean>} whether there was anything; rejects with `NotSaved`
 */
export async function takeOver(from, to) {
  const found = await inTransaction(from.name, WAITING, 'readonly', (tx) =>
    Promise.all(WAITING.map((name) => tx.objectStore(name).getAll())),
  );
  const left = found.map((all) => all.filter(({ sent }) => sent !== 1)); // a picture that was sent is a copy
  if (!left.flat().length) return false;
  const last = await Promise.all(LAST.map((name) => from.meta(name)));
  await inTransaction(to.name, [...WAITING, 'meta'], 'readwrite', async (tx) => {
    const meta = tx.objectStore('meta');
    const mine = await Promise.all(LAST.map((name) => meta.get(name)));
    await Promise.all([
      ...LAST.map((name, i) => meta.put(Math.max(mine[i] ?? 0, last[i] ?? 0), name)),
      ...WAITING.flatMap((name, i) => left[i]?.map((each) => tx.objectStore(name).put(each))),
    ]);
  });
  await inTransaction(from.name, WAITING, 'readwrite', (tx) =>
    Promise.all(
      WAITING.flatMap((name, i) => left[i]?.map(({ op_id, id }) => tx.objectStore(name).delete(op_id ?? id))),
    ),
  );
  return true;
}
