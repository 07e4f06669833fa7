// Parts of screens by themselves: what becomes of work that is asked for twice, or whose screen was left meanwhile.
import assert from 'node:assert/strict';
import test from 'node:test';
import { load, navigator, serve, until } from '../support/node/app.mjs';

test('what is tapped twice is done once, and can be done again when that is over', async () => {
  const { useAttempt } = await load('components/attempt.js');
  const { attempt } = useAttempt();
  const done = [];
  const under_way = [];
  const stored = () => under_way.splice(0).forEach((end) => end());
  const log = () =>
    attempt(async () => {
      done.push('log');
      await new Promise((end) => void under_way.push(end));
    });
  const [first, second] = [log(), log()];
  stored();
  assert.deepEqual(await Promise.all([first, second]), [true, false]);
  assert.deepEqual(done, ['log']);

  const refused = attempt(() => {
    throw new Error('a full disk');
  });
  assert.equal(await refused, false);
  const again = log();
  stored();
  assert.equal(await again, true);
});

test('a camera that comes when its screen was left is let go at once', async () => {
  const { watchForCodes } = await load('signals/camera.js');
  let allow;
  const stopped = [];
  const stream = { getTracks: () => [{ stop: () => stopped.push('track') }] };
  navigator.mediaDevices = {
    getUserMedia: () =>
      new Promise((resolve) => {
        allow = () => resolve(stream);
      }),
  };
  globalThis.BarcodeDetector = class {
    static getSupportedFormats = () => ['qr_code'];
    detect = () => [{ rawValue: 'a code' }];
  };
  const video = { play: async () => undefined, videoWidth: 100 };
  const seen = [];
  const left = new AbortController();
  const watching = watchForCodes(video, (text) => seen.push(text), left.signal);
  left.abort();
  allow();
  await watching;

  assert.deepEqual([stopped, seen], [['track'], []]);

  const other = new AbortController();
  const again = watchForCodes(video, (text) => seen.push(text), other.signal);
  allow();
  await again;
  await until(() => seen.length);
  other.abort();

  assert.deepEqual([stopped, seen], [['track', 'track'], ['a code']]);
});

test('a picture that comes when nobody looks any more is let go', async () => {
  const { Photo } = await load('components/photo.js');
  const { holdStore } = await load('signals/session.js');
  const { keepPhoto } = await load('database/photos.js');
  holdStore('a phone');
  await keepPhoto('a phone', { id: 'one', blob: new Blob(['jpeg']), sent: 0, made_ms: 1 });
  const [made, freed] = [[], []];
  URL.createObjectURL = (blob) => made[made.push(`blob:${blob.size}-${made.length}`) - 1];
  URL.revokeObjectURL = (address) => freed.push(address);

  Photo({ id: 'one', words: '' });
  effects.pop()()();
  await until(() => made.length);
  await new Promise(setImmediate); // the component has heard of it

  assert.deepEqual(freed, made);
});

test('nudges that could not be stopped without a connection are said to go on, and go on', async () => {
  const { pushState, stopNudges } = await load('signals/push.js');
  let listening = true;
  const subscription = {
    unsubscribe: async () => {
      listening = false;
    },
  };
  const pushManager = { getSubscription: async () => (listening ? subscription : null) };
  navigator.serviceWorker = { ready: Promise.resolve({ pushManager }) };
  pushState.value = { ...pushState.value, state: 'on' };
  serve(() => {
    throw new TypeError('no connection');
  });
  await stopNudges();
  assert.deepEqual([pushState.value.state, listening], ['on', true]);
  assert.notEqual(pushState.value.problem, '');

  serve(() => [200, {}]);
  await stopNudges();
  assert.deepEqual([pushState.value.problem, listening], ['', false]);
});
