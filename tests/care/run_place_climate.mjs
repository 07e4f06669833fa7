// The warmth of a place as a shape behind a chart, by the phone's own module.
import assert from 'node:assert/strict';
import test from 'node:test';

const { warmthBehind } = await import(new URL('../../pwa/care/place-climate.js', import.meta.url).href);

const DAY_MS = 86_400_000;
const FIRST = Date.parse('2026-01-01');
const dayAt = (n, mean_c) => ({ on: new Date(FIRST + n * DAY_MS).toISOString().slice(0, 10), hours: 24, mean_c });
const days = (count, mean = (n) => 20 + n) => Array.from({ length: count }, (_, n) => dayAt(n, mean(n)));

test('few days are no shape, and what lies outside of the chart is none of it', () => {
  assert.equal(warmthBehind(days(4), FIRST, FIRST + 30 * DAY_MS), null);
  assert.equal(warmthBehind(days(20), FIRST + 17 * DAY_MS, FIRST + 30 * DAY_MS), null);
  assert.equal(
    warmthBehind(
      days(20).map((day) => ({ ...day, mean_c: null })),
      FIRST,
      FIRST + 30 * DAY_MS,
    ),
    null,
  );
});
test('the coolest day is the lowest and the warmest the highest, in any order of the rows', () => {
  const { shape, low, high } = warmthBehind(days(8).reverse(), FIRST, FIRST + 30 * DAY_MS);
  assert.deepEqual([low, high], [20, 27]);
  assert.deepEqual([shape[0][0], shape.at(-1)[0]], [FIRST, FIRST + 7 * DAY_MS]);
  assert.ok(shape[0][1] > 0 && shape.at(-1)[1] < 1);
  assert.ok(shape.every(([, share], i) => i === 0 || share > shape[i - 1][1]));
});
test('a long time is drawn by the week, and days that are all the same by a level line', () => {
  const { shape } = warmthBehind(
    days(140, () => 22),
    FIRST,
    FIRST + 200 * DAY_MS,
  );
  assert.equal(shape.length, 20);
  assert.equal(new Set(shape.map(([, share]) => share)).size, 1);
});
