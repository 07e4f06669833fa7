// What history_cost.py runs inside the page. Each part is a function expression, separated by a line of dashes.
() => {
  // every task that keeps the page busy for more than 50 ms
  window.longTasks = [];
  new PerformanceObserver((list) => window.longTasks.push(...list.getEntries().map((each) => each.duration))).observe({
    type: 'longtask',
  });
}
// ---------- a tap on the first colony of the shelf, until the diary's first line is painted
async () => {
  const start = performance.now();
  document.querySelector('main a[href^="#/colony/"]').click();
  while (!document.querySelector('.diary > li')) await new Promise((next) => setTimeout(next, 5));
  await new Promise((next) => requestAnimationFrame(() => setTimeout(next)));
  return performance.now() - start;
}
// ---------- down to the end of what is shown until older lines are painted: how long, and how much the page holds
async () => {
  const oldest = () => [...document.querySelectorAll('.diary > li')].at(-1)?.textContent + document.body.scrollHeight;
  const before = oldest();
  const start = performance.now();
  scrollTo(0, document.body.scrollHeight);
  const changed = () => oldest() !== before;
  const button = () => [...document.querySelectorAll('[aria-label=Diary] > button')].at(-1);
  for (let waited = 0; !changed() && waited < 5000; waited += 1) {
    if (waited === 20) button()?.click(); // a page that does not turn by itself
    await new Promise((next) => setTimeout(next, 5));
  }
  await new Promise((next) => requestAnimationFrame(() => setTimeout(next)));
  return {
    ms: performance.now() - start,
    nodes: document.querySelectorAll('*').length,
    lines: document.querySelectorAll('.diary > li').length,
  };
}
// ---------- a search, until there is nothing more to look at
async (text) => {
  const start = performance.now();
  const field = document.querySelector('[aria-label=Diary] input');
  field.value = text;
  field.dispatchEvent(new Event('input', { bubbles: true }));
  const ended = () => document.querySelector('[aria-label=Diary] > p')?.textContent.startsWith('Nothing like this');
  while (!ended()) await new Promise((next) => setTimeout(next, 20));
  return performance.now() - start;
}
