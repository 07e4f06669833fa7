// The phone's pure modules of counting: grey, blobs, scale, threshold, range.
import assert from 'node:assert/strict';
import test from 'node:test';

const root = new URL('../../pwa/counting/', import.meta.url);
const load = (name) => import(new URL(`${name}.js`, root).href);
const { blurred, cut, extreme, luminance, negative, resized } = await load('grey');
const { sizeOfJpeg } = await load('jpeg');
const { practise } = await load('practice');
const { blobsIn, scales } = await load('blobs');
const { bodyByLength, guessedBody, workerMm } = await load('scale');
const { judgedBy, learntThreshold, USUAL_THRESHOLD } = await load('threshold');
const { asKept, frameKept, frameOf, fromKept, marksOf, MOST_DOTS, moved, nearest, noMarks, plus, standing, without } =
  await load('marks');
const { rangeOf } = await load('range');

const flat = (width, height, value = 0) => ({ data: new Float32Array(width * height).fill(value), width, height });
const near = (a, b, by) => assert.ok(Math.abs(a - b) <= by, `${a} is not within ${by} of ${b}`);
const sum = (grey) => grey.data.reduce((all, each) => all + each, 0);

test('luminance weighs colours as BT.601 does', () => {
  const { data } = luminance(Uint8ClampedArray.of(255, 255, 255, 255, 255, 0, 0, 255, 0, 0, 255, 255), 3, 1);
  near(data[0], 1, 1e-6);
  near(data[1], 0.299, 1e-6);
  near(data[2], 0.114, 1e-6);
});

test('a smaller picture has the same mean, whatever the share', () => {
  const grey = flat(30, 21);
  grey.data.forEach((_, i) => (grey.data[i] = (i * 7919) % 13));
  for (const share of [0.5, 0.34, 0.8]) {
    const small = resized(grey, share);
    near(sum(small) / small.data.length, sum(grey) / grey.data.length, 0.05);
  }
});

test('a part of a picture is what lies in the frame, and never empty', () => {
  const grey = flat(4, 3);
  grey.data.set([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
  assert.deepEqual([...cut(grey, { left: 1, top: 1, right: 3, bottom: 3 }).data], [5, 6, 9, 10]);
  assert.equal(cut(grey, { left: 9, top: 9, right: 9, bottom: 9 }).data.length, 1);
});

test('a blur of a point is a bell: what is under it stays, its variance is sigma squared', () => {
  const grey = flat(41, 41);
  grey.data[20 * 41 + 20] = 1;
  const soft = blurred(grey, 2.5);
  near(sum(soft), 1, 1e-5);
  let variance = 0;
  soft.data.forEach((value, i) => (variance += value * ((i % 41) - 20) ** 2));
  near(variance, 6.25, 0.25); // cut off at three deviations: 2.7 % less at most
});

test('the extreme of a square is what looking at each pixel of it gives', () => {
  const grey = flat(23, 17);
  grey.data.forEach((_, i) => (grey.data[i] = (i * 7919) % 101));
  for (const [radius, largest] of [
    [1, true],
    [3, false],
    [9, true],
  ]) {
    const quick = extreme(grey, radius, largest);
    for (let y = 0; y < 17; y += 1) {
      for (let x = 0; x < 23; x += 1) {
        let most = largest ? -Infinity : Infinity;
        for (let v = Math.max(0, y - radius); v <= Math.min(16, y + radius); v += 1) {
          for (let u = Math.max(0, x - radius); u <= Math.min(22, x + radius); u += 1) {
            most = largest ? Math.max(most, grey.data[v * 23 + u]) : Math.min(most, grey.data[v * 23 + u]);
          }
        }
        assert.equal(quick.data[y * 23 + x], most);
      }
    }
  }
});

test('a flat picture has no blobs, and a spot has one at its place', () => {
  assert.deepEqual(blobsIn(flat(40, 30, 0.4), scales(2, 6), 0.01), []);
  const grey = flat(60, 40);
  for (let y = 0; y < 40; y += 1) {
    for (let x = 0; x < 60; x += 1) if (Math.hypot(x - 33, y - 17) <= 5) grey.data[y * 60 + x] = 1;
  }
  const [first, ...others] = blobsIn(grey, scales(2, 8), 0.2);
  assert.deepEqual([first.x, first.y], [33, 17]);
  assert.deepEqual(others, []);
});

test('a length that is known gives the length of a worker: 300 px across a bore of 15 mm, workers of 4 mm', () => {
  near(bodyByLength({ x: 10, y: 20 }, { x: 190, y: 260 }, 15, 4), 80, 1e-9);
});

test("the keeper's word on workers goes before the catalogue", () => {
  const species = { lasius_niger: { worker_mm: [3, 5] } };
  assert.equal(workerMm({ worker_length_mm: 6, species_code: 'lasius_niger' }, species), 6);
  assert.equal(workerMm({ species_code: 'lasius_niger' }, species), 4);
  assert.equal(workerMm({ species_code: 'own' }, species), null);
});

test('a guess of a picture without anything in it is a size all the same', () => {
  const guess = guessedBody(flat(200, 100, 0.5));
  assert.ok(guess >= 6 && guess <= 400);
});

test('the guess grows with the picture, and holds for a few large bodies as for many small ones', () => {
  for (const [long, apart] of [
    [22, 60],
    [60, 150],
    [120, 300],
  ]) {
    const grey = flat(1200, 900, 0.8);
    for (let y = apart / 2; y < 900; y += apart) {
      for (let x = apart / 2; x < 1200; x += apart) body(grey, x, y, long, x + y);
    }
    const guess = guessedBody(grey) / long;
    assert.ok(guess >= 0.8 && guess <= 1.7, `${long} px: ${guess}`);
  }
});
/** Three dark ellipses in a row, as long as `long` altogether. */
function body(grey, x, y, long, angle) {
  for (const [middle, half, wide] of [
    [-0.26, 0.24, 0.135],
    [0.08, 0.16, 0.075],
    [0.36, 0.13, 0.105],
  ]) {
    for (let v = Math.round(y - long); v <= y + long; v += 1) {
      for (let u = Math.round(x - long); u <= x + long; u += 1) {
        const t = ((u - x) * Math.cos(angle) + (v - y) * Math.sin(angle)) / long - middle;
        const s = ((v - y) * Math.cos(angle) - (u - x) * Math.sin(angle)) / long;
        const inside = (t / half) ** 2 + (s / wide) ** 2 <= 1 && u >= 0 && v >= 0 && u < grey.width && v < grey.height;
        if (inside) grey.data[v * grey.width + u] = 0.15;
      }
    }
  }
}

test('a negative of a negative is the picture', () => {
  const grey = flat(2, 1, 0.25);
  near(negative(grey).data[0], 0.75, 1e-6);
  assert.deepEqual(negative(negative(grey)), grey);
});

const START = [0xff, 0xd8];
const segment = (marker, length) => [0xff, marker, length >> 8, length & 255, ...new Array(length - 2).fill(0)];
const FRAME = [0xff, 0xc2, 0, 17, 8, 0x0b, 0xb8, 0x0f, 0xa0, 3]; // 3,000 high, 4,000 wide, progressive
test('the size of a JPEG is read behind EXIF and tables; of what is none, or is cut short, nothing is said', () => {
  const whole = Uint8Array.from([...START, ...segment(0xe1, 300), ...segment(0xc4, 40), 0xff, ...FRAME]);
  assert.deepEqual(sizeOfJpeg(whole), { width: 4000, height: 3000 });
  assert.equal(sizeOfJpeg(whole.slice(0, 200)), null);
  assert.equal(sizeOfJpeg(Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13])), null);
  assert.equal(sizeOfJpeg(new Uint8Array(0)), null);
  assert.equal(sizeOfJpeg(Uint8Array.from([...START, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10])), null);
});
test('practising looks for dots that are there', () => assert.ok(practise() >= 20));

