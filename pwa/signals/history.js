// The whole log of one colony, and the readings of places: what every screen holds already, and before that what the store gives when it is asked.
import { useEffect, useState } from 'preact/hooks';
import { overlayRows } from '../care/overlay.js';
import { events, openStore, outbox, saving, seenSinceMs } from './shelf.js';

/**
 * @param {string} colonyId
 * @returns {{log: import('../care/overlay.js').ShownRow[], whole: boolean}} oldest first; `whole` once the old part is there
 */
export function useHistory(colonyId) {
  const [old, setOld] = useState(/** @type {import('../care/overlay.js').Row[] | null} */ (null));
  useEffect(() => {
    let wanted = true;
    void openStore().history(colonyId, Date.now()).then((found) => { if (wanted) setOld(found); });
    return () => { wanted = false; };
  }, [colonyId, outbox.value.length, saving.value.last_sync_ms]); // a sync may have changed what is stored
  const recent = events.value.get(colonyId) ?? [];
  if (!old) return { log: recent, whole: false };
  const known = new Set(recent.map((row) => row.id));
  const since_ms = seenSinceMs();
  const earlier = [...overlayRows(old, outbox.value, null).values()]
    .filter((row) => row.set.colony_id === colonyId && row.happened_ms !== null && row.happened_ms < since_ms && !known.has(row.id));
  const log = [...earlier, ...recent].sort((a, b) => (a.happened_ms ?? 0) - (b.happened_ms ?? 0)); // an old fault is among the recent
  return { log, whole: true };
}

/** The readings of all places, those that wait among them, newest first. @returns {import('../care/overlay.js').ShownRow[]} */
export function useReadings() {
  const [stored, setStored] = useState(/** @type {import('../care/overlay.js').Row[]} */ ([]));
  useEffect(() => {
    let wanted = true;
    void openStore().readings().then((found) => { if (wanted) setStored(found); });
    return () => { wanted = false; };
  }, [outbox.value.length, saving.value.last_sync_ms]);
  const waiting = outbox.value.filter((entry) => entry.op?.kind === 'climate');
  return [...overlayRows(stored, waiting, null).values()].sort((a, b) => (b.happened_ms ?? 0) - (a.happened_ms ?? 0));
}
