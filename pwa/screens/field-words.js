// Fields and their values in words: for what needs a person, and for what was changed.
import { temperature } from '../components/degrees.js';
import { eventInWords } from '../components/event-in-words.js';
import { capital, fullDay, moment, wordFor } from '../components/in-words.js';
import { catalogue, rows } from '../signals/rows.js';
import { colonyText } from '../text/en/colony.js';
import { colonyFormText } from '../text/en/colony-form.js';
import { eventText } from '../text/en/events.js';
import { foodText } from '../text/en/food.js';
import { historyText } from '../text/en/history.js';
import { laterText } from '../text/en/later.js';
import { placesText } from '../text/en/places.js';

/** @param {string} name */
export const fieldName = (name) => historyText.fields[name] ?? capital(name.replaceAll('_', ' '));

/** @param {string} kind */
export const kindName = (kind) =>
  /** @type {Record<string, string>} */ (eventText.kinds)[kind] ?? historyText.registers[kind] ?? kind;

/** The catalogue's word table for a field's codes. @type {Record<string, string>} */
const TABLES = {
  need: 'need',
  food_code: 'food',
  food_codes: 'food',
  vessel_code: 'vessel',
  origin: 'origin',
  form: 'form',
  size_class: 'size',
  fault: 'fault',
  despite: 'origin_why',
};
/** The app's own words for a field's codes. @type {Record<string, Record<string, string>>} */
const OWN = {
  stage: colonyText.stages,
  condition: colonyText.conditions,
  outcome: eventText.outcomes,
  reading: eventText.readings,
  level: eventText.readings,
  tint: foodText.tints,
  colour_seen: eventText.colour_seen,
  workers_coarse: eventText.coarse,
  eggs: eventText.brood_seen,
  larvae: eventText.brood_seen,
  pupae: eventText.brood_seen,
  guild: colonyFormText.own.guilds,
  founding_mode: colonyFormText.own.foundings,
  place_type: placesText.types,
  action: { ...eventText.water, read: historyText.values.read },
  why: Object.fromEntries(laterText.why),
};

/** @param {string} field @param {any} value @returns {string} */
export function valueInWords(field, value) {
  if (value === null || value === undefined || value === '' || (Array.isArray(value) && !value.length)) {
    return historyText.values.empty;
  }
  if (typeof value === 'boolean') return value ? historyText.values.yes : historyText.values.no;
  if (Array.isArray(value)) return value.map((each) => valueInWords(field, each)).join(', ');
  if (typeof value === 'object') {
    return Object.entries(value)
      .map(([need, days]) => historyText.values.every(wordFor('need', need), days))
      .join(', ');
  }
  if (field.endsWith('_c')) return temperature(value);
  if (field.endsWith('_id') || field.endsWith('_ids')) return recordInWords(value);
  if (/_on$|_by$/.test(field)) return fullDay(value);
  if (/_at$|^until$/.test(field)) return moment(value);
  if (field === 'species_code') return catalogue.value?.species?.[value]?.name ?? value;
  if (field === 'unit') return foodText.units[value]?.(2) ?? value;
  const table = TABLES[field];
  return OWN[field]?.[value] ?? ((table && catalogue.value?.words?.[table]?.[value]) || String(value));
}

/** @param {string} id */
function recordInWords(id) {
  const row = rows.value.get(id);
  if (!row) return historyText.values.elsewhere;
  if (row.happened_ms !== null) return eventInWords(row);
  return nameInWords(row);
}

/** What a thing is called. @param {{kind: string, set: Partial<import('../care/overlay.js').Fields>}} thing */
export function nameInWords({ kind, set }) {
  const words = catalogue.value?.words ?? {};
  return (
    set.name ??
    (set.food_code
      ? capital(wordFor('food', set.food_code))
      : (words.vessel?.[set.vessel_code ?? ''] ?? kindName(kind)))
  );
}
