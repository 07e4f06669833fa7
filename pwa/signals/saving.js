// How saving stands: whether a sync is under way, when the last one was, and what is wrong.
import { computed, signal } from '@preact/signals';

export const saving = signal({
  syncing: false,
  online: globalThis.navigator?.onLine ?? true,
  last_sync_ms: 0,
  problem: /** @type {null | {code: string, detail: string}} */ (null),
  clock_off_min: 0,
  update_ready: false,
  /** A new version comes when what is being written in this tab is saved or left. */
  update_waits: false,
  /** The browser had emptied this phone's storage, and nobody has read that yet. */
  emptied: false,
  /** What a keeper should know of the server, as it says. */
  told: /** @type {null | {code: string, backup_ms?: number, words?: string}} */ (null),
  /** Before this phone has the whole shelf for the first time: how much of it has come. */
  joining: /** @type {null | number} */ (null),
});

/** How much has come of a first pull that is under way, followed by itself. */
export const joining = computed(() => saving.value.joining);

/** @param {Partial<typeof saving.value>} values */
export function patchSaving(values) {
  const before = saving.peek();
  const after = { ...before, ...values };
  if (Object.keys(after).some((name) => Reflect.get(after, name) !== Reflect.get(before, name))) saving.value = after;
}
