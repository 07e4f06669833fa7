// What the phone keeps: rows, gone rows, outbox, journal, conflicts, meta (docs/sync.md, "On the phone").
// Longer than 300 lines because it is the one door to what the phone keeps, each method a transaction.
import { THINGS } from '../care/rules.js';
import { uuid7 } from './ids.js';
import { inBulk, inTransaction, databaseOf } from './open.js';
import { sendable } from './photos.js';
import { forgetOldJournal, giveBack, JOURNAL_MS } from './past.js';
import { takeVerdicts } from './verdicts.js';

/** @typedef {import('../care/overlay.js').Row} Row */
/** @typedef {{epoch: string | null, cursor: string | null}} Held */
/** @typedef {import('../care/overlay.js').Entry} Entry */
/** @typedef {import('../care/overlay.js').Met} Met */
/** @typedef {import('../care/overlay.js').Operation} Operation */
/** @typedef {import('../answers.d.ts').Known} Known */
/** @typedef {import('../answers.d.ts').SyncAnswer} SyncAnswer */

/**
 * @typedef {{entries: Entry[], conflicts: Met[], pictures: number, meta: Known}} Pending `pictures`: how many wait
 *   though their records do not
 */
const PENDING = ['rows', 'outbox', 'conflicts', 'photos', 'meta'];

/** The store of one device. */
export class Store {
  /** @param {string} deviceId */
  constructor(deviceId) {
    this.deviceId = deviceId;
    this.name = databaseOf(deviceId);
  }

  /** @template {keyof Known} N @param {N} name @returns {Promise<Known[N]>} */
  meta(name) {
    return inTransaction(this.name, ['meta'], 'readonly', (tx) => tx.objectStore('meta').get(name));
  }

  /** @param {Known} values */
  setMeta(values) {
    return inTransaction(this.name, ['meta'], 'readwrite', async (tx) => {
      const meta = tx.objectStore('meta');
      await Promise.all(Object.entries(values).map(([name, value]) => meta.put(value, name)));
    });
  }

  /**
   * Everything a screen starts from, in one snapshot: things, faults and what happened since an instant. Without it all
   * rows.
   * @param {number} [sinceMs] @returns {Promise<Pending & {rows: Row[]}>}
   */
  snapshot(sinceMs) {
    return inTransaction(this.name, PENDING, 'readonly', async (tx) => {
      const [rows, pending] = await Promise.all([
        sinceMs === undefined ? tx.objectStore('rows').getAll() : recentRows(tx, sinceMs),
        pendingOf(tx),
      ]);
      return { rows, ...pending };
    });
  }

  /** What waits, what met, and what is known, without the rows. @returns {Promise<Pending>} */
  pending() {
    return inTransaction(this.name, PENDING, 'readonly', pendingOf);
  }

  /**
   * What happened last at one colony before an instant, and how far back that is. What happened in one millisecond
   * stays together.
   * @param {string} colonyId @param {number} fromMs @param {number} beforeMs @param {number} about so many,
   *   more than 1 @returns {Promise<{rows: Row[], from_ms: number}>}
   */
  slice(colonyId, fromMs, beforeMs, about) {
    return inTransaction(this.name, ['rows'], 'readonly', async (tx) => {
      const log = tx.objectStore('rows').index('by_colony');
      const since = (/** @type {number} */ ms) => IDBKeyRange.bound([colonyId, ms], [colonyId, beforeMs], false, true);
      const newest = await log.openKeyCursor(since(fromMs), 'prev');
      const oldest = await newest?.advance(about - 1);
      const from_ms = oldest ? oldest.key[1] : fromMs;
      return { rows: await log.getAll(since(from_ms)), from_ms };
    });
  }

  /** @param {string[]} ids @returns {Promise<Row[]>} those that are there */
  rowsById(ids) {
    return inTransaction(this.name, ['rows'], 'readonly', async (tx) =>
      (await Promise.all(ids.map((id) => tx.objectStore('rows').get(id)))).filter(Boolean),
    );
  }

