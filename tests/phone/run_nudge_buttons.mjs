// A nudge that comes to the worker of a phone which keeps two languages, as after one was chosen.
import assert from 'node:assert/strict';
import test from 'node:test';

const DONE = { en: 'Done', de: 'Erledigt', fr: 'Fait' };
/** The caches of a phone, in the order in which they were filled: texts by their address. */
let kept = {};
let chosen = null;
let shown = null;
globalThis.caches = {
  keys: async () => ['language', 'shell-1'],
  match: async () => (chosen === null ? undefined : new Response(chosen)),
  open: async () => ({
    keys: async () => Object.keys(kept).map((url) => ({ url })),
    match: async ({ url }) => new Response(kept[url]),
  }),
};
globalThis.self = {
  navigator: { languages: [] },
  registration: {
    showNotification: async (_title, { actions }) => {
      shown = actions.map(({ title }) => title);
    },
  },
};
const { onPush } = await import(new URL('../../pwa/worker/events.js', import.meta.url).href);

async function buttons({ of, choice = null, phone = [] }) {
  kept = { 'https://shelf/static/1/main.js': '' };
  for (const tag of of) kept[`https://shelf/static/1/words/${tag}/first.ftl`] = `phone-nudges-done=${DONE[tag]}\n`;
  chosen = choice;
  globalThis.self.navigator.languages = phone;
  const payload = { notification: { title: 'Water' }, broodshelf: { items: [{}] } };
  await onPush({ data: { json: () => payload } });
  return shown[0];
}

test('a language that was chosen, whatever is kept beside it', async () => {
  assert.equal(await buttons({ of: ['en', 'de'], choice: 'de', phone: ['en-GB'] }), 'Erledigt');
  assert.equal(await buttons({ of: ['de', 'en'], choice: 'en', phone: ['de'] }), 'Done');
});
test('the own language of the phone where none was chosen', async () => {
  assert.equal(await buttons({ of: ['en', 'de'], phone: ['sv', 'de-AT'] }), 'Erledigt');
});
test('what is kept where that is another language', async () => {
  assert.equal(await buttons({ of: ['fr'], choice: 'de' }), 'Fait');
});
