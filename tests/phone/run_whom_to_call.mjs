// What stands on the stand-in's page under "whom to call".
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import test from 'node:test';
import { elementsIn } from '../support/node/page.mjs';

const load = (name) => import(new URL(`../../pwa/${name}.js`, import.meta.url).href);
const { learn, say } = await load('words/say');
const { StandInView } = await load('screens/standin');
learn(readFileSync(process.env.WORDS, 'utf8'), 'en');

const page = (emergency_contact) => elementsIn(StandInView({ given: { emergency_contact }, state: '', colonies: [] }));
const calls = (contact) =>
  page(contact)
    .filter(({ type }) => type === 'a')
    .map(({ props }) => [props.href, props.children]);
const call = (who) => say('stand-in-call', { who });

test('one number is dialled by a button with all that the keeper wrote', () => {
  assert.deepEqual(calls('Anna 0151 2345678'), [['tel:01512345678', call('Anna 0151 2345678')]]);
  assert.deepEqual(calls('+49 (0)30/4567-89'), [['tel:030456789', call('+49 (0)30/4567-89')]]); // as in the country
  assert.deepEqual(
    ['112', '1177 first'].flatMap(calls).map(([href]) => href),
    ['tel:112', 'tel:1177'],
  );
  const one = ['(030) 4567, 24/7', '01 23 45 67 89 (18-20)', 'after 18.30: +33 1 23 45 67'];
  assert.deepEqual(
    one.flatMap(calls).map(([href]) => href),
    ['tel:0304567', 'tel:0123456789', 'tel:+331234567'],
  );
});
test('each of several numbers has a button, below what the keeper wrote', () => {
  const both = 'Anna 0151 2345678 or vet 030 4567';
  assert.deepEqual(calls(both), [
    ['tel:01512345678', call('0151 2345678')],
    ['tel:0304567', call('030 4567')],
  ]);
  assert.ok(page(both).some(({ props }) => props.children === call(both)));
  assert.deepEqual(
    calls('0151 2345678, 030 4567 / 040 99').map(([href]) => href),
    ['tel:01512345678', 'tel:0304567', 'tel:04099'],
  );
});
test('without a number there is nothing to dial', () => {
  assert.deepEqual(calls('the neighbour on floor 2'), []);
  assert.ok(page('the neighbour on floor 2').some(({ props }) => props.children === call('the neighbour on floor 2')));
});