  /** @param {string} kind @returns {Promise<Row[]>} */
  ofKind(kind) {
    return inTransaction(this.name, ['rows'], 'readonly', (tx) => tx.objectStore('rows').index('by_kind').getAll(kind));
  }

  /**
   * Write operations to the outbox: all of them or, with `NotSaved`, none. Each is made later than those before it,
   * and than all that the server told, whatever this phone's clock was set to: after a restore only times tell the
   * order.
   * @param {Array<import('../care/overlay.js').Change & {id: string, rev?: number}>} changes
   *   `rev`: of the record as it was seen, where that may be older than the row, or the row is not here
   * @param {number} nowMs
   * @returns {Promise<Operation[]>}
   */
  enqueue(changes, nowMs = Date.now()) {
    return inTransaction(this.name, ['outbox', 'meta', 'rows'], 'readwrite', async (tx) => {
      const [meta, ...under] = await Promise.all([
        allMeta(tx),
        ...changes.map((change) => tx.objectStore('rows').get(change.id)),
      ]);
      const { n = 0, epoch = null, skew_ms: skew = 0, last_made_ms = 0 } = meta;
      const made_at = Math.max(nowMs, last_made_ms + 1 - skew);
      const operations = changes.map(
        (change, i) =>
          /** @type {Operation} */ ({
            op_id: uuid7(nowMs),
            kind: change.kind,
            id: change.id,
            set: change.set,
            made_at,
            skew_ms: skew,
            base_rev: change.rev ?? under[i]?.rev ?? 0,
            base_epoch: epoch,
            n: n + i + 1,
            adopt: false,
          }),
      );
      const [outbox, known] = [inBulk(tx, 'outbox'), inBulk(tx, 'meta')];
      for (const op of operations) outbox.put({ op_id: op.op_id, op, state: 'waiting', answer: null, n: op.n });
      known.put(n + operations.length, 'n');
      known.put(made_at + skew, 'last_made_ms');
      tx.commit(); // at once: else the disk waits until this page has heard of each write
      return operations;
    });
  }

  /**
   * What waits to be sent, oldest first; what cannot be sent as it is gets marked.
   * @param {number} most @returns {Promise<Operation[]>}
   */
  async waiting(most) {
    const entries = await inTransaction(this.name, ['outbox'], 'readonly', entriesInOrder);
    const waiting = entries.filter((e) => e.state === 'waiting');
    const whole = waiting.filter((e) => isWhole(e.op));
    if (whole.length < waiting.length) await this.markDamaged();
    return whole.slice(0, most).map((e) => e.op);
  }

  /** Mark entries that cannot be sent as they are, so that they are shown and can be exported. */
  markDamaged() {
    return inTransaction(this.name, ['outbox'], 'readwrite', async (tx) => {
      const outbox = tx.objectStore('outbox');
      const bad = (await outbox.getAll()).filter((e) => e.state === 'waiting' && !isWhole(e.op));
      await Promise.all(bad.map((e) => outbox.put({ ...e, state: 'damaged' })));
      return bad.length;
    });
  }

  /** Up to where this phone holds what the server has. @returns {Promise<Held>} */
  held() {
    return inTransaction(this.name, ['meta'], 'readonly', heldIn);
  }

