// Sharing files; a chart as a picture to share: the drawing with its computed colours, on paper, as a PNG.
import { say } from '../words/say.js';

const SCALE = 3;
const STYLES = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'opacity',
  'font-size',
  'font-family',
  'stroke-linejoin',
];

/** @param {SVGSVGElement} svg @param {string} title @returns {Promise<File>} */
async function pictureOf(svg, title) {
  const copy = /** @type {SVGSVGElement} */ (svg.cloneNode(true));
  const [, , width = 1, height = 1] = svg.getAttribute('viewBox')?.split(' ').map(Number) ?? [];
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(width * SCALE));
  copy.setAttribute('height', String(height * SCALE));
  const drawn = [...svg.querySelectorAll('*')];
  [...copy.querySelectorAll('*')].forEach((each, i) => {
    const style = getComputedStyle(/** @type {Element} */ (drawn[i]));
    for (const name of STYLES) each.setAttribute(name, style.getPropertyValue(name));
  });
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(copy))}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = (width + 20) * SCALE;
  canvas.height = (height + 44) * SCALE;
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  const page = getComputedStyle(document.body);
  pen.fillStyle = page.backgroundColor;
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.fillStyle = page.color;
  pen.font = `600 ${15 * SCALE}px ${page.getPropertyValue('--serif')}`;
  pen.fillText(title, 10 * SCALE, 24 * SCALE, width * SCALE);
  pen.drawImage(image, 10 * SCALE, 36 * SCALE);
  const blob = await new Promise((done, fail) => {
    canvas.toBlob((made) => (made ? done(made) : fail(new Error(say('chart-no-picture')))), 'image/png');
  });
  return new File([/** @type {Blob} */ (blob)], 'broodshelf-chart.png', { type: 'image/png' });
}

/** Share it where the phone can, else save it. @param {SVGSVGElement} svg @param {string} title */
export const sharePicture = async (svg, title) => shareFile(await pictureOf(svg, title), title);

/** The same with a file. @param {File} file @param {string} title */
export async function shareFile(file, title) {
  if (navigator.canShare?.({ files: [file] })) {
    await navigator.share({ files: [file], title }).catch(() => undefined);
    return;
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
