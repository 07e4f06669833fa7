// How a colony grew, from one counted picture to the next: side by side, and as a film to share.
import { useEffect, useRef, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { ticked } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { shareFile } from '../components/picture.js';
import { drawDots } from '../counting/drawing.js';
import { fromKept } from '../counting/marks.js';
import { addressOf } from '../signals/photos.js';
import { say } from '../words/say.js';
import { fullDay } from '../words/shown.js';
import { wearStyle } from './dot-stage.js';

/** @typedef {import('../care/overlay.js').ShownRow<'photo'>} PhotoRow */

const WIDTH_PX = 720;
const HEIGHT_PX = 540;
const BAND_PX = 76;
/** How long each picture stands in the film. */
const STANDS_MS = 1400;
const FRAMES_S = 12;
const MOST = 24;
/** Pictures in a row of the strip that is shared as one picture. */
const IN_ROW = 3;

/** @param {{all: PhotoRow[], name: string}} props newest first */
export function Growth({ all, name }) {
  const [dots, setDots] = useState(true);
  const { attempt, busy, said } = useAttempt();
  const counted = all
    .filter((row) => typeof row.set.dots_number === 'number')
    .slice(0, MOST)
    .reverse();
  if (!all.length) return null;
  return html`
    <details>
      <summary>
        <h3>${say('counting-growth')}</h3>
      </summary>
      ${
        counted.length < 2
          ? html`
              <p class="soft">${say('counting-few')}</p>
            `
          : html`
              <ol class="photo-strip dot-strip">
                ${counted.map(
                  (row) => html`
                    <li key=${row.id}>
                      <${Still} row=${row} dots=${dots} />
                    </li>
                  `,
                )}
              </ol>
              <label class="chip">
                <input type="checkbox" checked=${dots} onChange=${ticked(setDots)} />
                ${' '}${say('counting-shown')}
              </label>
              <div class="wrap even">
                <button
                  type="button"
                  class="button"
                  disabled=${busy}
                  onClick=${() => attempt(async () => shareFile(await film(counted, dots), name))}
                >
                  <${Icon} name="share" />
                  ${busy ? say('counting-making') : say('counting-film')}
                </button>
                <button
                  type="button"
                  class="button"
                  disabled=${busy}
                  onClick=${() => attempt(async () => shareFile(await strip(counted, dots), name))}
                >
                  ${say('counting-strip')}
                </button>
              </div>
              ${said}
            `
      }
    </details>
  `;
}

/** One picture with its day, its number and its dots. @param {{row: PhotoRow, dots: boolean}} props */
function Still({ row, dots }) {
  const canvas = useRef(/** @type {HTMLCanvasElement | null} */ (null));
  wearStyle();
  useEffect(() => {
    const { current } = canvas;
    if (!current) return;
    current.width = WIDTH_PX / 2;
    current.height = (HEIGHT_PX + BAND_PX) / 2;
    const pen = /** @type {CanvasRenderingContext2D} */ (current.getContext('2d'));
    pen.scale(0.5, 0.5);
    void imageOf(row).then(
      (image) => still(pen, row, image, dots),
      () => undefined,
    );
  }, [row.id, dots, row.set.dots]);
  const count = row.set.dots_number ?? 0;
  return html`
    <canvas ref=${canvas} role="img" aria-label=${captionOf(row, count)}></canvas>
  `;
}

/** @param {PhotoRow} row @param {number} count */
const captionOf = (row, count) => `${fullDay(row.happened_ms ?? 0)} · ${say('event-workers', { count })}`;

/** @param {PhotoRow} row @returns {Promise<HTMLImageElement>} */
async function imageOf(row) {
  const address = await addressOf(row.id);
  const image = new Image();
  image.src = address;
  await image.decode();
  if (address.startsWith('blob:')) URL.revokeObjectURL(address);
  return image;
}

/** Draw one on paper. @param {CanvasRenderingContext2D} pen @param {PhotoRow} row @param {HTMLImageElement} image
 * @param {boolean} dots */
function still(pen, row, image, dots) {
  const page = getComputedStyle(document.body);
  pen.fillStyle = page.backgroundColor;
  pen.fillRect(0, 0, WIDTH_PX, HEIGHT_PX + BAND_PX);
  const size = { width_px: image.naturalWidth, height_px: image.naturalHeight };
  const scale = Math.min(WIDTH_PX / size.width_px, HEIGHT_PX / size.height_px);
  pen.save();
  pen.translate((WIDTH_PX - scale * size.width_px) / 2, (HEIGHT_PX - scale * size.height_px) / 2);
  pen.drawImage(image, 0, 0, scale * size.width_px, scale * size.height_px);
  if (dots) {
    const radius = Math.min(9, Math.max(4, (row.set.dots_worker_px ?? 30) * scale * 0.3));
    drawDots(pen, fromKept(row.set.dots, size), { scale, radius });
  }
  pen.restore();
  pen.fillStyle = page.color;
  pen.font = `600 34px ${page.getPropertyValue('--serif') || 'serif'}`;
  pen.fillText(captionOf(row, row.set.dots_number ?? 0), 16, HEIGHT_PX + 50, WIDTH_PX - 32);
}

/** All side by side, a few in a row. @param {PhotoRow[]} counted @param {boolean} dots @returns {Promise<File>} */
async function strip(counted, dots) {
  const canvas = document.createElement('canvas');
  const in_row = Math.min(IN_ROW, counted.length);
  canvas.width = in_row * WIDTH_PX;
  canvas.height = Math.ceil(counted.length / in_row) * (HEIGHT_PX + BAND_PX);
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  pen.fillStyle = getComputedStyle(document.body).backgroundColor;
  pen.fillRect(0, 0, canvas.width, canvas.height);
  for (const [i, row] of counted.entries()) {
    const image = await imageOf(row);
    pen.save();
    pen.translate((i % in_row) * WIDTH_PX, Math.floor(i / in_row) * (HEIGHT_PX + BAND_PX));
    still(pen, row, image, dots);
    pen.restore();
  }
  const blob = await new Promise((/** @type {(made: Blob | null) => void} */ done) =>
    canvas.toBlob(done, 'image/jpeg', 0.85),
  );
  if (!blob) throw new Error(say('photo-too-large'));
  return new File([blob], 'broodshelf-growth.jpg', { type: 'image/jpeg' });
}

/** One after the other. @param {PhotoRow[]} counted @param {boolean} dots @returns {Promise<File>} */
async function film(counted, dots) {
  const type = ['video/mp4', 'video/webm'].find((each) => globalThis.MediaRecorder?.isTypeSupported(each));
  const canvas = document.createElement('canvas');
  if (!type || !canvas.captureStream) throw new Error(say('counting-still'));
  canvas.width = WIDTH_PX;
  canvas.height = HEIGHT_PX + BAND_PX;
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  const images = await Promise.all(counted.map(imageOf));
  const recorder = new MediaRecorder(canvas.captureStream(FRAMES_S), { mimeType: type });
  /** @type {Blob[]} */
  const parts = [];
  recorder.ondataavailable = ({ data }) => parts.push(data);
  const ended = new Promise((done) => {
    recorder.onstop = done;
  });
  recorder.start();
  for (const [i, row] of counted.entries()) {
    const until_ms = performance.now() + STANDS_MS;
    while (performance.now() < until_ms) {
      // drawn again and again: a canvas that stands still gives no frames
      still(pen, row, /** @type {HTMLImageElement} */ (images[i]), dots);
      await new Promise((done) => setTimeout(done, 1000 / FRAMES_S));
    }
  }
  recorder.stop();
  await ended;
  const ending = type.slice(type.indexOf('/') + 1);
  return new File(parts, `broodshelf-growth.${ending}`, { type });
}
