// A colony's gauges as this phone knows them: the plan's, moved by what was logged since.
import { movedGauges } from '../care/round.js';
import { events, planOf } from './shelf.js';

const NOT_DRAWN = ['glance', 'room'];

/** @param {string} colonyId @returns {import('../care/gauges.js').Gauge[]} */
export function gaugesOf(colonyId) {
  const plan = planOf(colonyId);
  if (!plan) return [];
  const fresh = (events.value.get(colonyId) ?? []).filter((e) => !e.rev || e.rev > plan.set.inputs_rev);
  return movedGauges(plan, fresh).filter((gauge) => !NOT_DRAWN.includes(gauge.need));
}
