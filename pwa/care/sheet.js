// The sheet of a pass: what a stand-in is to do on each of its days, repeats included. Pure.
import { keyOf } from './catalogue.js';
import { applyEvent, dueAtMs } from './gauges.js';
import { DAY_MS, HOUR_MS } from './rules.js';
import { dayOf, endOfDayMs } from './instants.js';
import { forStandIn, hoursToRemoval } from './round.js';

/**
 * @typedef {import('./round.js').Item} Item
 * @typedef {import('../kinds.d.ts').FoodRow} Food
 * @typedef {import('./overlay.js').EventRow} EventRow
 * @typedef {Item & {at_ms: number, first: boolean, foods: string[]}} SheetTask `first`: its steps are told here;
 *   `foods`: of what the leftovers are
 * @typedef {{at_ms: number, of: number}} Watch since when, and for how many days
 * @typedef {{day: string, tasks: SheetTask[]}} SheetDay `day`: ISO
 */

/**
 * Each day of a pass, from today or its first day, whichever is later, to its last. What is overdue then stands on the
 * first of them, and nothing twice on one day. Every task is taken as done on its day, so the next follows from that.
 * @param {{items: Item[], events: Map<string, EventRow[]>, gauges: (colonyId: string) => import('./gauges.js').Gauge[],
 *   catalogue: Pick<import('../kinds.d.ts').CatalogueRows, 'foods' | 'again_days'>}} known
 *   `events` and `gauges` by colony
 * @param {{colony_ids: string[], starts_on: string, ends_on: string}} given ISO days
 * @param {number} nowMs
 * @returns {SheetDay[]} none once the pass is over
 */
export function sheetOfDays(known, given, nowMs) {
  const firstMs = Math.max(nowMs, noonMs(given.starts_on));
  const endMs = endOfDayMs(new Date(noonMs(given.ends_on)));
  /** @type {SheetDay[]} */
  const days = [];
  for (let at = firstMs; at < endMs; at = endOfDayMs(new Date(at))) days.push({ day: dayOf(new Date(at)), tasks: [] });
  const byDay = new Map(days.map((each) => [each.day, each.tasks]));
  for (const colonyId of given.colony_ids) {
    const tasks = known.items
      .filter((item) => item.colony_id === colonyId)
      .flatMap((item) => occurrences(item, known, firstMs, endMs))
      .sort((a, b) => Number(b.urgent) - Number(a.urgent) || a.at_ms - b.at_ms || (a.key < b.key ? -1 : 1));
    for (const task of tasks) put(byDay.get(dayOf(new Date(task.at_ms))), task);
  }
  return days;
}

/** Nobody knows at what time they come: the middle of the day. @param {string} day ISO */
const noonMs = (day) => new Date(`${day}T12:00:00`).getTime();

/**
 * Leftovers of a colony come out together: one line a day.
 * @param {SheetTask[] | undefined} tasks
 * @param {SheetTask} task
 */
function put(tasks, task) {
  const same = tasks?.find((each) => each.need === 'leftovers' && each.colony_id === task.colony_id);
  if (task.need !== 'leftovers' || !same) tasks?.push(task);
  else same.foods = [...new Set([...same.foods, ...task.foods])];
}

/**
 * A task each time that it is due, and the leftovers that follow it.
 * @param {Item} item @param {Parameters<typeof sheetOfDays>[0]} known @param {number} firstMs @param {number} endMs
 * @returns {SheetTask[]}
 */
function occurrences(item, known, firstMs, endMs) {
  if (!item.stand_in) return [];
  const events = known.events.get(item.colony_id) ?? [];
  /** @type {SheetTask[]} */
  const found = [];
  let gauge = item.gauge;
  let first = true;
  /** @type {number | null} */
  let at = Math.max(item.due_at_ms, firstMs);
  while (at !== null && at < endMs) {
    const [task] = forStandIn([item], events, at);
    if (!task) {
      at += DAY_MS; // looked at already: again after a day
      continue;
    }
    found.push({ ...task, at_ms: at, first, foods: task.need === 'leftovers' ? foodsOf(task, events) : [] });
    first = false;
    const log = task.suggested;
    if (gauge && log) {
      gauge = applyEvent(gauge, log.kind, at, /** @type {import('./gauges.js').EventFields} */ (log.set));
    }
    const next = nextMs(task, gauge, at, known);
    const left = leftovers(task, at, known.catalogue.foods);
    // who fills a feeder takes the old one away
    if (left && left.at_ms < endMs && !(log?.set.form === 'feeder' && next !== null && next <= left.at_ms)) {
      found.push(left);
    }
    at = next;
  }
  return found;
}

/**
 * When a task comes again after it was done; null: it does not. At the soonest after a day.
 * @param {Item} task @param {Item['gauge']} gauge as it stands after the log of the task @param {number} at
 * @param {Parameters<typeof sheetOfDays>[0]} known @returns {number | null}
 */
function nextMs(task, gauge, at, known) {
  if (!task.suggested) return null; // a fault: the keeper is called
  if (gauge) {
    const due = dueAtMs(gauge);
    return due === null ? null : Math.max(due, at + DAY_MS); // a look moves no gauge: again after a day
  }
  const days = known.catalogue.again_days[task.what];
  if (days === undefined) return null;
  const watch = task.what === 'risk_look' ? /** @type {Watch | undefined} */ (task.reasons[0]?.args) : null;
  if (watch) return at + DAY_MS < watch.at_ms + (watch.of + 1) * DAY_MS ? at + DAY_MS : null;
  return at + (task.what === 'water_look' ? Math.min(days, soonestDays(known.gauges(task.colony_id))) : days) * DAY_MS;
}

/** After how many days water could be due at the fastest. @param {import('./gauges.js').Gauge[]} gauges */
function soonestDays(gauges) {
  const water = gauges.find((gauge) => gauge.need === 'water');
  return water?.rate_high ? Math.max(1, (water.level - water.due_level) / water.rate_high) : Infinity;
}

/** @param {Item} task @param {number} at @param {Record<string, Food>} foods @returns {SheetTask | null} */
function leftovers(task, at, foods) {
  const log = task.suggested;
  const hours = log?.kind === 'feeding' ? hoursToRemoval(log.set, foods) : undefined;
  if (!hours) return null;
  return {
    ...task,
    key: `${task.colony_id}/${keyOf('leftovers', task.key)}`,
    what: 'leftovers',
    need: 'leftovers',
    at_ms: at + hours * HOUR_MS,
    first: false,
    gauge: null,
    portion: null,
    suggested: null,
    urgent: false,
    reasons: [],
    cautions: [],
    foods: log?.set.food_code ? [log.set.food_code] : [],
  };
}

/** @param {Item} task @param {EventRow[]} events @returns {string[]} food codes */
function foodsOf(task, events) {
  const food = events.find((event) => event.id === task.suggested?.set.feeding_id)?.set.food_code;
  return food ? [food] : [];
}
