// The round: what is due now, today and next, from the plans and this phone's own logs. Pure.
import { keyOf, toldInSteps } from './catalogue.js';
import { applyEvent, dueAtMs } from './gauges.js';
import { DAY_MS, DEEP_MOULD_SHARE, HOUR_MS } from './rules.js';

/**
 * @typedef {import('./overlay.js').ShownRow} ShownRow
 * @typedef {import('./overlay.js').EventRow} EventRow
 * @typedef {import('./overlay.js').ShownRow<'plan'>} PlanRow
 * @typedef {import('./gauges.js').Gauge} Gauge
 * @typedef {import('../kinds.d.ts').Reason} Reason
 * @typedef {import('../kinds.d.ts').Need} Need
 * @typedef {import('../kinds.d.ts').What} What
 * @typedef {import('../kinds.d.ts').PlannedTask} PlannedTask
 * @typedef {{key: string, task_key: string, what: What, about: string, colony_id: string, need: Need,
 *   due_at_ms: number, urgent: boolean, gauge: Gauge | null, portion: PlannedTask['portion'],
 *   suggested: PlannedTask['suggested'], reasons: Reason[], cautions: Reason[], stand_in: PlannedTask['stand_in'],
 *   fault: string | null, group: 'now' | 'today' | 'next'}} Item
 * `key`: unique on the shelf; `task_key`: what a log carries that answers it, made of `what` and `about`
 * @typedef {Pick<import('../kinds.d.ts').CatalogueRows, 'foods' | 'faults' | 'tasks' | 'again_days'>} Known
 * @typedef {Pick<PlannedTask, 'what' | 'about' | 'need' | 'due_at_ms' | 'urgent' | 'suggested'> &
 *   {from_gauge?: boolean}} Task as far as it tells what does it
 * @typedef {{items: Item[], done: EventRow[]}} Round
 * @typedef {import('./overlay.js').Fields<'fault'>} FaultFields
 */

const NEXT_DAYS = 3;

/**
 * What is due now, today and in the next days, the most urgent first. An item that stays in its group stays the same
 * object, so whoever shows it sees at once that nothing has changed.
 * @param {Item[]} items @param {number} nowMs @param {number} endOfTodayMs @returns {Item[]}
 */
export const inOrder = (items, nowMs, endOfTodayMs) =>
  items
    .filter((item) => item.due_at_ms < nowMs + NEXT_DAYS * DAY_MS)
    .map((item) => inGroup(item, groupOf(item, nowMs, endOfTodayMs)))
    .sort((a, b) => Number(b.urgent) - Number(a.urgent) || a.due_at_ms - b.due_at_ms || (a.key < b.key ? -1 : 1));

/** @type {WeakMap<Item, Item>} */
const grouped = new WeakMap();

/** @param {Item} item @param {Item['group']} group @returns {Item} */
function inGroup(item, group) {
  const known = grouped.get(item);
  if (known?.group === group) return known;
  const made = { ...item, group };
  grouped.set(item, made);
  return made;
}

/**
 * What is coming at one colony, however far away, in no order; `group` is not yet told.
 * @param {PlanRow} plan @param {EventRow[]} events of its colony @param {Pick<Map<string, ShownRow>, 'get'>} rows its
 *   faults among them @param {Known} catalogue @returns {Item[]}
 */
export function itemsOfPlan(plan, events, rows, catalogue) {
  const fresh = unplanned(plan, events);
  const met = metBy(fresh, rows, catalogue);
  return [
    ...planItems(plan, fresh, events, rows, met),
    ...freshItems(plan, fresh, catalogue).filter((item) => !met(item)),
  ];
}

/** The events that a plan does not know yet. @param {PlanRow} plan @param {EventRow[]} events */
export const unplanned = (plan, events) => events.filter((e) => !e.rev || e.rev > plan.set.inputs_rev);

/**
 * The gauges of a plan moved by what this phone knows and the plan does not.
 * @param {PlanRow} plan
 * @param {EventRow[]} fresh
 */
export function movedGauges(plan, fresh) {
  const gauges = plan.set.gauges ?? [];
  return gauges.map((gauge) => fresh.reduce((g, e) => applyEvent(g, e.kind, e.happened_ms ?? 0, e.set), gauge));
}

/**
 * @param {PlanRow} plan @param {EventRow[]} fresh @param {EventRow[]} events
 * @param {Pick<Map<string, ShownRow>, 'get'>} rows @param {(task: Task) => boolean} met @returns {Item[]}
 */
