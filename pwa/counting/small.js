// A picture made small: upright by its EXIF, freed of place and camera. It runs in the worker, and in the page of a
// browser whose workers cannot draw.
import { sizeOfJpeg } from './jpeg.js';

/** @typedef {{blob: Blob, width_px: number, height_px: number, sha256: string}} Small */
/** @typedef {CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D} Pen */

const MOST_BYTES = 300_000;
/** The longest side in px and the quality, tried in this order until the picture is small enough. */
const TRIES = /** @type {const} */ ([
  [1600, 0.8],
  [1280, 0.75],
  [1024, 0.7],
  [800, 0.6],
  [640, 0.5],
]);
const LARGEST_PX = TRIES[0][0];
/** The head of a JPEG: EXIF and its own small picture may go before the frame. */
const HEAD_BYTES = 262_144;
/** A decoder of JPEG makes a picture of so many eighths by itself. */
const EIGHTHS = 8;

/**
 * Drawing it on a canvas leaves everything but the pixels behind.
 * @param {Blob} file @returns {Promise<{small: Small, canvas: HTMLCanvasElement | OffscreenCanvas} | null>} with what
 *   it was drawn on, for the caller to make empty; null where it cannot be made small enough
 * @throws where the browser cannot read the picture
 */
export async function madeSmall(file) {
  const picture = await decoded(file);
  try {
    const { width, height } = picture;
    for (const [side, quality] of TRIES) {
      const scale = Math.min(1, side / Math.max(width, height));
      const width_px = Math.max(1, Math.round(width * scale));
      const height_px = Math.max(1, Math.round(height * scale));
      const canvas = canvasOf(width_px, height_px);
      const pen = /** @type {Pen} */ (canvas.getContext('2d', { willReadFrequently: true }));
      pen.imageSmoothingQuality = 'high';
      pen.drawImage(picture, 0, 0, width_px, height_px);
      const blob = await jpegOf(canvas, quality);
      if (blob && blob.size <= MOST_BYTES) {
        const sha256 = hex(await crypto.subtle.digest('SHA-256', await blob.arrayBuffer()));
        return { small: { blob, width_px, height_px, sha256 }, canvas };
      }
      canvas.width = 0; // its pixels are not kept until somebody tidies up
    }
  } finally {
    picture.close();
  }
  return null;
}

/**
 * A picture, upright. A large JPEG is decoded no larger than it is needed where the browser does that: a quarter of
 * the memory and half of the time for 12 megapixels. `rotation`: such a browser says, and draws, what EXIF says.
 * @param {Blob} file @returns {Promise<ImageBitmap>}
 */
async function decoded(file) {
  if ('ImageDecoder' in globalThis && 'rotation' in VideoFrame.prototype && file.type === 'image/jpeg') {
    const size = sizeOfJpeg(new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer()));
    const eighths = size ? Math.ceil((EIGHTHS * LARGEST_PX) / Math.max(size.width, size.height)) : EIGHTHS;
    if (size && eighths < EIGHTHS) {
      const decoder = new ImageDecoder({
        type: file.type,
        data: file.stream(),
        desiredWidth: Math.ceil((size.width * eighths) / EIGHTHS),
        desiredHeight: Math.ceil((size.height * eighths) / EIGHTHS),
      });
      try {
        const { image } = await decoder.decode();
        // not drawn as it is: Chromium 156 would keep the pixels of a drawn frame as long as the page lives
        return await createImageBitmap(image).finally(() => image.close());
      } catch {
        // the other way says what is wrong with it
      } finally {
        decoder.close();
      }
    }
  }
  return createImageBitmap(file, { imageOrientation: 'from-image' });
}

/** @param {number} width @param {number} height */
const canvasOf = (width, height) =>
  globalThis.OffscreenCanvas
    ? new OffscreenCanvas(width, height)
    : Object.assign(document.createElement('canvas'), { width, height });

/** @param {HTMLCanvasElement | OffscreenCanvas} canvas @param {number} quality @returns {Promise<Blob | null>} */
const jpegOf = (canvas, quality) =>
  'convertToBlob' in canvas
    ? canvas.convertToBlob({ type: 'image/jpeg', quality })
    : new Promise((done) => canvas.toBlob(done, 'image/jpeg', quality));

/** @param {ArrayBuffer} bytes */
const hex = (bytes) => [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
