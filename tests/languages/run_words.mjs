// Runs the phone's room of words against fixtures/conformance/messages.json: the same as the server says.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import test from 'node:test';

const root = new URL('../../', import.meta.url);
const load = (name) => import(new URL(`pwa/words/${name}.js`, root).href);
const vectors = JSON.parse(readFileSync(fileURLToPath(new URL('fixtures/conformance/messages.json', root))));
const messages = JSON.parse(readFileSync(process.env.MESSAGES));

globalThis.localStorage = { getItem: () => null };
const phone = { language: 'en' };
Object.defineProperty(globalThis, 'navigator', { value: phone, configurable: true });
const { isSaid, learn, say, sayIf, sayOf } = await load('say');
const { portionInWords } = await load('portions');
const { eventInWords } = await import(new URL('pwa/components/event-in-words.js', root).href);
const { numeral, together, weekDay } = await load('shown');
const {
  apart,
  degrees,
  fahrenheit,
  inDegrees,
  storedOf,
  storedVolume,
  temperature,
  typedOf,
  typedVolume,
  volume,
  volumeUnit,
} = await load('measures');
const { directionOf, languageOf, localeOf } = await load('language');

/** Speak a language as a phone of its region does. */
function speak(tag) {
  phone.language = tag;
  learn(messages[tag.split('-')[0]] ?? messages.en, tag);
}
const of = (cases, name, told) => {
  for (const c of cases) {
    test(`${name} in ${c.language}: ${c.text}`, () => {
      speak(c.language);
      assert.equal(told(c), c.text);
    });
  }
};
of(vectors.portions, 'a portion', (c) => portionInWords(c.portion));
of(vectors.codes, 'a code', (c) => sayOf(c.section, c.code, c.args));
of(vectors.numbers, 'a number', (c) => numeral(c.value));
of(vectors.days, 'a day', (c) => weekDay(c.day));
of(vectors.lists, 'a list', (c) => together(c.parts));

test('a count says only what was filled in', () => {
  speak('en');
  const said = (set) => eventInWords({ kind: 'count', set });
  assert.equal(said({ queens: 0 }), 'Counted: 0 queens');
  assert.equal(said({ queens: 1, males_only: true }), 'Counted: 1 queen, only males');
  assert.equal(said({ workers: null, workers_low: null, workers_at_least: 40 }), 'Counted: at least 40 workers');
  assert.equal(
    said({ workers: 42, workers_low: 40, workers_at_least: 39, larvae: 'few' }),
    'Counted: 42 workers, larvae: few',
  );
  speak('pl');
  assert.equal(said({ queens: 2 }), 'Policzone: 2 królowe');
});
test('a log of a kind without words of its own is told by the name of its kind', () => {
  speak('de');
  assert.deepEqual(
    ['climate', 'photo', 'moon_walk'].map((kind) => eventInWords({ kind, set: {} })),
    ['Klima', 'Foto', 'moon walk'],
  );
});
test('a code that nobody knows is said as it is, and a group says what it has', () => {
  speak('en');
  assert.equal(sayOf('food', 'moon_cheese'), 'moon cheese');
  assert.deepEqual([isSaid('food', 'honey'), isSaid('food', 'moon_cheese'), isSaid('food', '')], [true, false, false]);
  assert.deepEqual([sayIf('food', 'honey'), sayIf('food', null)], ['honey', '']);
});
test('an attribute is said by its name behind the id', () => {
  speak('en');
  assert.deepEqual([say('need-sugar'), say('need-sugar.inside')], ['Sugar', 'sugar']);
  assert.deepEqual(
    [sayIf('species', 'lasius_niger', 'common'), sayIf('need', 'sugar', 'common')],
    ['black garden ant', ''],
  );
});
test('a term and a message that another one names are said with it', () => {
  learn('-nest = nest\nwhere = in the { -nest }\nwho = ants\nall = { who } { where }', 'en');
  assert.equal(say('all'), 'ants in the nest');
});
test('a message goes on over lines that are indented', () => {
  learn('first = one\n    two\nlast = { $n ->\n    [one] a\n   *[other] b\n}\nnext = c', 'en');
  assert.deepEqual(
    [say('first'), say('last', { n: 1 }), say('last', { n: 2 }), say('next')],
    ['one\ntwo', 'a', 'b', 'c'],
  );
});
test('a name stands apart from a sentence from right to left', () => {
  learn('who = { $name }!', 'en', true);
  assert.equal(say('who', { name: 'Ada' }), '\u2068Ada\u2069!');
});

