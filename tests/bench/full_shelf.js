// What full_shelf.py runs inside the page. Each part is a function expression, separated by a line of dashes.
async ([colonies, logged_days]) => {
  // colonies with species, vessels and the logs of the last weeks, through the app
  const from = (name) => import(`/static/${document.body.dataset.build}/${name}.js`);
  const [{ openStore }, { syncNow }, { uuid7 }] = await Promise.all(
    ['signals/session', 'signals/sync', 'database/ids'].map(from),
  );
  const species = ['lasius_niger', 'formica_fusca', 'messor_barbarus', 'camponotus_ligniperda', 'myrmica_rubra'];
  const at = (days) => new Date(Date.now() - days * 86_400_000).toISOString();
  const changes = [];
  for (let i = 0; i < colonies; i += 1) {
    const [colony_id, vessel_id] = [uuid7(), uuid7()];
    const put = (kind, set, id = uuid7()) => changes.push({ kind, id, set });
    const log = (kind, days, set) => put(kind, { colony_id, happened_at: at(days), ...set });
    put('vessel', { vessel_code: i % 2 ? 'nest_small' : 'tube_16x150', has_outworld: Boolean(i % 2) }, vessel_id);
    put(
      'colony',
      {
        name: `Colony ${i + 1}`,
        number: i + 1,
        species_code: species[i % species.length],
        stage: 'growing',
        queens: 1,
        vessel_id,
        acquired_on: at(logged_days).slice(0, 10),
      },
      colony_id,
    );
    for (let days = logged_days; days > 0; days -= 1) {
      const fed = { food_code: 'sugar_water', amount: 1, unit: 'drop' };
      if (days % 4 === i % 4 && days > (i % 3) * 3) log('feeding', days, { need: 'sugar', ...fed });
      if (days % 3 === i % 3 && days > 5)
        log('feeding', days, { need: 'protein', food_code: 'fruit_fly', amount: 2, unit: 'piece' });
      if (days % 14 === i % 14) log('count', days, { workers: 60 + 2 * (logged_days - days), larvae: 'some' });
      if (days % 10 === i % 10 && days > 8)
        log('water', days, { action: 'read', reading: ['full', 'half', 'quarter'][i % 3] });
    }
  }
  for (let from = 0; from < changes.length; from += 500) await openStore().enqueue(changes.slice(from, from + 500));
  await syncNow();
}
// ---------- years of events of every colony, straight into the phone's rows
async ([events, years]) => {
  const names = (await indexedDB.databases()).map((each) => each.name).filter((name) => name !== 'broodshelf');
  const db = await new Promise((done) => {
    indexedDB.open(names[0]).onsuccess = (e) => done(e.target.result);
  });
  const colonies = await new Promise((done) => {
    db.transaction('rows').objectStore('rows').index('by_kind').getAllKeys('colony').onsuccess = (e) =>
      done(e.target.result);
  });
  const end = Date.now() - 15 * 3_600_000;
  const apart = (years * 365 * 86_400_000) / events;
  const kinds = [
    ['feeding', { need: 'sugar', food_code: 'sugar_water', amount: 1, unit: 'drop' }],
    ['feeding', { need: 'protein', food_code: 'fruit_fly', amount: 2, unit: 'piece', remark: 'taken at once' }],
    ['check', { need: 'leftovers', leftovers_removed: true }],
    ['water', { action: 'read', reading: 'half' }],
    ['count', { workers: 40, larvae: 'some' }],
  ];
  for (let from = 0; from < events; from += 5000) {
    const tx = db.transaction('rows', 'readwrite');
    const rows = tx.objectStore('rows');
    for (let i = from; i < Math.min(events, from + 5000); i += 1) {
      const ms = Math.round(end - i * apart);
      const [kind, set] = kinds[Math.floor(i / colonies.length) % kinds.length];
      rows.put({
        id: `00000000-0000-7000-8000-${String(i).padStart(12, '0')}`,
        kind,
        rev: 1,
        by: null,
        made_ms: ms,
        happened_ms: ms,
        set: { colony_id: colonies[i % colonies.length], happened_at: new Date(ms).toISOString(), ...set },
      });
    }
    await new Promise((done, fail) => {
      tx.oncomplete = done;
      tx.onabort = fail;
    });
  }
  db.close();
}
// ---------- every task that keeps the page busy for more than 50 ms
() => {
  window.longTasks = [];
  new PerformanceObserver((list) => window.longTasks.push(...list.getEntries().map((each) => each.duration))).observe({
    type: 'longtask',
  });
}
// ---------- the first colony of the shelf opened, until its diary begins; from inside: a driver's scripts are long
() =>
  new Promise((begun) => {
    new MutationObserver((_, watcher) => {
      if (!document.querySelector('.diary > li')) return;
      watcher.disconnect();
      begun();
    }).observe(document.body, { childList: true, subtree: true });
    document.querySelector("main a[href^='#/colony/']").click();
  })
// ---------- the diary scrolled like by a finger, so many steps, a step a frame
async (steps) => {
  const frame = () => new Promise((next) => requestAnimationFrame(next));
  let most = 0;
  for (let i = 0; i < steps; i += 1) {
    scrollBy(0, 120);
    await frame();
    most = Math.max(most, document.querySelectorAll('*').length);
  }
  return { nodes: most, down_px: scrollY };
}
// ---------- so many logs over all colonies into the outbox
async (count) => {
  const from = (name) => import(`/static/${document.body.dataset.build}/${name}.js`);
  const [{ openStore }, { rowsOf }, { uuid7 }] = await Promise.all(
    ['signals/session', 'signals/rows', 'database/ids'].map(from),
  );
  const colonies = rowsOf('colony');
  const changes = Array.from({ length: count }, (_, i) => ({
    kind: 'feeding',
    id: uuid7(),
    set: {
      colony_id: colonies[i % colonies.length].id,
      happened_at: new Date(Date.now() - (count - i) * 2_000_000).toISOString(),
      need: 'sugar',
      food_code: 'sugar_water',
      amount: 1,
      unit: 'drop',
    },
  }));
  await openStore().enqueue(changes);
}
// ---------- send, until nothing waits and that is painted: all, and of it the requests
async () => {
  const from = (name) => import(`/static/${document.body.dataset.build}/${name}.js`);
  const { syncNow } = await from('signals/sync');
  performance.clearResourceTimings();
  const start = performance.now();
  await syncNow();
  await new Promise((next) => requestAnimationFrame(() => setTimeout(next)));
  const took = performance.now() - start;
  const asked = performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('/api/sync'));
  return { took, requests: asked.length, asked: asked.reduce((sum, { duration }) => sum + duration, 0) };
}
// ---------- how many tasks are due by the end of today, and how many in the next days
async () => {
  const { round } = await import(`/static/${document.body.dataset.build}/signals/rows.js`);
  const { items } = round.peek();
  const due = items.filter(({ group }) => group !== 'next').length;
  return [due, items.length - due];
}
