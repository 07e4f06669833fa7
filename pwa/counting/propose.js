// From a picture to proposed dots: workers, and brood where it is lighter than its ground. Pure; runs in a worker.
import { blobsIn, scales } from './blobs.js';
import { bodiesIn } from './bodies.js';
import { darkness, lightness } from './contrast.js';
import { cut, resized } from './grey.js';

/** @typedef {import('./grey.js').Grey} Grey */
/**
 * A proposed dot: its middle in px of the picture given, what it is, and how sure, 0 to 1.
 * @typedef {{x: number, y: number, what: 'worker' | 'brood', score: number, angle: number}} Proposed
 */
/** What counts, in px of the picture. @typedef {{left: number, top: number, right: number, bottom: number}} Frame */

/** A body is looked at as so many px long: larger shows no more, and costs time. */
export const LOOKED_AT_PX = 16;
/** What is less dark than this against its ground, in luminance, is noise. */
const LEAST = 0.025;
/** Brood: how large its blobs are in bodies' lengths, and in how much smaller a picture it is looked for. */
const BROOD = { finest: 0.11, widest: 0.2, ends: 0.55, share: 0.6 };
const DIRECTIONS = 16;
const LEAST_BROOD = 0.03;
/** And brood that is less light than this is never plain, however alone it is. */
const PLAIN_BROOD = 0.08;
/** Brood closer than this to a plainer grain, in bodies' lengths, is that grain. */
const SAME_GRAIN = 0.3;

/**
 * The dots that are proposed, surest first, with scores that do not depend on a threshold.
 * @param {Grey} grey @param {number} body_px the length of a worker in it @param {Frame | null} [frame]
 * @param {boolean} [grains] whether brood is looked for, too
 * @returns {Proposed[]}
 */
export function propose(grey, body_px, frame = null, grains = true) {
  const part = frame ? cut(grey, frame) : { ...grey, left: 0, top: 0 };
  const share = Math.min(4, LOOKED_AT_PX / body_px);
  const small = resized(part, share);
  const body = body_px * share;
  const workers = scored(bodiesIn(darkness(small, body), body, LEAST)).map(({ x, y, angle, score }) => ({
    x,
    y,
    angle,
    score,
    what: /** @type {const} */ ('worker'),
  }));
  const back = (/** @type {number} */ place) => (place + 0.5) / share - 0.5;
  const brood = grains ? broodIn(resized(small, BROOD.share), BROOD.share * body, workers.map(toGrains)) : [];
  return [...workers, ...brood.map(fromGrains)]
    .map((dot) => ({ ...dot, x: part.left + back(dot.x), y: part.top + back(dot.y) }))
    .sort((a, b) => b.score - a.score);
}

/** Between the picture in which bodies are looked for and the smaller one for grains, which are wider. */
const toGrains = (/** @type {Proposed} */ dot) => ({ ...dot, x: dot.x * BROOD.share, y: dot.y * BROOD.share });
const fromGrains = (/** @type {Proposed} */ dot) => ({ ...dot, x: dot.x / BROOD.share, y: dot.y / BROOD.share });

/** What the plainest bodies of a picture score is 1; what is half as dark against its ground 0.5.
 * @template {{strength: number}} B @param {B[]} bodies @param {number} [least] strength of what scores 1 */
function scored(bodies, least = 0) {
  const strengths = bodies.map((body) => body.strength).sort((a, b) => b - a);
  const third = strengths[2] ?? strengths.at(-1) ?? 0;
  const plain = strengths.filter((each) => each > third / 2);
  const usual = Math.max(least, plain[Math.floor(plain.length / 4)] ?? 1);
  return bodies.map((body) => ({ ...body, score: Math.min(1, body.strength / usual) }));
}

/**
 * Pale grains: blobs, not lines, lighter than their ground, with no worker on them.
 * @param {Grey} small @param {number} body @param {Array<{x: number, y: number, score: number}>} workers
 */
function broodIn(small, body, workers) {
  const light = lightness(small, body);
  const blobs = blobsIn(light, scales(BROOD.finest * body, BROOD.widest * body), LEAST_BROOD).filter((blob) =>
    isRound(light, blob.x, blob.y, body),
  );
  /** @type {typeof blobs} */
  const apart = [];
  for (const blob of blobs) {
    const near = (/** @type {{x: number, y: number}} */ other) =>
      Math.hypot(other.x - blob.x, other.y - blob.y) < SAME_GRAIN * body;
    if (!apart.some(near) && !workers.some((worker) => worker.score > 0.5 && near(worker))) apart.push(blob);
  }
  return scored(apart, PLAIN_BROOD).map(({ x, y, score }) => ({
    x,
    y,
    angle: 0,
    score,
    what: /** @type {const} */ ('brood'),
  }));
}

/** Whether it is no line: of no two opposite directions goes it on both ways. Glare, scratches and threads do.
 * @param {Grey} light @param {number} x @param {number} y @param {number} body */
function isRound(light, x, y, body) {
  const least = 0.5 * valueAt(light, x, y);
  for (let i = 0; i < DIRECTIONS; i += 1) {
    const u = Math.cos((i * Math.PI) / DIRECTIONS) * BROOD.ends * body;
    const v = Math.sin((i * Math.PI) / DIRECTIONS) * BROOD.ends * body;
    if (valueAt(light, x + u, y + v) > least && valueAt(light, x - u, y - v) > least) return false;
  }
  return true;
}

/** @param {Grey} grey @param {number} x @param {number} y */
function valueAt({ data, width, height }, x, y) {
  const column = Math.round(x);
  const row = Math.round(y);
  return column < 0 || row < 0 || column >= width || row >= height ? 0 : (data[row * width + column] ?? 0);
}