test('a phone speaks what was chosen on it, else the first of its own languages that there is, else English', () => {
  const there = ['en', 'de', 'pt'];
  assert.equal(languageOf('de', ['pt-BR'], there), 'de');
  assert.equal(languageOf('xx', ['pt-BR'], there), 'pt');
  assert.equal(languageOf(null, ['sv-SE', 'de-AT', 'en-GB'], there), 'de');
  assert.equal(languageOf(null, ['sv'], there), 'en');
});
test('numbers and days are written as in the region of the phone, where that speaks the language', () => {
  assert.equal(localeOf('en', ['de-AT', 'en-GB']), 'en-GB');
  assert.equal(localeOf('de', ['en-GB']), 'de');
});
test('the mirrored language is written from right to left, and so is Arabic', () => {
  assert.deepEqual(['en', 'de', 'en-XB', 'ar', 'fa-IR'].map(directionOf), ['ltr', 'ltr', 'rtl', 'rtl', 'rtl']);
});

const plain = (text) => text.replaceAll('\u00a0', ' ');

test('°F is shown in the few regions that use it, unless the keeper chose', () => {
  const shown = (choice, language) => fahrenheit(choice, language);
  assert.deepEqual(
    ['en-US', 'es-PR', 'en-GB', 'de', 'en', 'en-CA'].map((each) => shown(null, each)),
    [true, true, false, false, false, false],
  );
  assert.deepEqual([shown('c', 'en-US'), shown('f', 'de-AT')], [false, true]);
});
test('a text of the server is shown in the degrees of this phone, and nothing else of it changes', () => {
  const text = 'It rests at 8\u00a0°C to 12.5\u00a0°C. Over 32 °C it suffers; -5 °C kills. 3 to 5 months.';
  assert.equal(
    plain(inDegrees(text, true)),
    'It rests at 46 °F to 55 °F. Over 90 °F it suffers; 23 °F kills. 3 to 5 months.',
  );
  assert.equal(plain(inDegrees(text, false)), plain(text));
  assert.equal(plain(inDegrees('bei 12,5 °C', true)), 'bei 55 °F');
});
test('a refusal of the server is shown with both its limits in the degrees of this phone', () => {
  for (const [tag, text] of Object.entries(JSON.parse(process.env.REFUSALS))) {
    speak(tag);
    assert.deepEqual(plain(inDegrees(text, true)).match(/-?\d+(?: °[CF])?/g), ['130 °F', '32 °F', '122 °F'], text);
  }
});
test('a temperature in a message is shown to a tenth of °C or in whole °F, and a difference is no temperature', () => {
  speak('en');
  assert.deepEqual([degrees(22.25, true, false), degrees(22.25, true, true), degrees(22.25, false, true)].map(plain), [
    '22.3 °C',
    '72 °F',
    '72',
  ]);
  assert.deepEqual([apart(4.5, false), apart(4.5, true)].map(plain), ['4.5 °C', '8.1 °F']);
});
test('a volume that a cup can measure is shown in fluid ounces beside mL, a smaller one in mL alone', () => {
  speak('en');
  assert.deepEqual([volume(100, true), volume(100, false), volume(0.05, true)].map(plain), [
    '3.4 fl oz (100 mL)',
    '100 mL',
    '0.05 mL',
  ]);
});
test('every fl oz that is typed with two decimals is shown again as it was typed, and stored in mL', () => {
  for (let hundredths = 1; hundredths <= 3400; hundredths += 1) {
    const stored = storedVolume(hundredths / 100, null, true);
    assert.equal(typedVolume(stored, true), String(hundredths / 100));
    assert.equal(storedVolume(hundredths / 100, stored, true), stored);
  }
  assert.equal(storedVolume(1, null, true), 29.57);
  assert.equal(storedVolume(Number(typedVolume(100, true)), 100, true), 100);
  assert.deepEqual([volumeUnit(true), volumeUnit(false)], ['fl_oz', 'ml']);
});
test('mL that are typed are stored as they are, and nothing stays nothing', () => {
  assert.deepEqual(
    [storedVolume(12.345, 3, false), storedVolume(null, 3, true), typedVolume(null, true)],
    [12.345, null, ''],
  );
  assert.equal(typedVolume(0.125, false), '0.125');
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
test('a whole tenth of a °C is shown in whole °F, what else was typed in °F as it was typed', () => {
  assert.deepEqual(
    [24.5, ...[75.5, 75, 72.5].map((typed) => storedOf(typed, null, true))].map((c) => plain(temperature(c, true))),
    ['76 °F', '75.5 °F', '75 °F', '73 °F'],
  );
  assert.equal(plain(temperature(storedOf(75, null, true), false)), '23.9 °C');
});
