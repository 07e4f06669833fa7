// Dots over a picture. Workers are rings, brood diamonds, what a person drew has a cross: no colour says it alone.

/** @typedef {import('./marks.js').Dot} Dot */

const LIGHT = '#fffaf1';
const DARK = '#1a130e';

/**
 * @param {CanvasRenderingContext2D} pen @param {Dot[]} dots in px of the picture
 * @param {{scale: number, radius: number, chosen?: string, threshold?: number, numbers?: boolean}} how `scale`: px of
 *   the canvas for one of the picture; `radius` in px of the canvas; `numbers`: beside each
 */
export function drawDots(pen, dots, { scale, radius, chosen = '', threshold = 0, numbers = false }) {
  const lines = Math.max(1.2, radius / 5);
  pen.font = `600 ${Math.max(10, radius * 1.3)}px sans-serif`;
  dots.forEach((dot, i) => {
    const x = dot.x * scale;
    const y = dot.y * scale;
    const is_chosen = dot.key === chosen;
    const doubtful = dot.score !== null && dot.score < threshold + 0.1;
    const path = shapeOf(dot, x, y, is_chosen ? radius * 1.5 : radius);
    pen.setLineDash([]);
    pen.lineWidth = lines * (is_chosen ? 5 : 2.6);
    pen.strokeStyle = DARK;
    pen.stroke(path);
    pen.setLineDash(doubtful ? [lines * 2, lines * 1.6] : []);
    pen.lineWidth = lines * (is_chosen ? 2.4 : 1.3);
    pen.strokeStyle = LIGHT;
    pen.stroke(path);
    pen.setLineDash([]);
    if (is_chosen || numbers) {
      pen.lineWidth = lines * 2.4;
      pen.strokeStyle = DARK;
      pen.strokeText(String(i + 1), x + radius * 1.3, y - radius * 0.8);
      pen.fillStyle = LIGHT;
      pen.fillText(String(i + 1), x + radius * 1.3, y - radius * 0.8);
    }
  });
}

/** @param {Dot} dot @param {number} x @param {number} y @param {number} radius */
function shapeOf({ what, score }, x, y, radius) {
  const path = new Path2D();
  if (what === 'brood') {
    path.moveTo(x, y - radius);
    path.lineTo(x + radius, y);
    path.lineTo(x, y + radius);
    path.lineTo(x - radius, y);
    path.closePath();
  } else {
    path.arc(x, y, radius, 0, 2 * Math.PI);
  }
  if (score === null) {
    const arm = radius * 0.5;
    path.moveTo(x - arm, y);
    path.lineTo(x + arm, y);
    path.moveTo(x, y - arm);
    path.lineTo(x, y + arm);
  }
  return path;
}
