// Fields as a browser has them: what is kept stands in `defaultValue`, what somebody wrote in `value`.
import assert from 'node:assert/strict';
import test, { beforeEach } from 'node:test';
import '../support/node/page.mjs';

let write = null;
let looksAgain = null;
let loads = 0;
let sheet = null;
globalThis.document.querySelector = () => sheet;
globalThis.location.reload = () => {
  loads += 1;
};
globalThis.MutationObserver = class {
  constructor(look) {
    looksAgain = look;
  }
  observe() {}
  disconnect() {
    looksAgain = null;
  }
};
const { followWriting, goOver } = await import(new URL('../../pwa/components/new-version.js', import.meta.url).href);
followWriting({ addEventListener: (_name, listener) => (write = listener) });

const field = (kept, written) => {
  const made = { defaultValue: kept, value: written, isConnected: true, matches: () => true };
  write({ target: made });
  return made;
};
beforeEach(() => {
  loads = 0;
  looksAgain = sheet = null;
});

test('a field that was saved holds nothing up, and one that differs again does', () => {
  const name = field('Shelf', 'Rack');
  goOver();
  assert.equal(loads, 0);
  name.defaultValue = 'Rack'; // saved, and shown as it is kept
  looksAgain();
  assert.equal(loads, 1);
  assert.equal(looksAgain, null);
  name.value = 'Cupboard';
  goOver();
  assert.equal(loads, 1);
  name.isConnected = false; // left
  looksAgain();
  assert.equal(loads, 2);
});
test('a field of which all was taken out is half written', () => {
  const remark = field('Slow', '');
  goOver();
  assert.equal(loads, 0);
  remark.isConnected = false;
});
test('a field that never kept anything counts as soon as something stands there', () => {
  const note = field('', 'They');
  goOver();
  assert.equal(loads, 0);
  note.value = '';
  looksAgain();
  assert.equal(loads, 1);
});
test('an open sheet is waited for', () => {
  sheet = {};
  goOver();
  assert.equal(loads, 0);
  sheet = null;
  looksAgain();
  assert.equal(loads, 1);
});
