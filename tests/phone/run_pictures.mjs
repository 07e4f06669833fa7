// Pictures that wait: what is told of them, and what goes over the line, by the app's own modules.
import assert from 'node:assert/strict';
import test from 'node:test';
import { load, nothingNew, serve } from '../support/node/app.mjs';

const [people, sync, rows, actions, session, photos] = await Promise.all([
  ...['people', 'sync', 'rows', 'actions', 'session'].map((name) => load(`signals/${name}.js`)),
  load('database/photos.js'),
]);

/** What came over the line, the records that the server has, and whether pictures come through. */
const server = { puts: [], records: new Map(), pictures: 'taken' };
serve((path, body) => {
  if (path === '/api/claim') return [200, { device_id: body.device.id, person_id: 'p', household_id: 'h' }];
  if (path === '/api/sync') {
    for (const { id, kind, set } of body.ops) {
      server.records.set(id, {
        id,
        kind,
        rev: 1,
        made_ms: 1,
        set: { gone: false, ...server.records.get(id)?.set, ...set },
      });
    }
    const changed = [...new Set(body.ops.map(({ id }) => id))].map((id) => server.records.get(id));
    const answers = body.ops.map(({ op_id }) => ({ op_id, verdict: 'applied', rev: 1, conflicts: [] }));
    const [gone, here] = [true, false].map((is) => changed.filter(({ set }) => Boolean(set.gone) === is));
    return [200, nothingNew({ answers, rows: here, gone })];
  }
  const id = path.split('/').at(-1);
  server.puts.push(id);
  if (server.pictures === 'cut') throw new TypeError('cut in the middle');
  if (server.records.get(id)?.set.gone ?? true) return [404, { code: 'not_found' }];
  return [200, { stored: true }];
});
await people.claim({ code: 'x' });
await sync.syncNow();
const waiting = () => rows.unsent.value.waiting;

/** As the camera's button does it. */
async function take(id) {
  const photo = { id, sha256: 'f', blob: new Blob(['jpeg']), sent: 0, made_ms: 1 };
  await photos.keepPhoto(session.openStore().deviceId, photo);
  await actions.keep('photo', { colony_id: 'c', sha256: 'f', happened_at: '2026-05-01T12:00:00.000+02:00' }, id);
}

test('a picture is told as one that waits until it is on the server', async () => {
  await take('one');
  assert.equal(waiting(), 1); // with its record it is one

  server.pictures = 'cut';
  await sync.syncNow();
  assert.deepEqual([server.records.has('one'), waiting()], [true, 1]);

  server.pictures = 'taken';
  await sync.syncNow();
  assert.equal(waiting(), 0);
});

test('a picture whose record was taken back is not sent, and goes when the record is back', async () => {
  Object.assign(server, { puts: [], pictures: 'taken' });
  await take('two');
  await actions.remove('photo', 'two');
  for (let times = 0; times < 3; times += 1) await sync.syncNow();
  assert.deepEqual([server.puts, waiting()], [[], 0]);

  await actions.keep('photo', { gone: false }, 'two');
  await sync.syncNow();
  await sync.syncNow();
  assert.deepEqual([server.puts, waiting()], [['two'], 0]);
});
