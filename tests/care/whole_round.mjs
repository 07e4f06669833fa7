// The round of a whole shelf from its rows, as signals/rows.js puts it together colony by colony.
const load = (name) => import(new URL(`../../pwa/care/${name}.js`, import.meta.url).href);
const { eventsByColony } = await load('lists');
const { inOrder, itemsOfPlan } = await load('round');

/** All that is coming, however far away. @param {Map<string, any>} rows as `overlayRows` gives them */
export function allItems(rows, catalogue) {
  const byColony = eventsByColony(rows);
  return [...rows.values()]
    .filter((row) => row.kind === 'plan' && rows.has(row.set.colony_id))
    .flatMap((plan) => itemsOfPlan(plan, byColony.get(plan.set.colony_id) ?? [], rows, catalogue));
}

/** What is due by an instant, today and next. */
export const itemsDue = (rows, nowMs, catalogue) => inOrder(allItems(rows, catalogue), nowMs, nowMs);