const dots = (scores, real) => scores.map((score) => ({ score, real }));
test('without corrections the threshold stays', () => {
  assert.equal(learntThreshold(dots([0.9, 0.8, 0.6], true)), USUAL_THRESHOLD);
  assert.equal(learntThreshold([], 0.62), 0.62);
});
test('what was taken away raises it, what was added lowers it, and one dot alone moves it little', () => {
  const removed = [...dots([0.9, 0.85, 0.8], true), ...dots([0.52, 0.55, 0.57, 0.58, 0.58], false)];
  const added = [...dots([0.9, 0.85, 0.8, 0.44, 0.43, 0.42, 0.42], true)];
  near(learntThreshold(removed), 0.59, 0.011);
  near(learntThreshold(added), 0.42, 0.011);
  near(learntThreshold(dots([0.75], false)), USUAL_THRESHOLD, 0.1);
});
test('a dot that was drawn where one was proposed says that this was one; each says so once', () => {
  const proposed = [
    { x: 10, y: 10, score: 0.4 },
    { x: 12, y: 10, score: 0.3 },
    { x: 90, y: 10, score: 0.8 },
  ];
  assert.deepEqual(judgedBy(proposed, [{ x: 11, y: 10 }], 5), [
    { score: 0.4, real: true },
    { score: 0.3, real: false },
    { score: 0.8, real: false },
  ]);
});

const row = (many, apart, score) =>
  Array.from({ length: many }, (_, i) => ({ x: (i % 20) * apart, y: Math.floor(i / 20) * apart, score }));
