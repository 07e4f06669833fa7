// Sending pictures, after the logs: one file a request, again whole when it was cut.
import { photoWasRefused, photoWasSent, unsentPhotos } from '../database/photos.js';
import { putPicture } from './api.js';

const NOT_YET = 404; // its record waits, or was refused: the picture stays here
const BUSY = 'busy'; // others' pictures are being looked at
const NEVER = [400, 413, 415];

/** @param {string} deviceId @returns {Promise<number>} how many wait still; rejects when the connection fails */
export async function sendPhotos(deviceId) {
  let waiting = 0;
  for (const photo of await unsentPhotos(deviceId)) {
    try {
      await putPicture(`/api/photos/${photo.id}`, photo.blob);
      await photoWasSent(deviceId, photo.id);
    } catch (error) {
      const problem = /** @type {import('./api.js').ApiProblem} */ (error);
      const { status, code } = problem;
      if (NEVER.includes(status)) await photoWasRefused(deviceId, photo.id);
      else if (status === NOT_YET || code === BUSY) waiting += 1;
      else throw error;
    }
  }
  return waiting;
}
