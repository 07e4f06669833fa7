// Runs fixtures/conformance against the phone's pure modules; the catalogue comes on standard input.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import test from 'node:test';

const root = new URL('../../', import.meta.url);
const read = (name) => JSON.parse(readFileSync(fileURLToPath(new URL(`fixtures/conformance/${name}.json`, root))));
const load = (name) => import(new URL(`pwa/care/${name}.js`, root).href);
const catalogue = JSON.parse(readFileSync(process.env.CATALOGUE));
const { applyEvent, dueAtMs, levelAt } = await load('gauges');
const { originsOf, originVerdict, usualOrigin } = await load('origin');
const { overlayRows } = await load('overlay');
const { itemsDue } = await import('./whole_round.mjs');

const gauges = read('gauges');
for (const c of gauges.cases) {
  test(`gauge: ${c.name}`, () => {
    const gauge = c.events.reduce((g, e) => applyEvent(g, e.kind, e.happened_ms, e.values), {
      ...gauges.gauge,
      ...c.change,
    });
    assert.equal(levelAt(gauge, c.at_ms), c.level);
    assert.equal(dueAtMs(gauge), c.due_at_ms);
  });
}
for (const c of read('origin').cases) {
  test(`origin: ${c.origin} of ${c.got_on} on ${c.today}`, () => {
    const got = originVerdict(catalogue.origins, c.origin, c);
    assert.deepEqual([got.verdict, got.until], [c.verdict, c.until]);
  });
}
for (const [code, usual, others] of JSON.parse(readFileSync(process.env.ORIGINS))) {
  test(`origin: where ${code} usually comes from, and where else it can`, () => {
    assert.equal(usualOrigin(catalogue.foods, code), usual);
    assert.deepEqual(originsOf(catalogue.foods, catalogue.origins, code), others);
  });
}
const { mixSugarWater } = await load('mixing');
for (const c of read('mixing').cases) {
  test(`mixing: ${c.percent_ww} % in ${c.water_ml} mL`, () => {
    const made = mixSugarWater(c.percent_ww, c.water_ml);
    assert.ok(Math.abs(made.sugar_g / c.sugar_g - 1) < 0.001);
    assert.ok(Math.abs(made.total_ml / c.total_ml - 1) < 0.002);
  });
}

// The phone's overlay on an old plan must agree with the server's plan after the same log.
for (const c of JSON.parse(readFileSync(process.env.PLANS))) {
  test(`the phone's round agrees with the server's plan: ${c.name}`, () => {
    const entries = c.log.map((op, i) => ({
      op_id: op.id,
      op: { ...op, made_at: 0 },
      state: 'waiting',
      answer: null,
      n: i,
    }));
    const known = c.known.map((event) => ({ ...event, rev: 1, by: null, made_ms: 0 }));
    const rowsBefore = [
      { id: c.colony, kind: 'colony', rev: 1, by: null, made_ms: 0, set: { name: 'A' } },
      { id: 'plan', kind: 'plan', rev: 2, by: null, made_ms: 0, set: { ...c.before, inputs_rev: 1 } },
      ...known,
    ];
    const counted = c.log.map((op) => ({ id: op.id, kind: op.kind, rev: 1, by: null, made_ms: 0, set: op.set }));
    const rowsAfter = [rowsBefore[0], { ...rowsBefore[1], set: { ...c.after, inputs_rev: 1 } }, ...known, ...counted];
    const told = (item) => ['leftovers', 'fault'].includes(item.what) && item.stand_in.reasons.map((step) => step.code);
    const due = (rows, outbox) =>
      itemsDue(overlayRows(rows, outbox, 'me'), c.now_ms, catalogue)
        .filter((item) => (!c.of || item.what === c.of) && (!c.by_now || item.group === 'now'))
        .map((item) => [item.key, item.due_at_ms, item.urgent, told(item)])
        .sort();
    if (c.of) assert.ok(due(rowsBefore, []).length, 'without the log there is nothing to do');
    assert.deepEqual(due(rowsBefore, entries), due(rowsAfter, []));
  });
}
test('a rejected change does not hide what the server says', () => {
  const rows = [{ id: 'c', kind: 'colony', rev: 1, by: null, made_ms: 0, set: { name: 'A' } }];
  const op = { op_id: 'o', kind: 'colony', id: 'c', set: { name: 'B' }, made_at: 1 };
  const shown = overlayRows(rows, [{ op_id: 'o', op, state: 'rejected', answer: {}, n: 1 }], null);
  assert.equal(shown.get('c').set.name, 'A');
});
test('a waiting deletion hides the row at once', () => {
  const rows = [{ id: 'c', kind: 'colony', rev: 1, by: null, made_ms: 0, set: { name: 'A' } }];
  const op = { op_id: 'o', kind: 'colony', id: 'c', set: { gone: true }, made_at: 1 };
  assert.equal(overlayRows(rows, [{ op_id: 'o', op, state: 'waiting', answer: null, n: 1 }], null).has('c'), false);
});
