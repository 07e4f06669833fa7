// A picture to practise on. What runs for the first time runs slowly, until the browser has compiled it. Pure.
import { propose } from './propose.js';
import { guessedBody } from './scale.js';

const WIDTH_PX = 480;
const HEIGHT_PX = 360;
const BODY_PX = 24;
const TURNS = 3;

/** Look for dots in a drawn picture, a few times. @returns {number} how many were proposed the last time */
export function practise() {
  const grey = drawn();
  let many = 0;
  for (let turn = 0; turn < TURNS; turn += 1) {
    guessedBody(grey);
    many = propose(grey, BODY_PX).length;
  }
  return many;
}

/** Dark and light ellipses in rows, each turned otherwise, on a ground that is never quite even.
 * @returns {import('./grey.js').Grey} */
function drawn() {
  const data = new Float32Array(WIDTH_PX * HEIGHT_PX);
  for (let i = 0; i < data.length; i += 1) data[i] = 0.7 + 0.03 * Math.sin(i * 12.9898);
  const apart = 2 * BODY_PX;
  for (let y = apart; y < HEIGHT_PX - apart; y += apart) {
    for (let x = apart; x < WIDTH_PX - apart; x += apart) {
      ellipse(data, x, y, x * 0.7 + y, (x + y) % (3 * apart) ? 0.2 : 0.95);
    }
  }
  return { data, width: WIDTH_PX, height: HEIGHT_PX };
}

/** @param {Float32Array} data changed @param {number} x @param {number} y @param {number} angle
 * @param {number} shade */
function ellipse(data, x, y, angle, shade) {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  for (let v = y - BODY_PX; v <= y + BODY_PX; v += 1) {
    for (let u = x - BODY_PX; u <= x + BODY_PX; u += 1) {
      const along = ((u - x) * cos + (v - y) * sin) / (BODY_PX / 2);
      const aside = ((v - y) * cos - (u - x) * sin) / (BODY_PX / 6);
      if (along * along + aside * aside < 1) data[v * WIDTH_PX + u] = shade;
    }
  }
}
