// Who a browser is, and what became of what it had not sent, by the app's own modules on a disk in memory.
import assert from 'node:assert/strict';
import test from 'node:test';
import { load, nothingNew, serve, until } from '../support/node/app.mjs';

let reloads = 0;
globalThis.location.reload = () => {
  reloads += 1;
};

/** The server: who is signed in by the cookie, and what came to it. */
const server = { me: null, sent: [], pictures: [], ends: 'signed_out' };
const problem = (status, code) => [status, { code, detail: code }];
serve((path, body) => {
  if (server.before) return server.before;
  if (path === '/api/claim') {
    server.me = { ...server.next, device_id: body.device.id };
    return [200, server.me];
  }
  if (!server.me) return problem(401, server.ends);
  if (path === '/api/logout') {
    server.me = null;
    return [200, {}];
  }
  if (path.startsWith('/api/photos/')) {
    server.pictures.push(path.split('/').at(-1));
    return [200, { stored: true }];
  }
  if (server.away) throw new TypeError('no connection');
  if (body.device !== server.me.device_id) return problem(409, 'wrong_device');
  server.sent.push(...body.ops);
  const rows = body.ops.map(({ id, kind, set }) => ({ id, kind, set, rev: 1, by: 'x', made_ms: 1 }));
  const answers = body.ops.map(({ op_id }) => ({ op_id, verdict: 'applied', rev: 1, conflicts: [] }));
  return [200, nothingNew({ answers, rows })];
});

const person = (name, pass = null) => ({ household_id: 'h', person_id: name, name, role: 'keeper', pass });
const [ANNA, BEN] = [person('Anna'), person('Ben')];

/** A tab as a start makes it. */
async function opened(tab) {
  const parts = ['people', 'sync', 'rows', 'session', 'actions'];
  const [people, sync, rows, session, actions] = await Promise.all(
    parts.map((name) => load(`signals/${name}.js`, tab)),
  );
  await sync.start();
  await sync.syncNow();
  return {
    come: async (who) => {
      server.next = who;
      await people.claim({ code: 'x' });
      await sync.syncNow();
    },
    note: (text) => actions.log('note', { colony_id: 'c', text }),
    get is() {
      const me = session.session.value;
      return me && [me.name, me.ended];
    },
    get waiting() {
      return rows.unsent.value.waiting;
    },
    ...{ people, sync, actions, session },
  };
}
test('a phone that has signed out stays out, in all its tabs and when it is opened again', async () => {
  const one = await opened('a');
  await one.come(ANNA);
  const other = await opened('b');
  assert.deepEqual(
    [one.is, other.is],
    [
      ['Anna', null],
      ['Anna', null],
    ],
  );

  await one.people.logout();
  const again = await opened('c');
  await until(() => !other.is);

  assert.deepEqual([one.is, other.is, again.is], [null, null, null]);
});

test('a session that has ended is told until the server knows it again; a login page before it ends none', async () => {
  const phone = await opened('d');
  await phone.come(ANNA);
  const { me } = server;
  for (const before of [
    [401, '<html>please log in'],
    [401, { status: 'KO' }],
  ]) {
    server.before = before;
    await phone.sync.syncNow();
    assert.deepEqual(phone.is, ['Anna', null]);
  }
  server.before = null;
  server.me = null;
  await phone.sync.syncNow();
  assert.deepEqual(phone.is, ['Anna', 'signed_out']);
  server.me = me;
  await phone.sync.syncNow();
  assert.deepEqual(phone.is, ['Anna', null]);

  server.me = null; // and now at the wish of the phone, too
  await phone.people.logout();
  assert.equal(phone.is, null);
});
