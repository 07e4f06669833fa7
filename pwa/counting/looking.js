// The worker that looks for dots, so that the page stays free: a picture comes in as a file, dots go out.
import { luminance } from './grey.js';
import { propose } from './propose.js';
import { guessedBody } from './scale.js';

/** @typedef {import('./grey.js').Grey} Grey */
/** @typedef {{blob?: Blob, body_px: number | null, frame: import('./propose.js').Frame | null, turn: number}} Asked
 *   `blob`: a picture to look at from now on; without it, the last; `body_px` null: guess how large a worker is */

const worker = /** @type {any} */ (self);
const STRIP_PX = 128;
/** @type {Grey | null} */
let grey = null;

/** In strips, so that the pixels in colour are never held whole a second time. @param {Blob} blob
 * @returns {Promise<Grey>} */
async function read(blob) {
  const picture = await createImageBitmap(blob, { imageOrientation: 'from-image' });
  const { width, height } = picture;
  const data = new Float32Array(width * height);
  const pen = /** @type {any} */ (new OffscreenCanvas(width, STRIP_PX).getContext('2d', { willReadFrequently: true }));
  for (let top = 0; top < height; top += STRIP_PX) {
    const rows = Math.min(STRIP_PX, height - top);
    pen.drawImage(picture, 0, -top);
    data.set(luminance(pen.getImageData(0, 0, width, rows).data, width, rows).data, top * width);
  }
  picture.close();
  return { data, width, height };
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
