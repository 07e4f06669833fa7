// Sending pictures, after the logs: one file a request, again whole when it was cut.
import { photoWasRefused, photoWasSent, unsentPhotos } from '../database/photos.js';
import { putPicture } from './api.js';

const LATER = ['not_found', 'busy']; // its record has just gone; others' pictures are being looked at
const NEVER = [400, 413, 415];

/** @param {string} deviceId @returns {Promise<void>} rejects when the connection fails */
export async function sendPhotos(deviceId) {
  for (const photo of await unsentPhotos(deviceId)) {
    try {
      await putPicture(`/api/photos/${photo.id}`, photo.blob);
      await photoWasSent(deviceId, photo.id);
    } catch (error) {
      const problem = /** @type {import('./api.js').ApiProblem} */ (error);
      const { status, code } = problem;
      if (NEVER.includes(status)) await photoWasRefused(deviceId, photo.id);
      else if (!LATER.includes(code)) throw error;
    }
  }
}
