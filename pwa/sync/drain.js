// Sending what waits and taking what is new: round trips until both sides are even (docs/sync.md).
// Used by the page and by the worker; under a Web Lock where there is one, correct without.
import { patience, post } from './api.js';

const SCHEMA = 1;
const MOST_OPERATIONS = 500;
const MOST_CHARACTERS = 340_000;

/** @typedef {import('../database/store.js').Store} Store */
/** @typedef {import('../care/overlay.js').Row} Row */
/** @typedef {import('../answers.d.ts').SyncAnswer} SyncAnswer */

/**
 * Make both sides even. The lock only spares two tabs the same work: Firefox leaves it with a page that was left at the
 * moment of asking, so whoever does not get it in time goes on without.
 * @param {Store} store @param {(answer: SyncAnswer) => void} [onStored] told of each answer whose rows are on the disk
 * @returns {Promise<void>} rejects with an ApiProblem or NotSaved
 */
export async function drain(store, onStored = () => undefined) {
  const work = () => roundTrips(store, onStored);
  if (!globalThis.navigator?.locks) return work();
  const waited = AbortSignal.timeout(patience.lock_ms);
  let mine = false;
  try {
    return await navigator.locks.request(`broodshelf-sync-${store.deviceId}`, { signal: waited }, () => {
      mine = true;
      return work();
    });
  } catch (error) {
    if (mine || !waited.aborted) throw error;
    return work();
  }
}

/** @param {Store} store @param {(answer: SyncAnswer) => void} onStored */
async function roundTrips(store, onStored) {
  let held = await store.held();
  let epoch = held.epoch;
  let cursor = held.cursor;
  /** @type {Map<string, Row | null> | null} */
  let refill = null; // the pages of a reset: each row as it came last, null for one that is gone
  let deferred = new Set();
  const answered = new Set();
  let queued = await store.waiting(MOST_OPERATIONS);
  for (;;) {
    const ops = portion(queued.filter((op) => !deferred.has(op.op_id)));
    const sentMs = Date.now();
    const answer = await post('/api/sync', {
      device: store.deviceId,
      epoch,
      cursor,
      schema: SCHEMA,
      device_time: sentMs,
      ops,
    });
    if (answer.reset) {
      if (answer.first || !refill) refill = new Map();
      for (const row of answer.rows) refill.set(row.id, row);
      for (const row of answer.gone) refill.set(row.id, row.set ? row : null);
    }
    const next = await store.take(answer, refill, held, sentMs);
    if (next) onStored(answer);
    const news =
      !next || answer.epoch !== epoch || answer.cursor !== cursor || answer.answers.some((a) => !answered.has(a.op_id));
    for (const { op_id } of answer.answers) answered.add(op_id);
    ({ epoch, cursor } = answer);
    if (!next) {
      // another tab is ahead: go on from where it is
      held = await store.held();
      ({ epoch, cursor } = held);
      refill = null;
    } else if (!answer.reset || !answer.more) {
      held = { epoch, cursor };
    }
    deferred = new Set([...deferred, ...answer.answers.filter((a) => a.verdict === 'deferred').map((a) => a.op_id)]);
    queued = await store.waiting(MOST_OPERATIONS + deferred.size);
    const left = queued.some((op) => !deferred.has(op.op_id));
    if (!news || (next && !answer.more && !left)) return; // without news another round trip would bring none either
  }
}

/**
 * As much as the server takes in one request. A character is three bytes at most.
 * @template T @param {T[]} ops @returns {T[]}
 */
function portion(ops) {
  let characters = 0;
  for (const [i, op] of ops.entries()) {
    characters += JSON.stringify(op).length;
    if (i === MOST_OPERATIONS || (i > 0 && characters > MOST_CHARACTERS)) return ops.slice(0, i);
  }
  return ops;
}