  /**
   * Store an answer: verdicts, rows and cursor in one transaction. An entry leaves the outbox here and nowhere else.
   * Rows and cursor are left alone if another tab has stored a later answer since this one was asked for, and the
   * verdicts too if that one came from a server restored meanwhile: what was acknowledged before may be lost to it.
   * @param {SyncAnswer} answer @param {Map<string, Row | null> | null} refill the pages of a reset, with the last one;
   *   null: gone
   * @param {Held} held what this phone held when the answer was asked for @param {number} sentMs when that was
   * @returns {Promise<boolean>} whether the answer was the next one
   */
  take(answer, refill, held, sentMs) {
    const stores = ['rows', 'gone', 'outbox', 'journal', 'conflicts', 'meta'];
    return inTransaction(this.name, stores, 'readwrite', async (tx) => {
      const [rows, gone, meta] = [inBulk(tx, 'rows'), inBulk(tx, 'gone'), tx.objectStore('meta')];
      const now = await heldIn(tx);
      const next = now.epoch === held.epoch && now.cursor === held.cursor;
      const swap = next && answer.reset && refill && !answer.more;
      const moves = swap || (next && !answer.reset);
      // before the first epoch: acknowledged with a page whose last one has not come
      const known = now.epoch ?? (await tx.objectStore('journal').count());
      if (next || answer.epoch === now.epoch) await takeVerdicts(tx, answer, next);
      const ended = known && moves && answer.epoch !== now.epoch; // the server was restored
      if (ended) await giveBack(tx, now.epoch, swap ? refill : null, answer.server_time);
      if (moves || answer.epoch === now.epoch) {
        // else a restore is still to be answered with what was acknowledged before the last contact
        await forgetOldJournal(tx, Math.min(Date.now(), answer.server_time) - JOURNAL_MS);
        await meta.put(sentMs, 'last_sync_ms');
      }
      if (swap) {
        rows.clear();
        gone.clear();
      }
      if (moves) {
        const back = !swap && (await tx.objectStore('gone').count());
        for (const row of swap ? refill.values() : answer.rows) {
          if (row && !row.set.gone) rows.put(withHappened(row));
          if (row && back) gone.delete(row.id);
        }
        for (const row of swap ? refill.values() : answer.gone) {
          if (row?.set?.gone) gone.put(row);
          if (row && !swap) rows.delete(row.id);
        }
        await Promise.all([meta.put(answer.cursor, 'cursor'), meta.put(answer.epoch, 'epoch')]);
      }
      const skew_ms = skewOf(
        (await meta.get('skew_ms')) ?? 0,
        answer.server_time - Date.now(),
        answer.server_time - sentMs,
      );
      await meta.put(skew_ms, 'skew_ms');
      return next;
    });
  }

  /** Drop an entry that needs attention, after the person said so. @param {string} opId */
  discard(opId) {
    return inTransaction(this.name, ['outbox'], 'readwrite', (tx) => tx.objectStore('outbox').delete(opId));
  }

  /**
   * Put a mended operation in the place of one that was rejected, and send again what was refused for lack of its
   * record, and what for lack of that: all or nothing.
   * @param {string} opId @param {Operation['set']} set @param {number} [nowMs]
   */
  mend(opId, set, nowMs = Date.now()) {
    return inTransaction(this.name, ['outbox'], 'readwrite', async (tx) => {
      const outbox = tx.objectStore('outbox');
      const entries = await outbox.getAll();
      const mended = entries.find((each) => each.op_id === opId);
      if (!mended) return;
      const again = new Set([mended]);
      for (const { op } of again) {
        for (const orphan of entries.filter((each) => lacks(each, op.id))) again.add(orphan);
      }
      const sent = [...again].flatMap((old) => {
        const op = { ...old.op, op_id: uuid7(nowMs), set: old === mended ? set : old.op.set };
        const entry = { op_id: op.op_id, op, state: 'waiting', answer: null, n: old.n };
        return [outbox.delete(old.op_id), outbox.put(entry)];
      });
      await Promise.all(sent);
    });
  }

  /** Forget a conflict that a person has seen. @param {string} opId */
  settle(opId) {
    return inTransaction(this.name, ['conflicts'], 'readwrite', (tx) => tx.objectStore('conflicts').delete(opId));
  }

  /** Everything unsent, for a file. @returns {Promise<Entry[]>} */
  unsent() {
    return inTransaction(this.name, ['outbox'], 'readonly', (tx) => tx.objectStore('outbox').getAll());
  }
}

