// What becomes of each operation that the server has answered: it leaves the outbox for the journal, or stays refused.
import { madeMs } from './past.js';

/** @typedef {import('../vendor/idb.js').Transaction} Transaction */

/**
 * All verdicts of an answer at once: a request for each, one after the other, would take most of a full outbox's time.
 * @param {Transaction} tx @param {any} answer
 */
export async function takeVerdicts(tx, answer) {
  const [outbox, journal, meta] = [tx.objectStore('outbox'), tx.objectStore('journal'), tx.objectStore('meta')];
  const verdicts = new Map(answer.answers.map((/** @type {any} */ each) => [each.op_id, each]));
  const [between, last_known_ms = 0] = await Promise.all([
    verdicts.size ? outbox.getAll(rangeOf([...verdicts.keys()])) : [],
    meta.get('last_made_ms'),
  ]);
  let last_made_ms = last_known_ms;
  /** @type {Array<Promise<unknown>>} */
  const writes = [];
  /** @type {string[]} */
  const taken = [];
  for (const entry of between) {
    const verdict = verdicts.get(entry.op_id);
    if (!verdict || verdict.verdict === 'deferred') continue;
    if (verdict.verdict === 'rejected') {
      writes.push(outbox.put({ ...entry, state: 'rejected', answer: verdict }));
      continue;
    }
    // what is sent again after a restore is of the time for which the server took it
    const op = verdict.made_ms === undefined ? entry.op : { ...entry.op, made_at: verdict.made_ms, skew_ms: 0 };
    writes.push(journal.put({ op_id: verdict.op_id, op, at_ms: Date.now() }));
    if (!op.adopt) last_made_ms = Math.max(last_made_ms, verdict.made_ms ?? 0);
    if (verdict.conflicts?.length) {
      const met = { op_id: verdict.op_id, op: entry.op, conflicts: verdict.conflicts };
      writes.push(tx.objectStore('conflicts').put(met));
    }
    taken.push(verdict.op_id);
  }
  if (taken.length && taken.length === between.length) writes.push(outbox.delete(rangeOf(taken)));
  else writes.push(...taken.map((opId) => outbox.delete(opId)));
  await Promise.all(writes);
  if (last_made_ms > answer.server_time) {
    // a clock that ran ahead: what was taken counts as of now at the latest
    const waits = (await outbox.getAll()).filter((e) => e.state === 'waiting' && !e.op?.adopt).map((e) => madeMs(e.op));
    last_made_ms = Math.max(answer.server_time, ...waits);
  }
  await meta.put(last_made_ms, 'last_made_ms');
}

/** From the first to the last of these keys, with what lies between. @param {string[]} keys one or more */
function rangeOf(keys) {
  const sorted = [...keys].sort();
  return IDBKeyRange.bound(sorted[0], sorted.at(-1));
}
