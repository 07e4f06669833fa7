// The worker that looks for dots, so that the page stays free: a picture comes in as a file, dots go out.
import { luminance } from './grey.js';
import { propose } from './propose.js';
import { guessedBody } from './scale.js';

/** @typedef {import('./grey.js').Grey} Grey */
/** @typedef {{blob?: Blob, body_px: number | null, frame: import('./propose.js').Frame | null, turn: number}} Asked
 *   `blob`: a picture to look at from now on; without it, the last; `body_px` null: guess how large a worker is */

const worker = /** @type {any} */ (self);
/** @type {Grey | null} */
let grey = null;

/** @param {Blob} blob @returns {Promise<Grey>} */
async function read(blob) {
  const picture = await createImageBitmap(blob, { imageOrientation: 'from-image' });
  const { width, height } = picture;
  const pen = /** @type {any} */ (new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true }));
  pen.drawImage(picture, 0, 0);
  picture.close();
  return luminance(pen.getImageData(0, 0, width, height).data, width, height);
}

worker.addEventListener('message', async (/** @type {{data: Asked}} */ { data }) => {
  const { blob, frame, turn } = data;
  try {
    if (blob) grey = await read(blob);
    if (!grey) return;
    const body_px = data.body_px ?? guessedBody(grey);
    worker.postMessage({ turn, body_px, dots: propose(grey, body_px, frame ?? undefined) });
  } catch (problem) {
    worker.postMessage({ turn, problem: String(problem) });
  }
});
worker.postMessage({ ready: true });
