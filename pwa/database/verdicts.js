// What becomes of each operation that the server has answered: it leaves the outbox for the journal, or stays refused.
import { uuid7 } from './ids.js';
import { inBulk } from './open.js';
import { madeMs } from './past.js';

/** @typedef {import('../vendor/idb.js').Transaction} Transaction */

/**
 * All verdicts of an answer at once: a request for each, one after the other, would take most of a full outbox's time.
 * @param {Transaction} tx @param {import('../answers.d.ts').SyncAnswer} answer
 * @param {boolean} next whether no later answer was stored since this one was asked for
 */
export async function takeVerdicts(tx, answer, next) {
  const [outbox, meta] = [tx.objectStore('outbox'), tx.objectStore('meta')];
  const [writes, conflicts] = [inBulk(tx, 'outbox'), inBulk(tx, 'conflicts')];
  const verdicts = new Map(answer.answers.map((each) => [each.op_id, each]));
  const [between, last_known_ms = 0] = await Promise.all([
    verdicts.size ? outbox.getAll(rangeOf([...verdicts.keys()])) : [],
    meta.get('last_made_ms'),
  ]);
  let last_made_ms = last_known_ms;
  /** @type {import('../care/overlay.js').Operation[]} */
  const taken = [];
  for (const entry of between) {
    const verdict = verdicts.get(entry.op_id);
    if (!verdict || verdict.verdict === 'deferred') continue;
    if (verdict.verdict === 'rejected') {
      writes.put({ ...entry, state: 'rejected', answer: verdict });
      continue;
    }
    // what is sent again after a restore is of the time for which the server took it, never ahead of its clock
    const taken_ms = verdict.made_ms ?? Math.min(madeMs(entry.op), answer.server_time);
    const op = taken_ms === madeMs(entry.op) ? entry.op : { ...entry.op, made_at: taken_ms, skew_ms: 0 };
    taken.push(op);
    if (!op.adopt) last_made_ms = Math.max(last_made_ms, verdict.made_ms ?? 0);
    if (verdict.conflicts?.length) {
      conflicts.put({ op_id: verdict.op_id, op: entry.op, conflicts: verdict.conflicts });
    }
  }
  const ids = taken.map((op) => op.op_id);
  if (taken.length && taken.length === between.length) writes.delete(rangeOf(ids));
  else for (const opId of ids) writes.delete(opId);
  if (taken.length) inBulk(tx, 'journal').put({ op_id: uuid7(), ops: taken, at_ms: Date.now() });
  if (next) {
    // what is made next is later than all that this answer tells; what a clock that ran ahead made counts as of now
    const ahead = last_made_ms > answer.server_time ? await outbox.getAll() : [];
    const waits = ahead.filter((e) => e.state === 'waiting' && !e.op?.adopt).map((e) => madeMs(e.op));
    last_made_ms = Math.max(answer.server_time, ...waits);
  }
  await meta.put(last_made_ms, 'last_made_ms');
}

/** From the first to the last of these keys, with what lies between. @param {string[]} keys one or more */
function rangeOf(keys) {
  const sorted = [...keys].sort();
  return IDBKeyRange.bound(sorted[0], sorted.at(-1));
}
