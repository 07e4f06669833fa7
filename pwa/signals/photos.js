// Where to show a picture from.
import { findPhoto } from '../database/photos.js';
import { openStore } from './session.js';

/**
 * Where to show a picture from: this phone, or else the server.
 * @param {string} id
 * @returns {Promise<string>} free it after use
 */
export async function addressOf(id) {
  const here = await findPhoto(openStore().deviceId, id).catch(() => undefined);
  return here ? URL.createObjectURL(here.blob) : `/api/photos/${id}`;
}
