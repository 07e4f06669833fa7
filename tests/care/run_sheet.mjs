// The sheet of days of a pass, reckoned by the phone's own module; the catalogue comes from Python.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import test from 'node:test';

const root = new URL('../../', import.meta.url);
const load = (name) => import(new URL(`pwa/care/${name}.js`, root).href);
const catalogue = JSON.parse(readFileSync(process.env.GIVEN));
const { foods } = catalogue;
const { sheetOfDays } = await load('sheet');
const { eventsByColony } = await load('lists');
const { allItems } = await import('./whole_round.mjs');
const { overlayRows } = await load('overlay');

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
const NOW = new Date(2026, 4, 4, 9).getTime(); // a Monday morning
const STEPS = [{ code: 'step', args: {} }];
const gauge = (need, change) => ({
  need,
  unit: 'days',
  level: 0,
  capacity: 4,
  rate_per_day: 1,
  rate_low: 1,
  rate_high: 1,
  as_of_ms: NOW - 3 * DAY_MS,
  due_level: 0,
  basis: 'model',
  gain_per_portion: null,
  reasons: [],
  ...change,
});
const task = (key, change, [what, about] = key.split(':')) => ({
  key,
  what,
  about,
  need: what,
  due_at_ms: NOW,
  urgent: false,
  from_gauge: false,
  portion: null,
  suggested: null,
  reasons: [],
  cautions: [],
  stand_in: {},
  ...change,
});
const fly = { need: 'protein', food_code: 'fruit_fly', amount: 1, unit: 'piece', form: 'whole_dead' };
const feed = (set) => ({ from_gauge: true, portion: set, suggested: { kind: 'feeding', set } });
const sugarIn = (form) => ({ need: 'sugar', food_code: 'sugar_water', amount: 1, unit: 'drop', form });
const check = (need) => ({ kind: 'check', set: { need } });

/** What the sheet says of each day, from a colony's plan and its log. */
function sheet({ tasks, gauges = [], log = [], starts_on = '2026-05-01', ends_on = '2026-05-12', nowMs = NOW }) {
  const rows = overlayRows(
    [
      { id: 'c', kind: 'colony', rev: 1, by: null, made_ms: 0, set: { name: 'Amber' } },
      { id: 'plan', kind: 'plan', rev: 9, by: null, made_ms: 0, set: { colony_id: 'c', inputs_rev: 8, tasks, gauges } },
      ...log.map((each) => ({ rev: 5, by: null, made_ms: 0, ...each, set: { colony_id: 'c', ...each.set } })),
    ],
    [],
    'me',
  );
  const known = { items: allItems(rows, catalogue), events: eventsByColony(rows), gauges: () => gauges, catalogue };
  return sheetOfDays(known, { colony_ids: ['c'], starts_on, ends_on }, nowMs);
}
const needs = (days) =>
  Object.fromEntries(days.map(({ day, tasks }) => [Number(day.slice(8)), tasks.map((each) => each.need).join(' ')]));
const daysOf = (days, need) =>
  days.filter(({ tasks }) => tasks.some((each) => each.need === need)).map(({ day }) => Number(day.slice(8)));
const at = (days, day) => days.find((each) => Number(each.day.slice(8)) === day).tasks;

