// Fields and their values in words: for what needs a person, and for what was changed.
import { eventInWords } from '../components/event-in-words.js';
import { catalogue, rows } from '../signals/rows.js';
import { temperature } from '../words/measures.js';
import { say, sayIf, sayOf } from '../words/say.js';
import { capital, fullDay, listed, moment, nameOfDay, nameOfLanguage, numeral } from '../words/shown.js';

/** @param {string} name */
export const fieldName = (name) =>
  sayIf('history-field', name) || sayIf('event-stage', name) || capital(name.replaceAll('_', ' '));

/** Whether a field tells a person nothing. @param {string} field */
export const isUntold = (field) => /^(dots|sha256|width_px|height_px|task_key|suggested)/.test(field);

/** @param {string} kind */
export const kindName = (kind) => sayIf('event-kind', kind) || sayOf('history-register', kind);

/** @param {number} weekday 0 is Monday */
export const nameOfWeekday = (weekday) => nameOfDay(`2024-01-0${weekday + 1}`); // the first was a Monday

/** What the messages of a field's codes begin with. @type {Record<string, import('../messages.d.ts').Group>} */
const GROUPS = {
  need: 'need',
  food_code: 'food',
  food_codes: 'food',
  vessel_code: 'vessel',
  origin: 'origin',
  form: 'form',
  size_class: 'size',
  action: 'event-water',
  fault: 'fault',
  despite: 'origin-why',
  stage: 'colony-stage',
  condition: 'colony-condition',
  outcome: 'event-outcome',
  reading: 'event-reading',
  level: 'event-reading',
  tint: 'measure-tint',
  colour_seen: 'event-colour-seen',
  workers_coarse: 'event-coarse',
  eggs: 'event-brood-seen',
  larvae: 'event-brood-seen',
  pupae: 'event-brood-seen',
  brood: 'event-stage',
  guild: 'colony-form-own-guild',
  founding_mode: 'colony-form-own-founding',
  place_type: 'place-type',
  why: 'later-why',
  species_code: 'species',
  host_species_code: 'species',
};

/** @param {string} field @param {unknown} value @returns {string} */
export function valueInWords(field, value) {
  if (value === null || value === undefined || value === '' || (Array.isArray(value) && !value.length)) {
    return say('history-value-empty');
  }
  if (typeof value === 'boolean') return value ? say('history-value-yes') : say('history-value-no');
  if (Array.isArray(value)) return listed(value.map((each) => valueInWords(field, each)));
  if (typeof value === 'object') {
    return listed(
      Object.entries(value).map(([need, days]) => say('history-value-every', { need: sayOf('need', need), days })),
    );
  }
  const is = (/** @type {import('../kinds.d.ts').FieldForm} */ form) => catalogue.value.fields[form]?.includes(field);
  if (is('warmth')) return temperature(/** @type {number} */ (value));
  if (is('record')) return recordInWords(/** @type {string} */ (value));
  if (is('day')) return fullDay(/** @type {string} */ (value));
  if (is('instant')) return moment(/** @type {string} */ (value));
  if (field === 'unit') return sayOf('measure-unit', /** @type {string} */ (value), { count: 2 });
  if (field === 'weekdays') return nameOfWeekday(/** @type {number} */ (value));
  if (typeof value === 'number') return numeral(value);
  const code = String(value);
  if (field === 'language') return nameOfLanguage(code);
  const group = GROUPS[field];
  return (group && sayIf(group, code)) || sayIf('history-value', `${field}-${code}`) || code;
}

/** @param {string} id */
function recordInWords(id) {
  const row = rows.value.get(id);
  if (!row) return say('history-value-elsewhere');
  if (row.happened_ms !== null) return eventInWords(row);
  return nameInWords(row);
}

/** What a thing is called. @param {{kind: string, set: Partial<import('../care/overlay.js').Fields>}} thing */
export function nameInWords({ kind, set }) {
  if (set.name) return set.name;
  if (set.food_code) return capital(sayOf('food', set.food_code));
  return sayIf('vessel', set.vessel_code) || kindName(kind);
}
