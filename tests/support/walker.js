// Walks through the app inside the page, so that every engine does the same without round trips.
window.walk = (() => {
  const faults = [];
  addEventListener('error', (event) => faults.push(`error: ${event.message}`));
  addEventListener('unhandledrejection', (event) => faults.push(`rejection: ${event.reason}`));
  const { error } = console;
  console.error = (...all) => { faults.push(`console: ${all.join(' ')}`); error(...all); };
  const scope = () => document.querySelector('dialog[open]') ?? document.querySelector('main');
  // a row of the diary out of view has no inner text in Firefox
  const lines = (each) => [each.getAttribute('aria-label') ?? '', each.querySelector('.words')?.textContent ?? '', ...each.innerText.split('\n')].map((line) => line.trim());
  async function until(what, test) {
    for (const end = Date.now() + 15000; Date.now() < end;) {
      const found = test();
      if (found) return found;
      await new Promise((done) => { setTimeout(done, 30); });
    }
    throw new Error(`never there: ${what} at ${location.hash}\n${document.body.innerText.slice(0, 600)}`);
  }
  const find = (name) => [...scope().querySelectorAll('button, a, summary, label.chip')].find((each) => !each.disabled && lines(each).some((line) => line === name || line.startsWith(`${name}:`)));
  const text = () => (document.querySelector('dialog[open]') ?? document.body).innerText;
  const look_at = (where) => {
    const box = document.querySelector('dialog[open]') ?? document.documentElement;
    const over = box.scrollWidth - box.clientWidth;
    if (over > 0) faults.push(`${where}: ${over} px over the edge`);
    const machine = /undefined|NaN|\[object|\b\d{4}-\d\d-\d\d\b|\b[a-z]+_[a-z]+/.exec(text());
    if (machine) faults.push(`${where}: “${machine[0]}” is no word`);
  };
  const steps = {
    faults,
    /** Go to a screen, wait for its heading, and look whether it fits. */
    async visit(hash, heading) {
      location.hash = hash;
      await until(`heading ${heading}`, () => [...document.querySelectorAll('main h1')].some((each) => each.innerText.includes(heading)));
      await until('no skeleton', () => hash === '#/look' || !document.querySelector('main [aria-busy=true]'));
      look_at(hash);
    },
    async press(name) { (await until(`button ${name}`, () => find(name))).click(); },
    async shows(words) { await until(words, () => text().includes(words)); },
    /** Press what opens a sheet, look whether it fits; it stays open. */
    async sheet(name) {
      await steps.press(name);
      await until(`sheet of ${name}`, () => document.querySelector('dialog[open] h2'));
      await until('sheet filled', () => !document.querySelector('dialog[open] [aria-busy=true]'));
      look_at(`sheet ${name}`);
    },
    async close() {
      document.querySelector('dialog[open]').close();
      await until('no sheet', () => !document.querySelector('dialog'));
    },
    async glance(name) { await steps.sheet(name); await steps.close(); },
    async fill(name, value) {
      const field = await until(`field ${name}`, () => scope().querySelector(`[name="${name}"]`));
      field.value = value;
      field.dispatchEvent(new Event('input', { bubbles: true }));
      field.dispatchEvent(new Event('change', { bubbles: true }));
    },
    async unfold(words) {
      const fold = await until(`fold ${words}`, () => [...document.querySelectorAll('main summary')].find((each) => each.innerText.includes(words)));
      if (!fold.parentElement.open) fold.click();
      await until('unfolded', () => !fold.parentElement.querySelector('[aria-busy=true]'));
      look_at(words);
    },
    async synced() { await until('all synced', () => document.querySelector('.top .state').innerText.includes('All synced')); },
  };
  return steps;
})();
