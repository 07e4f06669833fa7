// What a phone gives back to a server that was restored: whole records with their past, and what was acknowledged.
// All of it is queued in the transaction that stores the new epoch, so no kill comes in between (docs/sync.md).
import { uuid7 } from './ids.js';
import { DAY_MS } from '../care/rules.js';

/** @typedef {import('../care/overlay.js').Row} Row */
/** @typedef {import('../care/overlay.js').Entry} Entry */
/** @typedef {import('../care/overlay.js').Operation} Operation */
/** @typedef {import('../vendor/idb.js').Transaction} Transaction */
/** @typedef {{op_id: string, at_ms: number, ops?: Operation[], op?: Operation}} JournalPage
 *   `op_id`: a key of its own, made when it was stored */

export const JOURNAL_MS = 30 * DAY_MS;
const MOST_FORGOTTEN = 50; // pages of the journal, with one answer
/** What others name comes before what names it. */
const FIRST = ['household', 'person', 'place', 'vessel', 'colony', 'lot', 'tasting', 'pass', 'rule', 'feeding'];
/** What the server makes of the rest by itself. */
const DERIVED = ['plan', 'place_day'];

/**
 * Queue, in front of what waits, all that the restored server lacks. To be called before the rows are replaced.
 * @param {Transaction} tx over rows, gone, outbox, journal and meta
 * @param {string | null} epoch the one that ends; null before the first
 * @param {Map<string, Row | null> | null} refill what the server has now; null for an answer without rows
 * @param {number} serverMs what its clock says
 */
export async function giveBack(tx, epoch, refill, serverMs) {
  const outbox = tx.objectStore('outbox');
  const meta = tx.objectStore('meta');
  const [mine, gone, journal, entries, me, skew_ms = 0, n = 0, last_sync_ms = 0] = await Promise.all([
    tx.objectStore('rows').getAll(),
    tx.objectStore('gone').getAll(),
    /** @type {Promise<JournalPage[]>} */ (tx.objectStore('journal').getAll()),
    outbox.getAll(),
    meta.get('me'),
    meta.get('skew_ms'),
    meta.get('n'),
    meta.get('last_sync_ms'),
  ]);
  const offered = me?.role === 'keeper' && refill ? offersOf([...mine, ...gone], refill) : [];
  const offers = offered.map(
    ({ kind, id, set, by, made_ms, device = null, stamps = {} }, i) =>
      /** @type {Operation} */ ({
        op_id: uuid7(),
        kind,
        id,
        set,
        made_at: Date.now(),
        skew_ms,
        base_rev: 0,
        base_epoch: epoch,
        n: n + i + 1,
        adopt: true,
        by,
        made_ms,
        device,
        stamps,
      }),
  );
  const again = operationsOf(journal.filter((page) => page.at_ms > last_sync_ms - JOURNAL_MS));
  const { moved, last_ms } = laterThan(again, entries, serverMs);
  await Promise.all([
    ...offers.map((op, i) => outbox.put(entryOf(op, i - offers.length))),
    meta.put(n + offers.length, 'n'),
    meta.put(Math.max(last_ms, serverMs), 'last_made_ms'),
    ...again.map((op) => outbox.put(entryOf(op, op.n))),
    ...moved.map((entry) => outbox.put(entry)),
  ]);
}

/**
 * What was acknowledged, each operation as it was last. A page holds what one answer did; phones that were set up
 * earlier have pages of one.
 * @param {JournalPage[]} pages
 */
function operationsOf(pages) {
  const inTime = [...pages].sort((one, other) => one.at_ms - other.at_ms);
  const all = inTime.flatMap(({ ops, op }) => ops ?? (op ? [op] : []));
  return [...new Map(all.map((op) => [op.op_id, op])).values()];
}

/** @param {Operation} op @param {number} n its place in the outbox @returns {Entry} */
const entryOf = (op, n) => ({ op_id: op.op_id, op, state: 'waiting', answer: null, n });

/** When an operation was made, by the server's clock as this phone knows it. @param {Operation} op */
export const madeMs = (op) => op.made_at + op.skew_ms;

/**
 * What waits was made after what was acknowledged of lower `n`, whatever this phone's clock said, and not ahead of the
 * server: what this phone makes next is later. What was deferred may be older than what was acknowledged since, and
 * keeps its time.
 * @param {Operation[]} acknowledged @param {Entry[]} entries @param {number} serverMs
 * @returns {{moved: Entry[], last_ms: number}} the entries that must say so, and when the last one was made; 0 if
 *   nothing was acknowledged
 */
function laterThan(acknowledged, entries, serverMs) {
  const moved = [];
  const waiting = entries.filter(({ op, state }) => state === 'waiting' && !op?.adopt && Number.isFinite(op?.made_at));
  const made = [...acknowledged.map((op) => ({ n: op.n, op, entry: null })), ...waiting.map(asMade)];
  let last_ms = 0;
  for (const { op, entry } of made.sort((one, other) => one.n - other.n)) {
    const said_ms = Math.min(madeMs(op), serverMs);
    if (!entry) {
      last_ms = Math.max(last_ms, said_ms);
      continue;
    }
    const at_ms = Math.max(said_ms, last_ms && last_ms + 1);
    if (at_ms !== madeMs(op)) moved.push({ ...entry, op: { ...op, made_at: at_ms - op.skew_ms } });
    last_ms = last_ms && at_ms;
  }
  return { moved, last_ms };
}

/** @param {Entry} entry */
const asMade = (entry) => ({ n: entry.n, op: entry.op, entry });

/**
 * Which records a server that was restored lacks, or has as they were before.
 * @param {Row[]} mine gone ones too @param {Map<string, Row | null>} theirs null: gone, and no more is known
 */
export function offersOf(mine, theirs) {
  const rank = (/** @type {Row} */ row) => (FIRST.indexOf(row.kind) + FIRST.length + 1) % (FIRST.length + 1);
  return mine
    .filter((row) => !DERIVED.includes(row.kind) && isNews(row, theirs.get(row.id)))
    .sort((a, b) => rank(a) - rank(b));
}

/** @param {Row} mine @param {Row | null | undefined} theirs */
function isNews(mine, theirs) {
  if (theirs === undefined) return true;
  if (theirs === null) return false;
  const setLater = Object.entries(mine.set).some(([name, value]) => {
    const differs = JSON.stringify(value) !== JSON.stringify(/** @type {Record<string, unknown>} */ (theirs.set)[name]);
    return differs && (!(name in theirs.set) || setMs(mine, name) > setMs(theirs, name));
  });
  if (setLater) return true;
  const changedMs = Math.max(...Object.keys(mine.set).map((name) => setMs(mine, name)));
  return Boolean(theirs.set.gone && !mine.set.gone && changedMs > setMs(theirs, 'gone'));
}

/** When a field was set last. @param {Row} row @param {string} name */
const setMs = (row, name) => row.stamps?.[name]?.[0] ?? row.made_ms;

/**
 * Drop what was acknowledged before an instant, a bounded number at a time. The keys are UUIDv7: the first were made
 * first.
 * @param {Transaction} tx @param {number} beforeMs by the phone's clock and by the server's
 */
export async function forgetOldJournal(tx, beforeMs) {
  const journal = tx.objectStore('journal');
  const oldest = await journal.getAll(IDBKeyRange.upperBound(uuid7(beforeMs)), MOST_FORGOTTEN);
  await Promise.all(oldest.filter((e) => e.at_ms < beforeMs).map((e) => journal.delete(e.op_id)));
}