const width = ({ low, high }) => high - low;
test('a few plain dots far apart are nearly exact, and the ends hold the number', () => {
  const range = rangeOf(row(12, 100, 0.95), [], 0.5, 20);
  assert.deepEqual([range.low, range.number, range.high, range.crowded], [12, 12, 12, false]);
});
test('a crowd hides some: only the upper end goes away', () => {
  const loose = rangeOf(row(160, 100, 0.95), [], 0.5, 20);
  const tight = rangeOf(row(160, 9, 0.95), [], 0.5, 20);
  assert.equal(tight.low, loose.low);
  assert.ok(tight.high > loose.high + 10);
  assert.ok(tight.crowded && !loose.crowded);
});
test('doubtful dots pull the lower end down and are not among those that are there at least', () => {
  const range = rangeOf([...row(20, 100, 0.95), ...row(10, 130, 0.55)], [], 0.5, 20);
  assert.ok(range.at_least <= 20 && range.low < 29 && range.at_least <= range.low);
});
test('dots that a person drew are not doubtful', () => {
  assert.equal(rangeOf(row(20, 100, null), [], 0.5, 20).at_least, 19);
});
test('who had to correct much before is told a wider range', () => {
  const plain = row(60, 100, 0.95);
  const none = rangeOf(plain, [], 0.5, 20, { stood: 200, added: 0, removed: 0 });
  const much = rangeOf(plain, [], 0.5, 20, { stood: 120, added: 40, removed: 40 });
  assert.ok(width(much) > 2 * width(none));
});
test('nothing counted is nothing, not less', () => {
  assert.deepEqual(rangeOf([], [], 0.5, 20), { number: 0, at_least: 0, low: 0, high: 0, crowded: false });
});

const SIZE = { width_px: 1000, height_px: 500 };
const ALL = frameOf(null, SIZE);
const proposal = (x, y, score, what = 'worker') => ({ x, y, score, what, angle: 0 });
const PROPOSED = [
  proposal(100, 100, 0.9),
  proposal(200, 100, 0.6),
  proposal(300, 100, 0.4),
  proposal(400, 300, 0.8, 'brood'),
];
const stand = (marks, threshold = 0.5, frame = ALL) => standing(PROPOSED, marks, threshold, frame, 40);
const at = (dots) => dots.map(({ x }) => x);

test('the threshold filters, and what a person took away or added stays so', () => {
  assert.deepEqual(at(stand(noMarks())), [100, 200, 400]);
  assert.deepEqual(at(stand(noMarks(), 0.7)), [100, 400]);
  const marks = plus(without(noMarks(), { sort: 'proposed', index: 0 }), PROPOSED, { x: 305, y: 102 }, 'worker', 20);
  assert.deepEqual(at(stand(marks, 0.3)), [200, 300, 400]);
  assert.deepEqual(at(stand(marks, 0.85)), [300]);
});
test('a dot is the own one of a person only where none was proposed', () => {
  const marks = plus(noMarks(), PROPOSED, { x: 600, y: 200 }, 'brood', 20);
  assert.deepEqual(marks.drawn, [{ x: 600, y: 200, what: 'brood' }]);
  assert.equal(stand(marks).find((dot) => dot.x === 600).score, null);
  assert.deepEqual(without(marks, { sort: 'drawn', index: 0 }).drawn, []);
});
test('what was taken away and added again is the proposal once more', () => {
  const marks = plus(without(noMarks(), { sort: 'proposed', index: 0 }), PROPOSED, { x: 100, y: 100 }, 'worker', 20);
  assert.deepEqual(at(stand(marks)), [100, 200, 400]);
});
test("a dot that was moved is the person's own", () => {
  const [first] = stand(noMarks());
  const { marks, key } = moved(noMarks(), first, 10, -5);
  const dots = stand(marks);
  const own = { key, sort: 'drawn', index: 0, x: 110, y: 95, what: 'worker', score: null };
  assert.deepEqual(
    dots.find((dot) => dot.key === key),
    own,
  );
  assert.equal(dots.length, 3);
});
test('only what lies in the frame counts', () => {
  assert.deepEqual(at(stand(noMarks(), 0.5, { left: 150, top: 0, right: 350, bottom: 500 })), [200]);
});
test('the nearest within reach is hit, and nothing beyond', () => {
  assert.equal(nearest(PROPOSED, { x: 190, y: 100 }, 15)?.x, 200);
  assert.equal(nearest(PROPOSED, { x: 150, y: 200 }, 15), null);
});
test('dots and frame come back from the record as they went in, and proposals are brought to them', () => {
  const marks = plus(without(noMarks(), { sort: 'proposed', index: 1 }), PROPOSED, { x: 700, y: 400 }, 'worker', 20);
  const kept = fromKept(asKept(stand(marks), SIZE), SIZE);
  assert.deepEqual(at(stand(marksOf(PROPOSED, kept, 15))), at(stand(marks)));
  const frame = { left: 100, top: 50, right: 900, bottom: 400 };
  assert.deepEqual(frameOf(frameKept(frame, SIZE), SIZE), frame);
});
test('what a newer app may keep is no dot, and no more are kept than a record takes', () => {
  assert.deepEqual(fromKept([[1, 2, 9], [1, 2], []], SIZE), []);
  const many = Array.from({ length: 1200 }, (_, i) => ({
    key: `d${i}`,
    x: i % 1000,
    y: 5,
    what: 'worker',
    score: null,
  }));
  assert.equal(asKept(many, SIZE).length, MOST_DOTS);
});
