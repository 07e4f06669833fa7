// Who a browser is, and what became of what it had not sent, by the app's own modules on a disk in memory.
import assert from 'node:assert/strict';
import test from 'node:test';
import { load, nothingNew, serve, until } from '../support/node/app.mjs';

/** The tabs that were loaded anew: whose module asked for it. */
const reloaded = new Set();
globalThis.location.reload = () => reloaded.add(/sync\.js\?(\w+)/.exec(new Error('who asks').stack)[1]);

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
  if (server.away) throw new TypeError('no connection');
  if (path.startsWith('/api/photos/')) {
    server.pictures.push(path.split('/').at(-1));
    return [200, { stored: true }];
  }
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
  const parts = ['people', 'sync', 'rows', 'session', 'actions', 'unsent'];
  const [people, sync, rows, session, actions, unsent] = await Promise.all(
    parts.map((name) => load(`signals/${name}.js`, tab)),
  );
  const photos = await load('database/photos.js', tab);
  await sync.start();
  await sync.syncNow();
  return {
    come: async (who) => {
      server.next = who;
      await people.claim({ code: 'x' });
      await sync.syncNow();
    },
    note: (text) => actions.log('note', { colony_id: 'c', text }),
    async photo(id) {
      const blob = new Blob(['jpeg']);
      await photos.keepPhoto(session.openStore().deviceId, { id, sha256: 'f', blob, sent: 0, made_ms: 1 });
      await actions.keep('photo', { colony_id: 'c', sha256: 'f' }, id);
    },
    left: async (me) => (await unsent.leftBehind(me)).map(({ who, count }) => [who, count]),
    get is() {
      const me = session.session.value;
      return me && [me.name, me.ended];
    },
    get me() {
      return session.session.value;
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

/** What came to the server, in its order: texts of notes, and the kinds of the rest. */
const cameIn = () => server.sent.map(({ kind, set }) => set.text ?? kind);

test('what somebody has not sent waits while others are in, is told to them, and goes when they are back', async () => {
  const phone = await opened('e');
  await phone.come(ANNA);
  server.sent = [];
  server.away = true;
  await phone.note('unsent of Anna');
  await phone.photo('her-picture');
  await phone.sync.syncNow();
  server.away = false;
  await phone.people.logout();
  assert.deepEqual(await phone.left(null), [['Anna', 2]]);

  await phone.come(BEN);
  await phone.note('of Ben');
  await phone.sync.syncNow();
  assert.deepEqual(await phone.left(phone.me), [['Anna', 2]]);
  assert.deepEqual(cameIn(), ['of Ben']);

  await phone.people.logout();
  await phone.come({ ...ANNA, household_id: 'another' });
  assert.deepEqual([cameIn(), await phone.left(phone.me)], [['of Ben'], [['Anna', 2]]]);

  await phone.people.logout();
  await phone.come(ANNA);
  await phone.note('later');
  await phone.sync.syncNow();
  assert.deepEqual(cameIn(), ['of Ben', 'unsent of Anna', 'photo', 'later']);
  assert.deepEqual([server.pictures, phone.waiting], [['her-picture'], 0]);
  assert.deepEqual(await phone.left(phone.me), []);
  const [, , mine, later] = server.sent;
  assert.ok(later.n > mine.n && later.made_at > mine.made_at);
  await phone.people.logout();
});

test('a stand-in who opens the same pass again is the same, whatever the server calls them now', async () => {
  const phone = await opened('f');
  await phone.come(person('guest 1', { id: 'pass' }));
  server.away = true;
  await phone.note('fed');
  server.away = false;
  await phone.people.logout();
  await phone.come(person('guest 2', { id: 'pass' }));
  await phone.sync.syncNow();

  assert.equal(cameIn().at(-1), 'fed');
  await phone.people.logout();
});

test('a tab is loaded anew when another one has made this browser somebody else', async () => {
  const [one, other] = [await opened('g'), await opened('h')];
  await one.come(ANNA);
  await until(() => reloaded.has('h')); // which was nobody
  reloaded.clear();
  await other.come(BEN);
  await until(() => reloaded.has('g'));
  assert.ok(!reloaded.has('h'));

  reloaded.clear();
  await one.sync.syncNow(); // as after a message that it never heard
  assert.ok(reloaded.has('g'));
});
