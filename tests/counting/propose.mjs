// Dots on pictures, by the phone's own modules. Each line of the standard input is JSON, {way, file, width, height, …},
// where `file` holds luminance as bytes; for each a line is printed, {made, ms}: what was made of it and how long that
// took.
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';

const root = new URL('../../pwa/counting/', import.meta.url);
const { propose } = await import(new URL('propose.js', root).href);
const { blobsIn, scales } = await import(new URL('blobs.js', root).href);
const { negative } = await import(new URL('grey.js', root).href);
const { rangeOf } = await import(new URL('range.js', root).href);
const { guessedBody } = await import(new URL('scale.js', root).href);
const { USUAL_THRESHOLD } = await import(new URL('threshold.js', root).href);

const read = ({ file, width, height }) => ({
  data: Float32Array.from(readFileSync(file), (v) => v / 255),
  width,
  height,
});
const counted = (told) => {
  const dots = propose(read(told), told.body_px, told.frame);
  const threshold = told.threshold ?? USUAL_THRESHOLD;
  const workers = dots.filter((dot) => dot.what === 'worker');
  const stand = workers.filter((dot) => dot.score >= threshold);
  return { dots, range: rangeOf(stand, workers, threshold, told.body_px) };
};
const ways = {
  counted,
  guess: (told) => guessedBody(read(told)),
  propose: (told) => propose(told.pale ? negative(read(told)) : read(told), told.body_px, told.frame, !told.pale),
  blobs: (told) => blobsIn(read(told), scales(told.low_px, told.high_px, told.ratio), told.least, told.ratio),
};
for await (const line of createInterface({ input: process.stdin })) {
  const told = JSON.parse(line);
  const begin = performance.now();
  const made = ways[told.way](told);
  process.stdout.write(`${JSON.stringify({ made, ms: performance.now() - begin })}\n`);
}
