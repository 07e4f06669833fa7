// The state that screens show: rows laid over with the outbox, and what follows from them. What is laid
// anew by the row and not as a whole is so for `python -m tests.bench.full_shelf` (tap to saved among 100,000 rows).
import { batch, computed, signal } from '@preact/signals';
import { NO_CATALOGUE } from '../care/catalogue.js';
import { endOfDayMs } from '../care/instants.js';
import { overlayRows } from '../care/overlay.js';
import { EVENTS, eventsByColony, keptIfSame, REGISTERS, sortedAnew, sortedOut } from '../care/lists.js';
import { doneLately, inOrder, itemsOfPlan, movedGauges, unplanned } from '../care/round.js';
import { isInSnapshot } from '../database/store.js';
import { now, nowMs, setSkew, tick } from './clock.js';
import { patchSaving, saving } from './saving.js';
import { heldStore, session } from './session.js';
import { DAY_MS } from '../care/rules.js';

/** @typedef {import('../care/overlay.js').Kind} Kind */
/** @template {Kind} [K=Kind] @typedef {import('../care/overlay.js').ShownRow<K>} ShownRow */
/** @typedef {import('../care/overlay.js').EventRow} EventRow */
/** @typedef {import('../care/overlay.js').Entry} Entry */
/** @typedef {import('../care/overlay.js').Row} Row */

/** @typedef {Pick<Map<string, ShownRow>, 'get' | 'values'>} Shown */

/** Every row as it is shown. Only `lay` writes here: a copy for each change would cost as much as there is. */
let all = /** @type {Map<string, ShownRow>} */ (new Map());
/** A look at them, another one after each change. @returns {Shown} */
const look = () => ({ get: (id) => all.get(id), values: () => all.values() });
/** All rows, for those who want to know of each change. @type {import('@preact/signals').Signal<Shown>} */
export const rows = signal(look());
/** @type {import('@preact/signals').Signal<Entry[]>} */
export const outbox = signal([]);
/** Grows with each change of the stored rows, for those who read them from the disk. */
export const stored = signal(0);
/**
 * Where two phones met and what became of it, until somebody has seen it.
 * @type {import('@preact/signals').Signal<import('../care/overlay.js').Met[]>}
 */
export const conflicts = signal([]);
/**
 * What the server's tables say: species, foods, vessels, origins, needs and words.
 * @type {import('@preact/signals').Signal<import('../kinds.d.ts').CatalogueRows>}
 */
export const catalogue = signal(NO_CATALOGUE);

/** Events of each colony. @type {import('@preact/signals').Signal<Map<string, EventRow[]>>} */
export const events = signal(new Map());
/** Registers of each kind. @type {import('@preact/signals').Signal<import('../care/lists.js').Lists>} */
const registers = signal(new Map());

/**
 * What `find` gives for a key, each followed by itself: whoever asks for one is not told of a change of another.
 * @template T @param {(key: string) => T} find @returns {(key: string) => T}
 */
function eachAlone(find) {
  /** @type {Map<string, import('@preact/signals').ReadonlySignal<T>>} */
  const asked = new Map();
  return (key) => {
    const known = asked.get(key) ?? computed(() => find(key));
    asked.set(key, known);
    return known.value;
  };
}

/** @type {EventRow[]} */
const NONE = [];
/** @type {Map<string, import('@preact/signals').Signal<ShownRow | undefined>>} */
const followed = new Map();
/** A row as it is shown, followed by itself. @param {string} id @returns {ShownRow | undefined} */
export function rowOf(id) {
  const known = followed.get(id) ?? signal(all.get(id));
  followed.set(id, known);
  return known.value;
}
/** What happened at a colony, in that order. @type {(colonyId: string) => EventRow[]} */
export const eventsOf = eachAlone((colonyId) => events.value.get(colonyId) ?? NONE);
/** @type {(kind: string) => ShownRow[]} */
const registersOf = eachAlone((kind) => registers.value.get(kind) ?? NONE);
const plans = computed(() => new Map(rowsOf('plan').map((plan) => [plan.set.colony_id, plan])));