/** Whether this entry was refused because a record was not there. @param {Entry} entry @param {string} recordId */
function lacks({ op, state, answer }, recordId) {
  if (state !== 'rejected' || answer?.code !== 'parent_missing') return false;
  const missing = answer.args?.missing;
  return (missing === 'itself' ? op.id : missing) === recordId;
}

/** @param {import('../vendor/idb.js').Transaction} tx @returns {Promise<Held>} */
async function heldIn(tx) {
  const meta = tx.objectStore('meta');
  const [epoch = null, cursor = null] = await Promise.all([meta.get('epoch'), meta.get('cursor')]);
  return { epoch, cursor };
}

/**
 * How far the server's clock is ahead: what was known, as far as the last round trip allows it. A tab that the phone
 * froze on the way took long over it, and then nothing new is known.
 * @param {number} known @param {number} least @param {number} most
 */
const skewOf = (known, least, most) => Math.min(Math.max(known, least), most);

/**
 * The outbox in the order of `n`. Not through the index: it would pass over a damaged entry that has lost its `n`.
 * @param {import('../vendor/idb.js').Transaction} tx @returns {Promise<Entry[]>}
 */
async function entriesInOrder(tx) {
  const entries = await tx.objectStore('outbox').getAll();
  return entries.sort((a, b) => (Number(a.n) || 0) - (Number(b.n) || 0));
}

/**
 * Kinds that are read whole at every start: things, plans, and the faults that a round may still show.
 * @type {Array<import('../kinds.d.ts').Kind>}
 */
const ALWAYS = [...THINGS, 'plan', 'fault'];

/** Whether `snapshot` since that instant gives this row. @param {Row} row @param {number} sinceMs */
export const isInSnapshot = (row, sinceMs) =>
  ALWAYS.includes(row.kind) || (Boolean(row.set.colony_id) && withHappened(row).happened_ms >= sinceMs);

/** @param {import('../vendor/idb.js').Transaction} tx */
async function pendingOf(tx) {
  const [entries, conflicts, pictures, meta] = await Promise.all([
    entriesInOrder(tx),
    tx.objectStore('conflicts').getAll(),
    sendable(tx),
    allMeta(tx),
  ]);
  return { entries, conflicts, pictures: pictures.length, meta };
}

/**
 * All that is known about this phone, by name: two requests, where one for each name would hold a tap up.
 * @param {import('../vendor/idb.js').Transaction} tx @returns {Promise<Known>}
 */
async function allMeta(tx) {
  const meta = tx.objectStore('meta');
  const [names, values] = await Promise.all([meta.getAllKeys(), meta.getAll()]);
  return Object.fromEntries(names.map((/** @type {string} */ name, /** @type {number} */ i) => [name, values[i]]));
}

/** @param {import('../vendor/idb.js').Transaction} tx @param {number} sinceMs @returns {Promise<Row[]>} */
async function recentRows(tx, sinceMs) {
  const rows = tx.objectStore('rows');
  const always = await Promise.all(ALWAYS.map((kind) => rows.index('by_kind').getAll(kind)));
  const colonies = always[ALWAYS.indexOf('colony')] ?? [];
  const recent = await Promise.all(
    colonies.map((/** @type {Row} */ colony) =>
      rows.index('by_colony').getAll(IDBKeyRange.bound([colony.id, sinceMs], [colony.id, Infinity])),
    ),
  );
  return [...always, ...recent].flat();
}

/** @param {Partial<Operation> | null | undefined} op as it was found, which may be damaged */
function isWhole(op) {
  return Boolean(
    op &&
    typeof op.op_id === 'string' &&
    typeof op.kind === 'string' &&
    typeof op.id === 'string' &&
    op.set &&
    typeof op.set === 'object' &&
    Number.isFinite(op.made_at),
  );
}

/** @param {Row} row */
function withHappened(row) {
  const ms = typeof row.set.happened_at === 'string' ? Date.parse(row.set.happened_at) : 0;
  return { ...row, happened_ms: Number.isNaN(ms) ? 0 : ms };
}
