// Holds pwa/screens/field-words.js to the fields that there are: none is told by its name in the code.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import test from 'node:test';
import '../support/node/vendored.mjs';

const { fields, words, kinds, by_form, messages } = JSON.parse(readFileSync(process.env.ASKED));
globalThis.localStorage = { getItem: () => null };
const load = (name) => import(new URL(`../../pwa/${name}.js`, import.meta.url).href);
const { learn, sayIf } = await load('words/say');
const { catalogue } = await load('signals/rows');
const { fieldName, isUntold, kindName, valueInWords } = await load('screens/field-words');
catalogue.value = { ...catalogue.value, fields: by_form };

for (const [tag, text] of Object.entries(messages)) {
  test(`in ${tag} every field has a name, or tells a person nothing`, () => {
    learn(text, tag);
    assert.deepEqual(
      fields.filter((name) => !isUntold(name) && !sayIf('history-field', name) && !sayIf('event-stage', name)),
      [],
    );
  });
  test(`in ${tag} every kind has a name`, () => {
    learn(text, tag);
    assert.deepEqual(
      kinds.filter((kind) => kindName(kind) === kind),
      [],
    );
  });
  if (tag === 'en') continue; // codes are English
  test(`in ${tag} no field shows a code`, () => {
    learn(text, tag);
    const codes = Object.entries(words).flatMap(([field, each]) => each.map((word) => [field, word]));
    assert.deepEqual(
      codes.filter(([field, word]) => valueInWords(field, word) === word),
      [['unit', 'mg']], // which is so everywhere
    );
  });
}

test('a kind, a field and its value are said in the language of the phone', () => {
  learn(messages.de, 'de');
  assert.deepEqual(
    [kindName('colony'), kindName('lot'), kindName('feeding')],
    ['Kolonie', 'Futter im Vorrat', 'Fütterung'],
  );
  assert.deepEqual([fieldName('males_only'), valueInWords('males_only', true)], ['Es kamen nur Männchen', 'ja']);
  assert.deepEqual([fieldName('larvae'), valueInWords('larvae', 'few')], ['Larven', 'Wenige']);
  assert.equal(valueInWords('how', 'finished'), 'Sie sind umgezogen');
  assert.equal(valueInWords('host_species_code', 'lasius_niger'), 'Lasius niger');
  assert.equal(valueInWords('language', 'fr'), 'Français');
});
test('days of the week are told by their names', () => {
  learn(messages.de, 'de');
  assert.equal(valueInWords('weekdays', [0, 2]), 'Montag, Mittwoch');
});
test('a kind of a newer server is told by what it is called there', () => {
  learn(messages.de, 'de');
  assert.equal(kindName('moon_walk'), 'moon walk');
});
