// Pictures on this phone: those that wait to be sent, and the latest of those that were.
import { inTransaction, databaseOf } from './open.js';

/** @typedef {{id: string, sha256: string, blob: Blob, sent: 0 | 1 | 2, made_ms: number}} Photo
 * `id` is that of its record; `sent`: 0 waits, 1 is on the server, 2 was refused and stays here */

const KEPT_HERE = 60;

/** @param {string} deviceId @param {Photo} photo */
export function keepPhoto(deviceId, photo) {
  return inTransaction(databaseOf(deviceId), ['photos'], 'readwrite', (tx) => tx.objectStore('photos').put(photo));
}

/** @param {string} deviceId @param {string} id @returns {Promise<Photo | undefined>} */
export function findPhoto(deviceId, id) {
  return inTransaction(databaseOf(deviceId), ['photos'], 'readonly', (tx) => tx.objectStore('photos').get(id));
}

/**
 * The pictures that wait and whose record the server has, as far as this phone knows: without its record none is taken.
 * @param {import('../vendor/idb.js').Transaction} tx over photos and rows
 * @returns {Promise<string[]>} their ids, oldest first
 */
export async function sendable(tx) {
  const ids = /** @type {string[]} */ (await tx.objectStore('photos').index('by_sent').getAllKeys(0));
  const known = await Promise.all(ids.map((id) => tx.objectStore('rows').count(id)));
  return ids.filter((_, i) => known[i]);
}

/** @param {string} deviceId @returns {Promise<Photo[]>} oldest first */
export function unsentPhotos(deviceId) {
  return inTransaction(databaseOf(deviceId), ['photos', 'rows'], 'readonly', async (tx) =>
    Promise.all((await sendable(tx)).map((id) => tx.objectStore('photos').get(id))),
  );
}

/** Whatever no server has, refused ones too. @param {string} deviceId @returns {Promise<Photo[]>} */
export async function picturesOnlyHere(deviceId) {
  const all = await inTransaction(databaseOf(deviceId), ['photos'], 'readonly', (tx) =>
    tx.objectStore('photos').getAll(),
  );
  return all.filter((/** @type {Photo} */ { sent }) => sent !== 1);
}

/**
 * A picture is on the server: keep the latest here for looking at offline, let older ones go.
 * @param {string} deviceId
 * @param {string} id
 */
export function photoWasSent(deviceId, id) {
  return inTransaction(databaseOf(deviceId), ['photos'], 'readwrite', async (tx) => {
    const photos = tx.objectStore('photos');
    const all = /** @type {Photo[]} */ (await photos.getAll());
    const sent = all.filter((photo) => photo.sent === 1 || photo.id === id).sort((a, b) => b.made_ms - a.made_ms);
    await Promise.all([
      ...sent
        .slice(0, KEPT_HERE)
        .filter((photo) => !photo.sent)
        .map((photo) => photos.put({ ...photo, sent: 1 })),
      ...sent.slice(KEPT_HERE).map((photo) => photos.delete(photo.id)),
    ]);
  });
}

/**
 * The server will never take this picture: do not send it again, keep it here.
 * @param {string} deviceId
 * @param {string} id
 */
export function photoWasRefused(deviceId, id) {
  return inTransaction(databaseOf(deviceId), ['photos'], 'readwrite', async (tx) => {
    const photo = await tx.objectStore('photos').get(id);
    if (photo) await tx.objectStore('photos').put({ ...photo, sent: 2 });
  });
}