test('the days run from today to the last day of the pass', () => {
  assert.deepEqual(
    sheet({ tasks: [] }).map((each) => each.day.slice(8)),
    ['04', '05', '06', '07', '08', '09', '10', '11', '12'],
  );
});
test('a pass that begins later is told from its first day', () => {
  assert.deepEqual(
    sheet({ tasks: [], starts_on: '2026-05-10' }).map((each) => each.day.slice(8)),
    ['10', '11', '12'],
  );
});
test('a pass that is over has no days', () => assert.deepEqual(sheet({ tasks: [], ends_on: '2026-05-03' }), []));
test('food comes again with the interval of its gauge, and its leftovers after the hours of the food', () => {
  assert.equal(foods.fruit_fly.remove_after_h, 24); // common practice, no source: catalogue/foods.toml
  const got = sheet({ tasks: [task('protein:a', feed(fly))], gauges: [gauge('protein')] });
  assert.deepEqual(needs(got), {
    4: 'protein',
    5: 'leftovers',
    6: '',
    7: '',
    8: 'protein',
    9: 'leftovers',
    10: '',
    11: '',
    12: 'protein',
  });
  assert.deepEqual(at(got, 5)[0].foods, ['fruit_fly']);
});
test('a portion that fills a part of the gauge brings the next the sooner', () => {
  const got = sheet({ tasks: [task('protein:a', feed(fly))], gauges: [gauge('protein', { gain_per_portion: 2 })] });
  assert.deepEqual(daysOf(got, 'protein'), [4, 6, 8, 10, 12]);
});
test('a task is asked for once a day at the most', () => {
  const got = sheet({ tasks: [task('protein:a', feed(fly))], gauges: [gauge('protein', { capacity: 0.2 })] });
  assert.deepEqual(
    got.map(({ tasks }) => tasks.filter((each) => each.need === 'protein').length),
    Array(9).fill(1),
  );
});
test('what is due on a later day stands on that day, and what comes after the pass nowhere', () => {
  const full = gauge('protein', { level: 4, as_of_ms: NOW - 2 * DAY_MS });
  assert.deepEqual(daysOf(sheet({ tasks: [task('protein:a', feed(fly))], gauges: [full] }), 'protein'), [6, 10]);
  const far = gauge('barrier', { level: 30, capacity: 30 });
  assert.deepEqual(
    daysOf(
      sheet({ tasks: [task('barrier:a', { from_gauge: true, suggested: check('barrier') })], gauges: [far] }),
      'barrier',
    ),
    [],
  );
});
test('a drop is taken out after its hours; who fills a feeder anew takes the old one away', () => {
  const gauges = [gauge('sugar', { capacity: 4 })];
  assert.equal(foods.sugar_water.remove_after_h, 60); // common practice, no source: catalogue/foods.toml
  assert.deepEqual(daysOf(sheet({ tasks: [task('sugar:a', feed(sugarIn('drop')))], gauges }), 'leftovers'), [6, 10]);
  assert.deepEqual(daysOf(sheet({ tasks: [task('sugar:a', feed(sugarIn('feeder')))], gauges }), 'leftovers'), []);
});
test('leftovers of two foods come out together', () => {
  const tasks = [
    task('protein:a', feed(fly)),
    task('leftovers:f', {
      due_at_ms: NOW + DAY_MS,
      suggested: { kind: 'check', set: { feeding_id: 'f', need: 'leftovers', leftovers_removed: true } },
    }),
  ];
  const log = [
    { id: 'f', kind: 'feeding', set: { ...sugarIn('drop'), happened_at: new Date(NOW - HOUR_MS).toISOString() } },
  ];
  const got = at(sheet({ tasks, gauges: [gauge('protein')], log }), 5);
  assert.deepEqual(
    got.map((each) => each.foods),
    [['fruit_fly', 'sugar_water']],
  );
});
test('what is overdue stands on the first day, urgent first, and a fault once, by name and with its steps', () => {
  const tasks = [
    task('protein:a', feed(fly)),
    task('fault:f', {
      need: 'water',
      urgent: true,
      due_at_ms: NOW - DAY_MS,
      reasons: [{ code: 'leak', args: { fault: 'leak' } }],
      stand_in: { reasons: STEPS },
    }),
  ];
  const log = [{ id: 'f', kind: 'fault', set: { fault: 'leak', happened_at: new Date(NOW - DAY_MS).toISOString() } }];
  const got = sheet({ tasks, gauges: [gauge('protein')], log });
  assert.deepEqual(daysOf(got, 'water'), [4]);
  const [fault, food] = at(got, 4);
  assert.deepEqual([fault.fault, fault.first, fault.stand_in.reasons, food.need], ['leak', true, STEPS, 'protein']);
});
test("what is the keeper's alone is not on it", () => {
  const gauges = [gauge('room')];
  assert.deepEqual(
    daysOf(sheet({ tasks: [task('room:a', { from_gauge: true, stand_in: null })], gauges }), 'room'),
    [],
  );
});
test('water that a stand-in may only look at is looked at each day, its steps told once', () => {
  const low = task('water:a', { from_gauge: true, stand_in: { suggested: check('water'), reasons: STEPS } });
  const gauges = [gauge('water', { level: 0.2, capacity: 1, due_level: 0.25, rate_per_day: 0.01 })];
  const got = sheet({ tasks: [low], gauges, ends_on: '2026-05-06' });
  assert.deepEqual(
    got.map(({ tasks }) => tasks.map((each) => [each.need, each.first])),
    [[['water', true]], [['water', false]], [['water', false]]],
  );
  const looked = [
    { id: 'l', kind: 'check', set: { need: 'water', happened_at: new Date(NOW - HOUR_MS).toISOString() } },
  ];
  assert.deepEqual(daysOf(sheet({ tasks: [low], gauges, log: looked, ends_on: '2026-05-06' }), 'water'), [5, 6]);
});
test('water that a stand-in fills is not asked for again before it is low', () => {
  const low = task('water:a', { from_gauge: true, suggested: { kind: 'water', set: { action: 'refill' } } });
  const gauges = [gauge('water', { level: 0.2, capacity: 1, due_level: 0.25, rate_per_day: 0.15 })];
  assert.deepEqual(daysOf(sheet({ tasks: [low], gauges }), 'water'), [4, 9]);
});
test("a look without a gauge comes again as the server's plan would ask for it", () => {
  const airing = task('rest_air:1', { need: 'rest', suggested: check('rest') });
  assert.deepEqual(daysOf(sheet({ tasks: [airing] }), 'rest'), [4, 11]);
  const unknown = task('water_look:start', { need: 'water', suggested: check('water') });
  const gauges = [gauge('water', { level: 1, capacity: 1, due_level: 0.25, rate_per_day: 0.15, rate_high: 0.25 })];
  assert.deepEqual(daysOf(sheet({ tasks: [unknown], gauges }), 'water'), [4, 7, 10]);
});
test('the weekly look at the barrier and the monthly glance come again after their days', () => {
  const tasks = ['barrier', 'glance'].map((need) => task(`${need}:a`, { from_gauge: true, suggested: check(need) }));
  const gauges = [gauge('barrier', { capacity: 7 }), gauge('glance', { capacity: 30 })];
  const got = sheet({ tasks, gauges });
  assert.deepEqual([daysOf(got, 'barrier'), daysOf(got, 'glance')], [[4, 11], [4]]);
});
test('after food that was refused the daily look ends when the watch ends', () => {
  const watch = { code: 'risk_look', args: { at_ms: NOW - 6 * DAY_MS, day: 6, of: 8 } };
  assert.deepEqual(
    daysOf(
      sheet({ tasks: [task('risk_look:f', { need: 'glance', suggested: check('glance'), reasons: [watch] })] }),
      'glance',
    ),
    [4, 5, 6],
  );
});
test('a log that waits on this phone moves the days', () => {
  const fed = [{ id: 'n', kind: 'feeding', rev: 0, set: { ...fly, happened_at: new Date(NOW).toISOString() } }];
  const got = sheet({ tasks: [task('protein:a', feed(fly))], gauges: [gauge('protein')], log: fed });
  assert.deepEqual(
    [daysOf(got, 'protein'), daysOf(got, 'leftovers')],
    [
      [8, 12],
      [5, 9],
    ],
  );
});
test('what was given in a feeder may stay as long as the catalogue says of a feeder', () => {
  assert.equal(foods.sugar_water.feeder_h, 144); // common practice, no source: catalogue/foods.toml
  const fed = [
    { id: 'n', kind: 'feeding', rev: 0, set: { ...sugarIn('feeder'), happened_at: new Date(NOW).toISOString() } },
  ];
  assert.deepEqual(daysOf(sheet({ tasks: [], log: fed }), 'leftovers'), [10]);
});