function planItems(plan, fresh, events, rows, met) {
  const gauges = new Map(movedGauges(plan, fresh).map((gauge) => [gauge.need, gauge]));
  const planned = new Map((plan.set.gauges ?? []).map((gauge) => [gauge.need, gauge]));
  const later = laterUntil(events);
  /** @type {Item[]} */
  const items = [];
  for (const task of plan.set.tasks ?? []) {
    if (met(task)) continue;
    const fault = task.what === 'fault' ? rows.get(task.about) : undefined;
    if (task.what === 'fault' && (!fault || fault.set.resolved_at)) continue;
    const gauge = task.from_gauge ? (gauges.get(task.need) ?? null) : null;
    const due = gauge ? dueAtMs(gauge) : task.due_at_ms;
    if (due === null) continue;
    const moved = gauge !== null && gauge !== planned.get(task.need);
    const about = moved ? begunBy(gauge, fresh) : task.about;
    const task_key = moved ? keyOf(task.need, about) : task.key;
    items.push({
      key: `${plan.set.colony_id}/${task_key}`,
      task_key,
      what: task.what,
      about,
      colony_id: plan.set.colony_id,
      need: task.need,
      due_at_ms: task.urgent ? due : Math.max(due, later.get(task.need) ?? 0),
      urgent: task.urgent,
      gauge,
      portion: task.portion,
      suggested: task.suggested,
      reasons: task.reasons,
      cautions: task.cautions,
      stand_in: task.stand_in ?? null,
      fault: fault?.set.fault ?? null,
      group: 'next',
    });
  }
  return items;
}

/**
 * What a task is about whose gauge a log has moved that the plan does not know: a new run began with that log, so what
 * is logged next answers another task. Server: care/plan/housing.py, `gauge_task`.
 * @param {Gauge} gauge
 * @param {EventRow[]} fresh
 */
const begunBy = (gauge, fresh) => fresh.findLast((event) => event.happened_ms === gauge.as_of_ms)?.id ?? 'start';

/**
 * Which tasks without a gauge of their own are done by what this phone logged and the plan does not know: a look by a
 * look, if it does not come back by itself on its day or the one before; an offer of a nest by that offer; leftovers as
 * care/plan/leftovers.py has it.
 * @param {EventRow[]} fresh @param {Pick<Map<string, ShownRow>, 'get'>} rows @param {Known} catalogue
 * @returns {(task: Task) => boolean}
 */
const metBy = (fresh, rows, catalogue) => (task) => {
  const { what, about, need, due_at_ms, suggested } = task;
  const met_by = catalogue.tasks[what]?.met_by;
  const fed = /** @type {import('./overlay.js').EventRow<'feeding'> | undefined} */ (rows.get(about));
  return fresh.some(({ kind, set, happened_ms }) => {
    const at_ms = happened_ms ?? 0;
    if (kind === 'feeding') {
      const anew = what === 'leftovers' && set.form === 'feeder' && fed?.set.form === 'feeder';
      return anew && fed.set.need === set.need && at_ms > (fed.happened_ms ?? 0);
    }
    if (kind !== 'check') {
      if (met_by) return kind === met_by;
      return kind === 'move' && set.how === 'offered' && suggested?.kind === kind && suggested.set.how === 'offered';
    }
    if (what === 'leftovers') {
      if (!set.feeding_id) return set.leftovers_removed && !task.urgent && due_at_ms <= at_ms;
      return set.feeding_id === about && (set.leftovers_removed || set.outcome === 'all');
    }
    if (set.need !== need || task.from_gauge) return false;
    return met_by || (suggested?.kind === kind && (catalogue.again_days[what] || at_ms >= due_at_ms - DAY_MS));
  });
};

/**
 * What this phone's own logs make due before the server has seen them.
 * @param {PlanRow} plan
 * @param {EventRow[]} fresh
 * @param {Known} catalogue
 * @returns {Item[]}
 */
