// A picture taken at the shelf: made small here, freed of place and camera, kept on this phone, logged, sent later.
import { startLooker } from '../counting/looker.js';
import { madeSmall } from '../counting/small.js';
import { keepPhoto } from '../database/photos.js';
import { uuid7 } from '../database/ids.js';
import { eventOf, write } from '../signals/actions.js';
import { openStore } from '../signals/session.js';
import { say } from '../words/say.js';

/** @typedef {import('../counting/small.js').Small} Small */
/** @typedef {import('../counting/looker.js').Looker} Looker */

/**
 * Make what the camera gave small, in a worker where the browser's can.
 * @param {File} file @param {Looker} [looker] one that runs already, and looks at it from now on
 * @returns {Promise<Small>}
 * @throws {Error} with what to do, in words for the keeper, where it cannot be read; nothing was kept then
 */
export async function smallOf(file, looker) {
  const mine = looker ?? startLooker();
  try {
    const small = await mine.small(file).catch(async () => smallHere(file));
    if (small) return small;
  } catch {
    throw new Error(say((await isHeic(file)) ? 'counting-heic' : 'photo-unreadable'));
  } finally {
    if (!looker) mine.end();
  }
  throw new Error(say('photo-too-large'));
}

/** In the page: browsers whose workers cannot draw. @param {File} file @returns {Promise<Small | null>} */
async function smallHere(file) {
  const made = await madeSmall(file);
  if (made) made.canvas.width = 0;
  return made?.small ?? null;
}

/**
 * Keep the picture itself, and give its record, which is kept after it: none may name a picture that this phone lacks.
 * @param {string} id @param {string} colonyId @param {Small} small
 */
export async function keepBlob(id, colonyId, { blob, width_px, height_px, sha256 }) {
  await keepPhoto(openStore().deviceId, { id, sha256, blob, sent: 0, made_ms: Date.now() });
  return eventOf('photo', { colony_id: colonyId, sha256, width_px, height_px }, id);
}

/** Keep it. @param {string} colonyId @param {Small} small @returns {Promise<string>} the record's id */
export async function keepPicture(colonyId, small) {
  const id = uuid7();
  await write([await keepBlob(id, colonyId, small)]);
  return id;
}

/** Kinds of what a phone's camera writes that few browsers read: the brands of ISO/IEC 23008-12, HEVC in a HEIF. */
const BRANDS = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1'];

/** By its first box, whatever it is called. @param {Blob} file */
async function isHeic(file) {
  const head = new TextDecoder('latin1').decode(await file.slice(4, 12).arrayBuffer());
  return head.startsWith('ftyp') && BRANDS.includes(head.slice(4));
}
