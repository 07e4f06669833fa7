// The worker for pictures, so that the page stays free: makes a picture small, and looks for dots in it.
import { luminance, negative } from './grey.js';
import { propose } from './propose.js';
import { guessedBody } from './scale.js';
import { madeSmall } from './small.js';
import { practise } from './practice.js';

/** @typedef {import('./grey.js').Grey} Grey */
/** @typedef {import('./small.js').Pen} Pen */
/** @typedef {{body_px: number | null, frame: import('./propose.js').Frame | null, pale: boolean}} How */
/**
 * What is asked. `small`: make this file small, and look at it from now on; `look`: for dots, in `blob` from now on
 * or in the last picture, where `body_px` is null with a guess how large a worker is, `pale`: workers are paler than
 * their ground; `practise`: become quick.
 * @typedef {{id: number, way: 'small', file: Blob}
 *   | {id: number, way: 'look', blob?: Blob} & How
 *   | {id: number, way: 'practise'}} Asked
 */

const worker = /** @type {DedicatedWorkerGlobalScope & typeof globalThis} */ (self);
const STRIP_PX = 128;
/** @type {Grey | null} */
let grey = null;

/** In strips, so that the pixels in colour are never held whole a second time. @param {Pen} pen
 * @param {number} width @param {number} height @param {(top: number) => number} [draw] the strip that begins there
 * @returns {Grey} */
function greyOf(pen, width, height, draw = (top) => top) {
  const data = new Float32Array(width * height);
  for (let top = 0; top < height; top += STRIP_PX) {
    const rows = Math.min(STRIP_PX, height - top);
    data.set(luminance(pen.getImageData(0, draw(top), width, rows).data, width, rows).data, top * width);
  }
  return { data, width, height };
}

/** A picture that was kept, which is small. @param {Blob} blob @returns {Promise<Grey>} */
async function read(blob) {
  const picture = await createImageBitmap(blob, { imageOrientation: 'from-image' });
  const { width, height } = picture;
  const pen = /** @type {Pen} */ (new OffscreenCanvas(width, STRIP_PX).getContext('2d', { willReadFrequently: true }));
  const made = greyOf(pen, width, height, (top) => {
    pen.drawImage(picture, 0, -top);
    return 0;
  });
  picture.close();
  return made;
}

/** @param {Asked} asked @returns {Promise<unknown>} */
async function answer(asked) {
  if (asked.way === 'practise') return practise();
  if (asked.way === 'small') {
    const made = await madeSmall(asked.file);
    if (!made) return null;
    const { small, canvas } = made;
    grey = greyOf(/** @type {Pen} */ (canvas.getContext('2d')), small.width_px, small.height_px);
    canvas.width = 0; // its pixels are not kept until somebody tidies up
    return small;
  }
  if (asked.blob) grey = await read(asked.blob);
  if (!grey) throw new Error('There is no picture to look at.');
  const { frame, pale } = asked;
  // of pale ants the negative is looked at, in which brood, paler still, cannot be told from them
  const dark = pale ? negative(grey) : grey;
  const body_px = asked.body_px ?? guessedBody(dark);
  return { body_px, dots: propose(dark, body_px, frame, !pale) };
}

let last = Promise.resolve();
worker.addEventListener('message', (/** @type {{data: Asked}} */ { data }) => {
  last = last
    .then(() => answer(data))
    .then(
      (made) => worker.postMessage({ id: data.id, made }),
      (problem) => worker.postMessage({ id: data.id, problem: String(problem) }),
    );
});
