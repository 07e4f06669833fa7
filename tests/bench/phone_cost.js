// What phone_cost.py runs inside the page. Each part is a function expression, separated by a line of dashes.
async ([events, colony]) => {
  // years of events, straight into the phone's rows
  const names = (await indexedDB.databases()).map((each) => each.name).filter((name) => name !== 'broodshelf');
  const db = await new Promise((done) => {
    indexedDB.open(names[0]).onsuccess = (e) => done(e.target.result);
  });
  const end = Date.now() - 86_400_000;
  const apart = (5 * 365 * 86_400_000) / events;
  for (let from = 0; from < events; from += 5000) {
    const tx = db.transaction('rows', 'readwrite');
    const rows = tx.objectStore('rows');
    for (let i = from; i < Math.min(events, from + 5000); i += 1) {
      const ms = Math.round(end - i * apart);
      const fly = i % 3 === 0;
      rows.put({
        id: `00000000-0000-7000-8000-${String(i).padStart(12, '0')}`,
        kind: 'feeding',
        rev: 1,
        by: null,
        made_ms: ms,
        happened_ms: ms,
        set: {
          colony_id: colony,
          need: fly ? 'protein' : 'sugar',
          food_code: fly ? 'fruit_fly' : 'sugar_water',
          amount: 1,
          unit: fly ? 'piece' : 'drop',
          happened_at: new Date(ms).toISOString(),
        },
      });
    }
    await new Promise((done, fail) => {
      tx.oncomplete = done;
      tx.onabort = fail;
    });
  }
  db.close();
}
// ---------- when the first control can be used
() => {
  const usable = () =>
    [...document.querySelectorAll('main a[href], main button:not([disabled])')].some((each) => each.offsetParent);
  const look = () => {
    if (usable())
      requestAnimationFrame(() =>
        setTimeout(() => {
          window.usableAt = performance.now();
        }),
      );
    else setTimeout(look, 5);
  };
  look();
}
// ---------- one tap on Done, until the task is off the list, that is told and painted; then its undo
async () => {
  const first = () => document.querySelector('main .task .actions .main, main .task.compact button');
  const told = () => document.querySelector('.toast button');
  const comes = (changed) =>
    new Promise((seen) => {
      // looks only when the page changes: looking all the time would slow it down
      const look = () => {
        if (changed()) {
          watch.disconnect();
          seen();
        }
      };
      const watch = new MutationObserver(look);
      watch.observe(document.body, { childList: true, subtree: true });
    });
  const painted = () =>
    new Promise((next) =>
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = next;
        channel.port2.postMessage(0);
      }),
    );
  const button = first();
  const task = button.closest('.task');
  const name = (each) =>
    ['strong', '.lead'].map((part) => each.closest('.task').querySelector(part).textContent).join(': ');
  const before = name(button);
  const off = comes(() => !task.isConnected && told());
  const start = performance.now();
  button.click();
  await off;
  await painted();
  const took = performance.now() - start;
  const back = comes(() => first() && name(first()) === before);
  told().click();
  await back;
  await painted(); // or the next tap would pay for it
  return took;
}