function freshItems(plan, fresh, { foods, faults, tasks }) {
  /** @type {Item[]} */
  const items = [];
  const known = new Set((plan.set.tasks ?? []).map((task) => task.key));
  for (const event of fresh) {
    const base = {
      colony_id: plan.set.colony_id,
      gauge: null,
      portion: null,
      cautions: plan.set.cautions ?? [],
      stand_in: /** @type {PlannedTask['stand_in']} */ ({}),
      fault: null,
      group: /** @type {const} */ ('next'),
    };
    if (event.kind === 'fault' && !event.set.resolved_at && !known.has(keyOf('fault', event.id))) {
      items.push({
        ...base,
        ...keys(plan, 'fault', event.id),
        need: isSpot(event.set) ? 'glance' : (faults[event.set.fault]?.touches ?? 'glance'),
        due_at_ms: event.happened_ms ?? 0,
        urgent: !isSpot(event.set),
        suggested: null,
        fault: event.set.fault,
        reasons: [{ code: faultCode(event.set), args: { fault: event.set.fault } }],
        stand_in: { reasons: toldInSteps(['helper_call', faults[event.set.fault]?.first_step, 'helper_tell']) },
      });
    }
    // what was given although it was refused comes out at once
    const refused = event.kind === 'feeding' && (event.set.despite ?? []).some((why) => why !== 'hot_syrup');
    const removeAfterH = event.kind === 'feeding' ? hoursToRemoval(event.set, foods) : undefined;
    if ((removeAfterH || refused) && !known.has(keyOf('leftovers', event.id))) {
      items.push({
        ...base,
        ...keys(plan, 'leftovers', event.id),
        need: 'leftovers',
        urgent: refused,
        due_at_ms: (event.happened_ms ?? 0) + (refused ? 0 : (removeAfterH ?? 0) * HOUR_MS),
        suggested: { kind: 'check', set: { feeding_id: event.id, need: 'leftovers', leftovers_removed: true } },
        reasons: [
          refused
            ? { code: 'risk_out', args: { at_ms: event.happened_ms } }
            : { code: 'leftovers', args: { at_ms: event.happened_ms, after: removeAfterH } },
        ],
        stand_in: { reasons: toldInSteps(tasks.leftovers?.steps ?? []) },
      });
    }
  }
  return items;
}

/**
 * By what a task is known.
 * @param {ShownRow} plan @param {What} what @param {string} about
 */
function keys(plan, what, about) {
  const task_key = keyOf(what, about);
  return { key: `${plan.set.colony_id}/${task_key}`, task_key, what, about };
}

/**
 * After how many hours what was given is taken out; server: care/feeding/removal.py.
 * @param {{food_code?: string | null, form?: string | null}} set of a feeding
 * @param {Record<string, import('../kinds.d.ts').FoodRow>} foods
 * @returns {number | undefined}
 */
export function hoursToRemoval(set, foods) {
  const food = foods[set.food_code ?? ''];
  return (set.form === 'feeder' ? food?.feeder_h : null) ?? food?.remove_after_h ?? undefined;
}

/** A spot of mould away from the brood is watched, no alarm; server: care/plan/faults.py. @param {FaultFields} fault */
const isSpot = (fault) =>
  fault.fault === 'mould' && !fault.mould_near_brood && !((fault.mould_share ?? 0) >= DEEP_MOULD_SHARE);
/** @param {FaultFields} fault */
const faultCode = (fault) => (fault.fault !== 'mould' ? fault.fault : isSpot(fault) ? 'mould_far' : 'mould_near');

/** Until when each need was put off. @param {EventRow[]} events @returns {Map<string, number>} */
function laterUntil(events) {
  /** @type {Map<string, number>} */
  const until = new Map();
  for (const event of events) {
    if (event.kind === 'later') until.set(event.set.need, Date.parse(event.set.until));
  }
  return until;
}

/** @param {Item} item @param {number} nowMs @param {number} endOfTodayMs @returns {'now' | 'today' | 'next'} */
function groupOf(item, nowMs, endOfTodayMs) {
  if (item.due_at_ms <= nowMs) return 'now';
  return item.due_at_ms < endOfTodayMs ? 'today' : 'next';
}

/**
 * What a stand-in is asked for, in the words and with the log that the plan has for one. Water that somebody looked at
 * in the last day is not asked for again: what it needs then is the keeper's.
 * @template {{what: string, need: string, stand_in?: PlannedTask['stand_in']}} T
 * @param {T[]} tasks @param {EventRow[]} events of the colony @param {number} nowMs @returns {T[]}
 */
export function forStandIn(tasks, events, nowMs) {
  const looked = events.some(
    (e) =>
      (e.happened_ms ?? 0) > nowMs - DAY_MS && (e.kind === 'water' || (e.kind === 'check' && e.set.need === 'water')),
  );
  return tasks
    .filter((task) => task.stand_in && !(looked && task.need === 'water' && task.what !== 'fault'))
    .map((task) => ({ ...task, ...task.stand_in }));
}

/**
 * What was done in the last twelve hours, newest first. Each list is read from its end, only as far as that.
 * @param {Iterable<EventRow[]>} lists of events in the order of their happening @param {number} nowMs
 */
export function doneLately(lists, nowMs) {
  const happened = (/** @type {EventRow | undefined} */ row) => row?.happened_ms ?? 0;
  const lately = [...lists].flatMap((list) => {
    let from = list.length;
    while (from && happened(list[from - 1]) > nowMs - DAY_MS / 2) from -= 1;
    return list.slice(from);
  });
  return lately.filter((row) => row.kind !== 'later').sort((a, b) => happened(b) - happened(a));
}

/** A task that asks who is there is answered by a count. @param {{what: string} | undefined} item */
export const asksForCount = (item) => item?.what === 'ask';