/**
 * The registers of a kind, in the order of their making.
 * @template {Kind} K @param {K} kind @returns {Array<ShownRow<K>>}
 */
export const rowsOf = (kind) => /** @type {Array<ShownRow<K>>} */ ([...registersOf(kind)]);

/** The plan of a colony, once the server has made one. @type {(colonyId: string) => ShownRow<'plan'> | undefined} */
export const planOf = eachAlone((colonyId) => plans.value.get(colonyId));

const itemsOf = eachAlone((colonyId) => {
  const plan = planOf(colonyId);
  if (!plan || !rowOf(colonyId)) return [];
  return itemsOfPlan(plan, eventsOf(colonyId), rows.peek(), catalogue.value);
});

/** All that is coming, however far away, as it stands now. */
export const itemsAhead = () => [...plans.value.keys()].flatMap(itemsOf);
/** @type {import('../care/round.js').Round} */
let lastRound = { items: [], done: [] };
/** The round; the same as before where time has passed and nothing has changed by it. */
export const round = computed(() => {
  const items = keptIfSame(lastRound.items, inOrder(itemsAhead(), now.value, endOfDayMs(new Date(now.value))));
  const done = keptIfSame(lastRound.done, doneLately(events.value.values(), now.value));
  if (items !== lastRound.items || done !== lastRound.done) lastRound = { items, done };
  return lastRound;
});

/** Of what no tube shows anything. @type {Array<import('../kinds.d.ts').Need>} */
const NOT_DRAWN = ['glance', 'room'];

/**
 * A colony's gauges as this phone knows them: the plan's, moved by what was logged since.
 * @type {(colonyId: string) => import('../care/gauges.js').Gauge[]}
 */
export const gaugesOf = eachAlone((colonyId) => {
  const plan = planOf(colonyId);
  if (!plan) return [];
  return movedGauges(plan, unplanned(plan, eventsOf(colonyId))).filter((gauge) => !NOT_DRAWN.includes(gauge.need));
});

/** How many pictures wait though their records do not. */
const pictures = signal(0);
/** How many logs wait on this phone, pictures among them, and how many need a person. */
export const unsent = computed(() => ({
  waiting: outbox.value.filter((e) => e.state === 'waiting').length + pictures.value,
  attention: outbox.value.filter((e) => e.state !== 'waiting').length + conflicts.value.length,
}));

/** How far back every screen can see; the diary and the charts fetch what is older (signals/history.js). */
const RECENT_MS = 30 * DAY_MS;
/** Rows since an instant as the server gave them. @type {{since_ms: number, rows: Map<string, Row>}} */
let base = { since_ms: 0, rows: new Map() };

/** Show what the store holds now. */
export async function reload() {
  const store = heldStore();
  if (!store) return;
  const since_ms = nowMs() - RECENT_MS;
  const { rows: recent, ...pending } = await store.snapshot(since_ms);
  if (store !== heldStore()) return; // this browser became another device meanwhile
  base = { since_ms, rows: new Map(recent.map((row) => [row.id, row])) };
  stored.value += 1;
  show(pending, null);
}

/**
 * Show what a sync has stored, without reading again what it left as it was.
 * @param {Map<string, Row | null>} news by id as they came last; null: gone
 */
export async function showStored(news) {
  const store = heldStore();
  const colonies = [...news].some(([id, row]) => (row ?? base.rows.get(id))?.kind === 'colony');
  if (!store || colonies) return reload(); // a colony that comes or goes takes its log with it
  const pending = await store.pending();
  if (store !== heldStore()) return undefined;
  for (const [id, row] of news) {
    base.rows.delete(id);
    if (row && isInSnapshot(row, base.since_ms)) base.rows.set(id, row);
  }
  if (news.size) stored.value += 1;
  const waiting = thatDiffer(pending.entries, outbox.peek()).map(({ op }) => op?.id);
  return show(pending, new Set([...news.keys(), ...waiting.filter((id) => id !== undefined)]));
}

