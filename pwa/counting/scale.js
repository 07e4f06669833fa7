// How large a worker is in a picture: from a length that is known, or from the picture itself. Pure.
import { sizedBlobs } from './blobs.js';
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
 * @param {import('../kinds.d.ts').CatalogueRows['species']} species
 * @returns {number | null} null where nobody says
 */
export function workerMm(colony, species) {
  if (colony.worker_length_mm) return colony.worker_length_mm;
  const range = species[colony.species_code ?? '']?.worker_mm;
  return range ? (range[0] + range[1]) / 2 : null;
}

/** In how small a picture sizes are compared; ants are looked for that are so long in it, until something is known. */
const SIDE_PX = 400;
const LONG_PX = 65;
/** Whoever turns out to be longer there is looked at again, as long as this: its parts are blobs of their own. */
const LONGER_PX = 12;
const AGAIN_PX = 10;
const LOOKS = 2;
/**
 * σ of heads and gasters, in px of what is looked at: octaves above the finest. `body`: how many times longer a body is
 * than σ, fitted on rendered tubes to guess rather too long: a fifth too long loses a twentieth of the ants, a fifth
 * too short takes heads and gasters for ants of their own.
 */
const FIRST = { finest_px: 0.67, octaves: 4, body: 11.5 };
const SECOND = { finest_px: 0.6, octaves: 3, body: 11 };
const FINE = Math.SQRT2;
const LEAST = 0.02;
/** Blobs weaker than this share of the strongest say nothing. */
const SAYS = 0.45;
/** Of the others the size below which so many are: in crowds several bodies answer together as one large blob. */
const BELOW = 0.35;

/**
 * A guess from the picture alone: the size at which dark blobs answer most (Lindeberg 1998).
 * @param {Grey} grey
 * @returns {number} the length of a worker in px
 */
export function guessedBody(grey) {
  const share = Math.min(1, SIDE_PX / Math.max(grey.width, grey.height));
  const first_px = bodyAt(grey, share, LONG_PX, FIRST) ?? LONG_PX / 2;
  let body_px = first_px / share;
  for (let look = 0; look < LOOKS && body_px * share > LONGER_PX; look += 1) {
    // the ground is taken off by the size of a body, so this guess knows better
    const closer = Math.min(1, AGAIN_PX / body_px);
    body_px = (bodyAt(grey, closer, AGAIN_PX, SECOND) ?? AGAIN_PX) / closer;
  }
  return inside(body_px);
}

/**
 * @param {Grey} grey @param {number} share as how small it is looked at @param {number} long_px a body there, as far as
 * it is known @param {typeof FIRST} how
 * @returns {number | null} how long a body is there; null where there is none
 */
function bodyAt(grey, share, long_px, how) {
  const blobs = blobsInOctaves(darkness(resized(grey, share), long_px), how);
  const strongest = blobs.map((blob) => blob.strength).sort((a, b) => b - a);
  // the third: one or two may be anything
  const plain = blobs.filter((blob) => blob.strength > SAYS * (strongest[2] ?? 0));
  const sigmas = plain.map((blob) => blob.sigma_px).sort((a, b) => a - b);
  const sigma_px = sigmas[Math.floor(BELOW * sigmas.length)];
  return sigma_px ? sigma_px * how.body : null;
}

/** Blobs of all sizes, each octave in a picture half as large as that before. @param {Grey} dark
 * @param {{finest_px: number, octaves: number}} how @returns {Array<{sigma_px: number, strength: number}>} */
function blobsInOctaves(dark, { finest_px, octaves }) {
  const found = [];
  let small = dark;
  let times = 1;
  for (let octave = 0; octave < octaves; octave += 1) {
    // one finer and one coarser scale are for comparing; the finest and the coarsest of all stand by themselves
    const low_px = octave > 0 ? finest_px / FINE : finest_px;
    const sigmas_px = [0, 1, 2, 3].map((step) => low_px * FINE ** step);
    const first = octave > 0 ? 1 : 0;
    const last = octave < octaves - 1 ? 2 : 3;
    for (const { scale, sigma_px, strength } of sizedBlobs(small, sigmas_px, LEAST, FINE)) {
      if (scale >= first && scale <= last) found.push({ sigma_px: sigma_px * times, strength });
    }
    small = resized(small, 0.5);
    times *= 2;
  }
  return found;
}
