// The gauge's arithmetic, the same as server/broodshelf/model/gauges.py and, for what a log does to it, as
// tests/care/gauges_by_event.py; fixtures/conformance holds both to it.
import { DAY_MS, EMPTY_BELOW_MM, FILLS, SHARES } from './rules.js';

/**
 * @typedef {import('../kinds.d.ts').PlannedGauge} Gauge
 * @typedef {Partial<import('../kinds.d.ts').Fields<import('../kinds.d.ts').EventKind>>} EventFields
 */

/** The level at an instant. @param {Gauge} gauge @param {number} nowMs @returns {number} */
export function levelAt(gauge, nowMs) {
  const days = Math.max(0, nowMs - gauge.as_of_ms) / DAY_MS;
  return Math.min(gauge.capacity, Math.max(0, gauge.level - gauge.rate_per_day * days));
}

/** When the level meets the due level; null if it never falls. @param {Gauge} gauge @returns {number | null} */
export function dueAtMs(gauge) {
  if (gauge.level <= gauge.due_level) return gauge.as_of_ms;
  if (gauge.rate_per_day === 0) return null;
  return Math.round(gauge.as_of_ms + ((gauge.level - gauge.due_level) / gauge.rate_per_day) * DAY_MS);
}

/**
 * The gauge after an event; what happened before `as_of_ms` is in the gauge already.
 * @param {Gauge} gauge @param {string} kind @param {number} happenedMs @param {EventFields} values
 * @returns {Gauge}
 */
export function applyEvent(gauge, kind, happenedMs, values) {
  if (happenedMs < gauge.as_of_ms) return gauge;
  const level = levelAfter(gauge, kind, levelAt(gauge, happenedMs), values);
  return level === null ? gauge : { ...gauge, level, as_of_ms: happenedMs };
}

/**
 * @param {Gauge} gauge @param {string} kind @param {number} level @param {EventFields} values
 * @returns {number | null}
 */
function levelAfter(gauge, kind, level, values) {
  if (kind === 'feeding' && values.need === gauge.need) {
    return Math.min(gauge.capacity, level + (gauge.gain_per_portion ?? gauge.capacity));
  }
  if (gauge.need === 'water') {
    const share = waterShare(gauge, kind, values);
    return share === undefined ? null : share * gauge.capacity;
  }
  // a nest that was offered is not lived in yet
  if (gauge.need === 'room' && kind === 'move' && values.how !== 'offered') return gauge.capacity;
  // whoever logs anything saw the colony; a wish to put it off is no look
  if (kind !== 'later' && gauge.need === 'glance') return gauge.capacity;
  if (kind === 'check' && gauge.need === 'barrier' && values.need === 'barrier') return gauge.capacity;
  return null;
}

/**
 * The share of the full reservoir that an event leaves or found, undefined where it says none; mm count before the
 * reading by eye.
 * @param {{full_mm?: number | null} | undefined} gauge of the water @param {string} kind @param {EventFields} values
 * @returns {number | undefined}
 */
export function waterShare(gauge, kind, values) {
  if (kind === 'move' && values.how !== 'offered' && values.fresh_reservoir) return 1;
  if (kind !== 'water') return;
  if (FILLS.includes(values.action ?? '')) return 1;
  const mm = values.level_mm;
  if (mm === undefined || mm === null || !gauge?.full_mm) return SHARES[values.reading ?? ''];
  return mm < EMPTY_BELOW_MM ? 0 : Math.min(1, mm / gauge.full_mm);
}
