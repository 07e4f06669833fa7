// What a person does: each writes operations to the outbox first and shows them at once; sending comes after.
import { signal } from '@preact/signals';
import { asSuggested, changed, putOff } from '../care/changes.js';
import { withOffset } from '../care/instants.js';
import { uuid7 } from '../database/ids.js';
import { askToKeep } from '../database/open.js';
import { nowMs } from './clock.js';
import { reload, rows, showWritten } from './rows.js';
import { saving } from './saving.js';
import { openStore } from './session.js';
import { syncNow } from './sync.js';
import { say } from '../words/say.js';

/** @typedef {import('../care/overlay.js').Kind} Kind */
/** @typedef {import('../care/overlay.js').Change} Change */
/** @template {Kind} K @typedef {import('../care/overlay.js').Fields<K>} Fields */

const UNDO_MS = 10_000;
const SAID_MS = 4_000;

/**
 * The last thing done, for ten seconds where it can be undone: `{text, undo}`.
 * @type {import('@preact/signals').Signal<null | {text: string, undo: (() => Promise<void>) | null}>}
 */
export const toast = signal(null);
/** @type {ReturnType<typeof setTimeout> | undefined} */
let toastTimer;

/** @param {string} text @param {(() => Promise<void>) | null} undo */
export function tell(text, undo = null) {
  clearTimeout(toastTimer);
  toast.value = { text, undo };
  toastTimer = setTimeout(
    () => {
      toast.value = null;
    },
    undo ? UNDO_MS : SAID_MS,
  );
}

/**
 * Sending waits until what was saved is seen, and for the taps that follow at once: storing an answer would hold them
 * up. Where no server was heard, for those that follow later, too: each try reads all that waits, and when the phone is
 * online again it sends at once.
 */
const QUIET_MS = 300;
const QUIET_OFFLINE_MS = 3000;
/** @type {ReturnType<typeof setTimeout> | undefined} */
let sending;

/** @typedef {Change & {id: string, rev?: number}} Written */
/** @param {Kind} kind @param {string} id @param {object} set fields of that kind @param {number} [rev] */
const changeOf = (kind, id, set, rev) => /** @type {Written} */ ({ kind, id, set, rev });

/** Write all of these or none; what sets nothing is left out. @param {Written[]} changes */
export async function write(changes) {
  const operations = await openStore().enqueue(changes.filter(({ set }) => Object.keys(set).length));
  showWritten(operations);
  void askToKeep();
  clearTimeout(sending);
  sending = setTimeout(() => void syncNow(), saving.peek().online ? QUIET_MS : QUIET_OFFLINE_MS);
}

/**
 * That something happened; now, unless it says when.
 * @template {Kind} K
 * @param {K} kind
 * @param {Partial<Fields<K>>} set
 * @param {string} [id]
 */
export const eventOf = (kind, set, id = uuid7()) =>
  changeOf(kind, id, { happened_at: withOffset(new Date(nowMs())), ...set });

/**
 * Log that something happened.
 * @template {import('../kinds.d.ts').EventKind} K
 * @param {K} kind
 * @param {Partial<Fields<K>>} set
 */
export async function log(kind, set) {
  await write([eventOf(kind, set)]);
}

/**
 * Make or change a thing.
 * @template {Kind} K
 * @param {K} kind
 * @param {Partial<Fields<K>>} set
 * @param {string} [id]
 * @returns {Promise<string>}
 */
export async function keep(kind, set, id = uuid7()) {
  await write([changeOf(kind, id, set)]);
  return id;
}

/**
 * What a form changes: only what differs from the row with which it was opened, and of that row's revision, so that who
 * set the same field since is met and not overwritten unseen.
 * @template {Kind} K
 * @param {K} kind
 * @param {import('../care/overlay.js').ShownRow<K> | null | undefined} opened none: the record is new
 * @param {Partial<Fields<K>>} set
 * @param {string} [id]
 */
export const changeFrom = (kind, opened, set, id = opened?.id ?? uuid7()) =>
  changeOf(kind, id, changed(opened?.set ?? {}, set), opened?.rev);

/** Delete or void; restorable. @param {Kind} kind @param {string} id */
export async function remove(kind, id) {
  await write([changeOf(kind, id, { gone: true })]);
}

/**
 * Log several things at once, with one undo for all.
 * @param {Change[]} what
 * @returns {Promise<string[]>} their ids
 */
export async function logAll(what) {
  const changes = what.map(({ kind, set }) => eventOf(kind, set));
  await write(changes);
  tell(changes.length === 1 ? say('saving-saved') : say('saving-waiting', { count: changes.length }), async () => {
    await write(changes.map(({ kind, id }) => changeOf(kind, id, { gone: true })));
    tell(say('saving-taken-back'));
  });
  return changes.map((change) => change.id);
}

/** Do what the plan suggests. @param {import('../care/round.js').Item[]} items @returns {Promise<string[]>} */
export const logAsSuggested = (items) =>
  logAll(
    items
      .map(({ suggested, ...item }) => suggested && { ...item, suggested })
      .filter((item) => item !== null)
      .map(asSuggested),
  );

/** Void a log, with an undo that brings it back. @param {import('../care/overlay.js').ShownRow} row */
export async function voidLog(row) {
  await remove(row.kind, row.id);
  tell(say('saving-taken-back'), async () => {
    await keep(row.kind, { gone: false }, row.id);
  });
}

/**
 * Put a need off, or skip it this time.
 * @param {import('../care/round.js').Item} item
 * @param {number} untilMs
 * @param {string} [why]
 */
export async function later(item, untilMs, why) {
  await logAll([putOff(item, withOffset(new Date(untilMs)), why)]);
}

/** Say that a fault is over. @param {string} faultId */
export async function resolve(faultId) {
  const fault = rows.peek().get(faultId);
  if (fault) await keep('fault', { resolved_at: withOffset(new Date(nowMs())) }, faultId);
}

/** Drop an entry that needs attention, for good. @param {string} opId */
export async function discard(opId) {
  await openStore().discard(opId);
  await reload();
}

/**
 * Send a refused entry again, mended where fields are given.
 * @param {import('../care/overlay.js').Entry} entry
 * @param {Record<string, unknown>} [mended]
 */
export async function sendAgain(entry, mended = {}) {
  await openStore().mend(entry.op_id, { ...entry.op.set, ...mended });
  await reload();
  void syncNow();
}

/**
 * Leave a conflict as it stands, or bring this phone's values back.
 * @param {import('../care/overlay.js').Met} met
 * @param {boolean} mine
 */
export async function settle(met, mine) {
  if (mine) {
    const set = Object.fromEntries(met.conflicts.map((c) => [c.field, c.mine]));
    await openStore().enqueue([changeOf(met.op.kind, met.op.id, set)]);
  }
  await openStore().settle(met.op_id);
  await reload();
  void syncNow();
}
