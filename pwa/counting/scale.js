// How large a worker is in a picture: from a length that is known, or from the picture itself. Pure.
import { blobsIn, scales } from './blobs.js';
import { darkness } from './contrast.js';
import { resized } from './grey.js';

/** @typedef {import('./grey.js').Grey} Grey */
/** @typedef {{x: number, y: number}} Point in px of the picture */

/** How long a body is in a picture at least and at most, in px: shorter shows no parts, longer is a single ant. */
export const SHORTEST_PX = 6;
export const LONGEST_PX = 400;

/**
 * The length of a worker in px, by what lies between two points of the picture.
 * @param {Point} one @param {Point} other @param {number} known_mm what they are apart @param {number} worker_mm
 */
export function bodyByLength(one, other, known_mm, worker_mm) {
  return inside((Math.hypot(one.x - other.x, one.y - other.y) / known_mm) * worker_mm);
}

/** @param {number} px */
const inside = (px) => Math.min(LONGEST_PX, Math.max(SHORTEST_PX, px));

/**
 * How long workers of a colony are, in mm: the keeper's word, or the middle of the species' range.
 * @param {{worker_length_mm?: number | null, species_code?: string | null}} colony
 * @param {Record<string, {worker_mm?: [number, number]}>} species of the catalogue
 * @returns {number | null} null where nobody says
 */
export function workerMm(colony, species) {
  if (colony.worker_length_mm) return colony.worker_length_mm;
  const range = species[colony.species_code ?? '']?.worker_mm;
  return range ? (range[0] + range[1]) / 2 : null;
}

/** In how small a picture sizes are compared, and which blobs: σ of heads and gasters, in px of it. */
const SIDE_PX = 320;
const FIRST = { finest_px: 0.67, widest_px: 8 };
/** At the second look a body is about so long, and its blobs are no larger. */
const AGAIN_PX = 16;
const SECOND = { finest_px: 0.8, widest_px: 4 };
const FINE = 1.35;
/** Blobs weaker than this share of the strongest say nothing. */
const SAYS = 0.45;
/**
 * How many times longer a body is than the σ of its best blob, fitted on rendered tubes to guess rather too long: a
 * fifth too long loses a twentieth of the ants, a fifth too short takes heads and gasters for ants of their own.
 */
const BODY_OF_SIGMA = 13;

/**
 * A guess from the picture alone: the size at which dark blobs answer most (Lindeberg 1998), the plainest ones' middle.
 * @param {Grey} grey
 * @returns {number} the length of a worker in px
 */
export function guessedBody(grey) {
  let share = Math.min(1, SIDE_PX / Math.max(grey.width, grey.height));
  let body = (FIRST.widest_px / 2) * BODY_OF_SIGMA;
  // the ground is taken off by the size of a body, so the second guess, in a picture of its own size, knows better
  for (const { finest_px, widest_px } of [FIRST, SECOND]) {
    const small = resized(grey, share);
    const blobs = blobsIn(darkness(small, body), scales(finest_px, widest_px, FINE), 0.02, FINE);
    const plain = blobs.filter((blob) => blob.strength > SAYS * (blobs[2]?.strength ?? 0));
    const sigmas = plain.map((blob) => blob.sigma_px).sort((a, b) => a - b);
    const middle = sigmas[Math.floor(sigmas.length / 2)];
    if (!middle) break;
    const found_px = inside((middle * BODY_OF_SIGMA) / share);
    share = Math.min(1, AGAIN_PX / found_px);
    body = found_px * share;
  }
  return inside(body / share);
}
