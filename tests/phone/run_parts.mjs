// Parts of screens by themselves: what becomes of work that is asked for twice, or whose screen was left meanwhile.
import assert from 'node:assert/strict';
import test from 'node:test';
import { load } from '../support/node/app.mjs';

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
