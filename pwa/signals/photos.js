// A picture taken at the shelf: made small here, freed of place and camera, kept on this phone, logged, sent later.
import { withOffset } from '../care/instants.js';
import { nowMs } from './clock.js';
import { findPhoto, keepPhoto } from '../database/photos.js';
import { uuid7 } from '../database/ids.js';
import { keep } from './actions.js';
import { openStore } from './session.js';
import { say } from '../words/say.js';

const MOST_BYTES = 300_000;
/** The longest side in px and the quality, tried in this order until the picture is small enough. */
const TRIES = /** @type {const} */ ([
  [1600, 0.8],
  [1280, 0.75],
  [1024, 0.7],
  [800, 0.6],
  [640, 0.5],
]);

/** @param {string} colonyId @param {Blob} file what the camera gave @returns {Promise<string>} the record's id */
export async function takePhoto(colonyId, file) {
  const { blob, width_px, height_px } = await makeSmall(file);
  const sha256 = hex(await crypto.subtle.digest('SHA-256', await blob.arrayBuffer()));
  const id = uuid7();
  // the picture first: a record must never name one that this phone has not kept
  await keepPhoto(openStore().deviceId, { id, sha256, blob, sent: 0, made_ms: Date.now() });
  await keep(
    'photo',
    { colony_id: colonyId, happened_at: withOffset(new Date(nowMs())), sha256, width_px, height_px },
    id,
  );
  return id;
}

/** Drawing it on a canvas leaves everything but the pixels behind. @param {Blob} file */
async function makeSmall(file) {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  try {
    for (const [side, quality] of TRIES) {
      const scale = Math.min(1, side / Math.max(picture.width, picture.height));
      const width_px = Math.max(1, Math.round(picture.width * scale));
      const height_px = Math.max(1, Math.round(picture.height * scale));
      const canvas = Object.assign(document.createElement('canvas'), { width: width_px, height: height_px });
      canvas.getContext('2d')?.drawImage(picture, 0, 0, width_px, height_px);
      const blob = await new Promise((/** @type {(made: Blob | null) => void} */ done) =>
        canvas.toBlob(done, 'image/jpeg', quality),
      );
      if (blob && blob.size <= MOST_BYTES) return { blob, width_px, height_px };
    }
  } finally {
    picture.close();
  }
  throw new Error(say('photo-too-large'));
}

/**
 * Where to show a picture from: this phone, or else the server.
 * @param {string} id
 * @returns {Promise<string>} free it after use
 */
export async function addressOf(id) {
  const here = await findPhoto(openStore().deviceId, id).catch(() => undefined);
  return here ? URL.createObjectURL(here.blob) : `/api/photos/${id}`;
}

/** @param {ArrayBuffer} bytes */
const hex = (bytes) => [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