/**
 * Show what this phone has just written to its disk, without reading anything again.
 * @param {import('../care/overlay.js').Operation[]} operations
 */
export function showWritten(operations) {
  const written = operations.map((op) => ({
    op_id: op.op_id,
    op,
    state: /** @type {const} */ ('waiting'),
    answer: null,
    n: op.n,
  }));
  const touched = new Set(operations.map((op) => op.id));
  const entries = [...outbox.peek(), ...written];
  show({ entries, conflicts: conflicts.peek(), pictures: pictures.peek(), meta: facts }, touched);
}

/** What is known about this phone and its last sync. @type {import('../answers.d.ts').Known} */
let facts = {};

/**
 * Lay what waits over the base, in the rows that were touched; all others stay the objects that they are.
 * @param {Entry[]} entries @param {string | null} me @param {Set<string> | null} touched ids; null: all
 */
function lay(entries, me, touched) {
  if (!touched) {
    all = overlayRows(base.rows.values(), entries, me);
    rows.value = look();
    for (const [id, row] of followed) row.value = all.get(id);
    events.value = eventsByColony(all);
    registers.value = sortedOut(all.values(), REGISTERS);
    return;
  }
  const under = [...touched].map((id) => base.rows.get(id)).filter((row) => row !== undefined);
  const over = entries.filter((entry) => touched.has(entry.op?.id));
  const anew = overlayRows(under, over, me);
  const changes = [...touched]
    .map((id) => ({ id, was: all.get(id), is: anew.get(id) }))
    .filter(({ was, is }) => was ?? is);
  if (!changes.length) return;
  for (const { id, is } of changes) {
    if (is) all.set(id, is);
    else all.delete(id);
    const known = followed.get(id);
    if (known) known.value = is;
  }
  rows.value = look();
  events.value = /** @type {typeof events.value} */ (sortedAnew(events.peek(), changes, EVENTS));
  registers.value = sortedAnew(registers.peek(), changes, REGISTERS);
}

/**
 * @param {import('../database/store.js').Pending} pending
 * @param {Set<string> | null} touched ids of the rows that may be others now; null: all
 */
function show({ entries, conflicts: met, pictures: left, meta }, touched) {
  facts = meta;
  batch(() => {
    lay(entries, meta.me?.person_id ?? null, touched);
    if (thatDiffer(entries, outbox.peek()).length) outbox.value = entries;
    if (met.length || conflicts.peek().length) conflicts.value = met;
    pictures.value = left;
    const me = meta.me && !meta.left ? { ...meta.me, ended: meta.ended ?? null } : null;
    if (JSON.stringify(me) !== JSON.stringify(session.peek())) session.value = me; // the whole frame hangs on it
    setSkew(meta.skew_ms ?? 0);
    tick();
    if (meta.epoch) patchSaving({ joining: null });
    else patchSaving({ joining: saving.peek().joining ?? 0 });
    patchSaving({
      last_sync_ms: meta.last_sync_ms ?? 0,
      clock_off_min: Math.round(-(meta.skew_ms ?? 0) / 60_000),
      emptied: Boolean(meta.emptied),
    });
  });
}

/**
 * The entries that only one outbox has, or that stand otherwise in it; damaged ones are among them.
 * @param {Entry[]} some @param {Entry[]} others
 */
function thatDiffer(some, others) {
  const left = new Map(others.map((entry) => [entry.op_id, entry]));
  const differ = [];
  for (const entry of some) {
    if (left.get(entry.op_id)?.state !== entry.state) differ.push(entry);
    left.delete(entry.op_id);
  }
  return [...differ, ...left.values()];
}
