// When a founding asks its question, what an answer logs, and the line of time, by the phone's own modules.
import assert from 'node:assert/strict';
import test from 'node:test';

const root = new URL('../../', import.meta.url);
const load = (name) => import(new URL(`pwa/care/${name}.js`, root).href);
const { logOf, questionOf } = await load('awaited');
const { cut, laneOf, months, nestAt, seenIn, SERIES } = await load('time-line');

const DAY_MS = 86_400_000;
const NOW = new Date(2026, 6, 20, 9).getTime();
const PUPAE = { brood: 'pupae', by_on: '2026-07-20' };
const ago = (days, kind, set) => ({ kind, set, happened_ms: NOW - days * DAY_MS });
const turn = (events, asked = PUPAE, stalled = false) => questionOf(asked, events, NOW, stalled)?.turn;

test('nothing is asked where nothing is awaited', () => assert.equal(questionOf(null, [], NOW), null));
test('what should be there by now is asked for', () => assert.equal(turn([]), 'ask'));
test('nobody is asked more than a week before the day', () => {
  assert.equal(turn([], { brood: 'pupae', by_on: '2026-07-27' }), 'ask');
  assert.equal(turn([], { brood: 'pupae', by_on: '2026-07-28' }), 'early');
});
test('whatever the answer, nobody is asked again for a week', () => {
  for (const answer of ['not_yet', 'cannot_see']) {
    const { kind, set } = logOf('c', 'pupae', answer, 'could not see');
    assert.equal(turn([ago(6.9, kind, set)]), 'rest');
    assert.equal(turn([ago(7.1, kind, set)]), 'ask');
  }
});
test('a queen whose founding has stalled is left alone for two weeks', () => {
  assert.equal(turn([ago(13, 'count', { pupae: 'none' })], PUPAE, true), 'rest');
  assert.equal(turn([ago(15, 'count', { pupae: 'none' })], PUPAE, true), 'ask');
});
test('any look counts: one that was logged as a count, or as looked in', () => {
  assert.equal(turn([ago(2, 'count', { workers: 0, larvae: 'some' })]), 'rest');
  assert.equal(turn([ago(2, 'check', { need: 'glance' })]), 'rest');
  assert.equal(turn([ago(2, 'check', { need: 'water' })]), 'ask');
});
test('what was seen is told until the plan knows it, also when it was counted in another way', () => {
  assert.equal(turn([ago(1, 'count', { pupae: 'seen' })]), 'told');
  assert.equal(turn([ago(1, 'count', { pupae: 'many' })]), 'told');
});
test('an answer is an ordinary log', () => {
  assert.deepEqual(logOf('c', 'pupae', 'yes', ''), { kind: 'count', set: { colony_id: 'c', pupae: 'seen' } });
  assert.deepEqual(logOf('c', 'eggs', 'not_yet', ''), { kind: 'count', set: { colony_id: 'c', eggs: 'none' } });
  const unseen = { kind: 'check', set: { colony_id: 'c', need: 'glance', remark: 'could not see' } };
  assert.deepEqual(logOf('c', 'pupae', 'cannot_see', 'could not see'), unseen);
});

/** A column on a day: so many of each stage, give or take a half. */
const column = (day, ...numbers) => [day * DAY_MS, ...numbers.map((n) => [n / 2, n, n * 2])];
const COLUMNS = [column(0, 10, 0, 0, 0, 0), column(10, 0, 8, 0, 0, 0), column(20, 0, 0, 6, 4, 0)];
const best = (ranges) => ranges.map((range) => range[1]);

test('between two columns every number goes in a straight line, and before and after them it stays', () => {
  assert.deepEqual(best(nestAt(COLUMNS, 5 * DAY_MS)), [5, 4, 0, 0, 0]);
  assert.deepEqual(nestAt(COLUMNS, 15 * DAY_MS)[3], [1, 2, 4]);
  assert.deepEqual(best(nestAt(COLUMNS, -DAY_MS)), [10, 0, 0, 0, 0]);
  assert.deepEqual(best(nestAt(COLUMNS, 99 * DAY_MS)), [0, 0, 6, 4, 0]);
});
test('the line is cut where the drawing ends, and never goes beyond what is known', () => {
  const part = cut(COLUMNS, 5 * DAY_MS, 12 * DAY_MS);
  assert.deepEqual(
    part.map(([ms]) => ms / DAY_MS),
    [5, 10, 12],
  );
  assert.deepEqual(
    laneOf(part, 1).map(({ range }) => range[1]),
    [4, 8, 6.4],
  );
  assert.deepEqual(
    cut(COLUMNS, -50 * DAY_MS, 50 * DAY_MS).map(([ms]) => ms / DAY_MS),
    [0, 10, 20],
  );
  assert.deepEqual(cut(COLUMNS, 30 * DAY_MS, 50 * DAY_MS), []);
});
test('what was seen stands in the row of its stage, and a number only where workers were counted', () => {
  const counts = [
    ago(9, 'count', { workers: 12, larvae: 'some', pupae: 'none' }),
    ago(2, 'count', { workers_coarse: 'few', eggs: 'seen' }),
  ];
  const marks = (stage) => seenIn(counts, stage).map(({ number, found }) => number ?? found);
  assert.deepEqual(SERIES.map(marks), [[true], [], [true], [false], [12]]);
  assert.deepEqual(
    seenIn([ago(1, 'count', { workers: 0 })], 'workers').map(({ found }) => found),
    [false],
  );
});
test('months are marked on their first day', () => {
  const from = new Date(2026, 10, 20).getTime();
  assert.deepEqual(
    months(from, from + 60 * DAY_MS).map((ms) => new Date(ms).toDateString()),
    ['Tue Dec 01 2026', 'Fri Jan 01 2027'],
  );
});
