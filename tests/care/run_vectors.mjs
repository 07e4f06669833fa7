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
const { originVerdict } = await load('origin');
const { fill, sayPortion } = await load('words');
const { overlayRows } = await load('overlay');
const { buildRound } = await load('round');

const gauges = read('gauges');
for (const c of gauges.cases) {
  test(`gauge: ${c.name}`, () => {
    const gauge = c.events.reduce((g, e) => applyEvent(g, e.kind, e.happened_ms, e.values), { ...gauges.gauge, ...c.change });
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
const { mixSugarWater } = await load('mixing');
for (const c of read('mixing').cases) {
  test(`mixing: ${c.percent_ww} % in ${c.water_ml} mL`, () => {
    const made = mixSugarWater(c.percent_ww, c.water_ml);
    assert.ok(Math.abs(made.sugar_g / c.sugar_g - 1) < 0.001);
    assert.ok(Math.abs(made.total_ml / c.total_ml - 1) < 0.002);
  });
}
const words = read('words');
for (const c of words.portions) test(`words: ${c.words}`, () => assert.equal(sayPortion(catalogue.words, c.portion), c.words));
for (const c of words.templates) test(`template: ${c.template} ${JSON.stringify(c.args)}`, () => assert.equal(fill(c.template, c.args), c.words));

// The phone's overlay on an old plan must agree with the server's plan after the same log.
for (const c of JSON.parse(readFileSync(process.env.PLANS))) {
  test(`the phone's round agrees with the server's plan: ${c.name}`, () => {
    const entries = c.log.map((op, i) => ({ op_id: op.id, op: { ...op, made_at: 0 }, state: 'waiting', answer: null, n: i }));
    const rowsBefore = [
      { id: c.colony, kind: 'colony', rev: 1, by: null, made_ms: 0, set: { name: 'A' } },
      { id: 'plan', kind: 'plan', rev: 2, by: null, made_ms: 0, set: { ...c.before, inputs_rev: 1 } },
    ];
    const counted = c.log.map((op) => ({ id: op.id, kind: op.kind, rev: 1, by: null, made_ms: 0, set: op.set }));
    const rowsAfter = [rowsBefore[0], { ...rowsBefore[1], set: { ...c.after, inputs_rev: 1 } }, ...counted];
    const due = (rows, outbox) => buildRound(overlayRows(rows, outbox, 'me'), c.now_ms, c.now_ms, catalogue).items
      .map((item) => [item.key, item.due_at_ms, item.urgent]).sort();
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

const english = await import(new URL('pwa/text/en/calculators.js', root).href);
const symbols = ['', '°C', '%', 'mm', 'mL', 'mg'];
for (const input of JSON.parse(readFileSync(process.env.INPUTS).toString().replaceAll('Infinity', '9e999'))) {
  test(`the app has words of its own for what ${input.calculator} asks: ${input.name}`, () => {
    assert.ok(english.inputs[`${input.calculator}.${input.name}`] ?? english.inputs[input.name]);
    assert.ok(symbols.includes(input.unit) || english.units[input.unit], input.unit);
    assert.ok(english.leftOut[input.name] ?? /^[\d.]*$/.test(input.left_out), input.left_out);
    for (const code of input.choices) assert.ok(english.choices[code] ?? catalogue.words.food[code] ?? catalogue.species[code], code);
  });
}

const { fahrenheit, inDegrees, storedOf, temperature, typedOf } = await import(new URL('pwa/components/degrees.js', root).href);
test('°F is shown in the few regions that use it, unless the keeper chose', () => {
  const shown = (choice, language) => fahrenheit(choice, language);
  assert.deepEqual(['en-US', 'es-PR', 'en-GB', 'de', 'en', 'en-CA'].map((each) => shown(null, each)), [true, true, false, false, false, false]);
  assert.deepEqual([shown('c', 'en-US'), shown('f', 'de-AT')], [false, true]);
});
const plain = (text) => text.replaceAll('\u00a0', ' ');
test('degrees in a text become whole °F and nothing else changes', () => {
  const words = 'This species rests 3 to 5 months at 8 to 12.5 °C. Over 32 °C a colony suffers; -5 °C kills.';
  assert.equal(plain(inDegrees(words, true)), 'This species rests 3 to 5 months at 46 to 55 °F. Over 90 °F a colony suffers; 23 °F kills.');
  assert.equal(plain(inDegrees(words, false)), words);
  assert.equal(inDegrees('By day, °C', true), 'By day, °F');
});
test('every °F that is typed with one decimal is shown again as it was typed', () => {
  for (let tenths = 140; tenths <= 1130; tenths += 1) {
    const stored = storedOf(tenths / 10, null, true);
    assert.equal(typedOf(stored, true), String(tenths / 10));
    assert.equal(storedOf(tenths / 10, stored, true), stored);
  }
  assert.equal(storedOf(77, null, true), 25);
});
test('a field that nobody changed stores what was there, and an empty one nothing', () => {
  assert.equal(storedOf(Number(typedOf(22.37, true)), 22.37, true), 22.37);
  assert.equal(storedOf(24.5, 24.5, false), 24.5);
  assert.equal(storedOf(null, 22, true), null);
  assert.equal(typedOf(null, true), '');
});
test('what was typed in °C is shown in whole °F, what was typed in °F as it was typed', () => {
  assert.deepEqual([24.5, storedOf(75.5, null, true), storedOf(75, null, true)].map((c) => plain(temperature(c, true))), ['76 °F', '75.5 °F', '75 °F']);
  assert.equal(temperature(storedOf(75, null, true), false), '23.9 °C');
});
