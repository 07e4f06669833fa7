// The state that screens show: rows laid over with the outbox, and what follows from them.
import { batch, computed, signal } from '@preact/signals';
import { NO_CATALOGUE } from '../care/catalogue.js';
import { endOfDayMs } from '../care/instants.js';
import { overlayRows } from '../care/overlay.js';
import { allItems, buildRound, eventsByColony, movedGauges } from '../care/round.js';
import { isInSnapshot } from '../database/store.js';
import { now, nowMs, setSkew, tick } from './clock.js';
import { patchSaving, saving } from './saving.js';
import { heldStore, session } from './session.js';

/** @typedef {import('../care/overlay.js').Kind} Kind */
/** @template {Kind} [K=Kind] @typedef {import('../care/overlay.js').ShownRow<K>} ShownRow */
/** @typedef {import('../care/overlay.js').Entry} Entry */
/** @typedef {import('../care/overlay.js').Row} Row */

/** @type {import('@preact/signals').Signal<Map<string, ShownRow>>} */
export const rows = signal(new Map());
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
 * @type {import('@preact/signals').Signal<import('../care/catalogue.js').Catalogue>}
 */
export const catalogue = signal(NO_CATALOGUE);

export const events = computed(() => eventsByColony(rows.value));
export const round = computed(() =>
  buildRound(rows.value, now.value, endOfDayMs(new Date(now.value)), catalogue.value),
);
/** All that is coming, however far away, as it stands now. */
export const itemsAhead = () => allItems(rows.value, now.value, catalogue.value);
/** How many logs wait on this phone, and how many need a person. */
export const unsent = computed(() => ({
  waiting: outbox.value.filter((e) => e.state === 'waiting').length,
  attention: outbox.value.filter((e) => e.state !== 'waiting').length + conflicts.value.length,
}));

/** Rows of each kind but events, in the order of their making. */
const byKind = computed(() => {
  /** @type {Map<string, ShownRow[]>} */
  const found = new Map();
  for (const row of rows.value.values()) {
    if (row.happened_ms !== null) continue;
    const list = found.get(row.kind);
    if (list) list.push(row);
    else found.set(row.kind, [row]);
  }
  for (const list of found.values()) list.sort((a, b) => (a.id < b.id ? -1 : 1));
  return found;
});
const plans = computed(() => new Map(rowsOf('plan').map((plan) => [plan.set.colony_id, plan])));

/**
 * The registers of a kind, in the order of their making.
 * @template {Kind} K
 * @param {K} kind
 * @returns {Array<ShownRow<K>>}
 */
export const rowsOf = (kind) => /** @type {Array<ShownRow<K>>} */ ([...(byKind.value.get(kind) ?? [])]);

/**
 * The plan of a colony, once the server has made one.
 * @param {string} colonyId
 * @returns {ShownRow<'plan'> | undefined}
 */
export const planOf = (colonyId) => plans.value.get(colonyId);

const NOT_DRAWN = ['glance', 'room'];

/**
 * A colony's gauges as this phone knows them: the plan's, moved by what was logged since.
 * @param {string} colonyId
 * @returns {import('../care/gauges.js').Gauge[]}
 */
export function gaugesOf(colonyId) {
  const plan = planOf(colonyId);
  if (!plan) return [];
  const fresh = (events.value.get(colonyId) ?? []).filter((e) => !e.rev || e.rev > plan.set.inputs_rev);
  return movedGauges(plan, fresh).filter((gauge) => !NOT_DRAWN.includes(gauge.need));
}

/** How far back every screen can see; the diary and the charts fetch what is older (signals/history.js). */
const RECENT_MS = 30 * 86_400_000;
/**
 * Rows since an instant as the server gave them, and the same as shown when nothing waits.
 * @type {{since_ms: number, rows: Map<string, Row>, shown: Map<string, ShownRow>}}
 */
let base = { since_ms: 0, rows: new Map(), shown: new Map() };

/** Show what the store holds now. */
export async function reload() {
  const store = heldStore();
  if (!store) return;
  const since_ms = nowMs() - RECENT_MS;
  const { rows: recent, ...pending } = await store.snapshot(since_ms);
  base = { since_ms, rows: new Map(recent.map((row) => [row.id, row])), shown: overlayRows(recent, [], null) };
  stored.value += 1;
  show(pending);
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
  for (const [id, row] of news) {
    base.rows.delete(id);
    base.shown.delete(id);
    if (row && isInSnapshot(row, base.since_ms)) base.rows.set(id, row);
  }
  const fresh = [...news.values()].filter((row) => row !== null && base.rows.has(row.id));
  for (const [id, row] of overlayRows(/** @type {Row[]} */ (fresh), [], null)) base.shown.set(id, row);
  if (news.size) stored.value += 1;
  return show(pending);
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
  show({ entries: [...outbox.peek(), ...written], conflicts: conflicts.peek(), meta: facts });
}

/** What is known about this phone and its last sync. @type {Record<string, any>} */
let facts = {};

/**
 * The base with what waits laid over it; only rows that an entry touches are made anew.
 * @param {Entry[]} entries
 * @param {string | null} me
 */
function overlaid(entries, me) {
  const touched = entries.map((entry) => entry.op?.id).filter((id) => id !== undefined);
  const under = touched.map((id) => base.rows.get(id)).filter((row) => row !== undefined);
  const all = new Map(base.shown);
  for (const id of touched) all.delete(id);
  for (const [id, row] of overlayRows(under, entries, me)) all.set(id, row);
  return all;
}

/** @param {{entries: Entry[], conflicts: import('../care/overlay.js').Met[], meta: Record<string, any>}} pending */
function show({ entries, conflicts: met, meta }) {
  facts = meta;
  batch(() => {
    rows.value = overlaid(entries, meta.me?.person_id ?? null);
    if (!sameEntries(entries, outbox.peek())) outbox.value = entries;
    conflicts.value = met;
    const me = meta.me ? { ...meta.me, ended: meta.ended ?? null } : null;
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

/** @param {Entry[]} some @param {Entry[]} others */
const sameEntries = (some, others) =>
  some.length === others.length &&
  some.every(({ op_id, state }, i) => op_id === others[i]?.op_id && state === others[i]?.state);
