// What a form writes: what differs from how it was opened, and of which revision, by the phone's own modules.
import assert from 'node:assert/strict';
import test from 'node:test';

await import('../support/node/disk.mjs');
const load = (name) => import(new URL(`../../pwa/${name}.js`, import.meta.url).href);
const { changed } = await load('care/changes');
const { inTransaction } = await load('database/open');
const { Store } = await load('database/store');

test('a form sets what differs from how it was opened, and nothing that nobody touched', () => {
  const was = { name: 'Amber', stage: 'nanitics', care_hours: ['08:00'], number: 7, stings: false };
  const set = {
    name: 'Amber II',
    stage: 'nanitics',
    care_hours: ['08:00'],
    number: null,
    place_id: null,
    stings: false,
  };

  assert.deepEqual(changed(was, set), { name: 'Amber II', number: null });
  assert.deepEqual(changed(was, { care_hours: ['08:00', '19:00'] }), { care_hours: ['08:00', '19:00'] });
  assert.deepEqual(changed({}, { name: 'Birch', humidity_pct: 0, went_to: null }), { name: 'Birch', humidity_pct: 0 });
  assert.deepEqual(changed({ went_to: 'Anna' }, { went_to: undefined }), {}, 'what the form does not ask for stays');
});

test('what a form changes is of the revision that it was opened with, whatever has come since', async () => {
  const store = new Store('019dd000-0000-7000-8000-000000000001');
  const row = { id: 'a', kind: 'colony', rev: 9, by: null, made_ms: 0, set: { name: 'of another phone' } };
  await inTransaction(store.name, ['rows'], 'readwrite', (tx) => tx.objectStore('rows').put(row));
  const set = { name: 'mine' };
  const written = await store.enqueue([
    { kind: 'colony', id: 'a', set, rev: 5 },
    { kind: 'colony', id: 'a', set },
    { kind: 'colony', id: 'gone', set, rev: 4 },
    { kind: 'colony', id: 'new', set },
  ]);

  assert.deepEqual(
    written.map((op) => op.base_rev),
    [5, 9, 4, 0],
  );
});
