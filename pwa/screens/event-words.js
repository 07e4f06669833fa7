// One line of the diary in words.
import { say, sayPortion } from '../care/words.js';
import { catalogue, rows } from '../signals/shelf.js';
import { t } from '../text/en.js';

/** @param {string} colonyId */
export const nameOf = (colonyId) => rows.value.get(colonyId)?.set.name ?? 'A colony';

/** @param {import('../care/overlay.js').ShownRow} row @returns {string} */
export function eventInWords(row) {
  const words = catalogue.value?.words ?? {};
  const v = row.set;
  const repeat = v.possible_repeat && !v.confirmed ? ' (possible repeat, not counted)' : '';
  switch (row.kind) {
    case 'feeding': return `${v.food_code && v.amount ? sayPortion(words, /** @type {any} */ (v)) : say(words, 'need', v.need)}${repeat}`;
    case 'check': return v.outcome ? OUTCOMES[v.outcome] ?? '' : v.leftovers_removed ? 'Leftovers taken out' : say(words, 'need', v.need ?? 'glance');
    case 'water': return v.action === 'read' ? `Water read: ${READINGS[v.reading] ?? `${v.level_mm} mm`}` : v.action === 'new_tube' ? 'New tube offered' : 'Water filled up';
    case 'fault': return `${capital(say(words, 'fault', v.fault))}${v.resolved_at ? ' (mended)' : ''}`;
    case 'count': return `Counted: ${v.workers ?? COARSE[v.workers_coarse] ?? 'brood'}${v.workers !== undefined || v.workers_coarse ? ' workers' : ''}${v.larvae ? `, larvae: ${v.larvae}` : ''}`;
    case 'note': return v.text;
    case 'move': return 'Nest move';
    case 'photo': return t.kinds.photo;
    case 'later': return `${say(words, 'need', v.need)}: ${v.why ? `${t.later.skipped} (${LATER[v.why] ?? v.why})` : t.later.put_off}`;
    default: return row.kind;
  }
}

/** @type {Record<string, string>} */ const OUTCOMES = t.outcomes;
/** @type {Record<string, string>} */ const READINGS = t.readings;
/** @type {Record<string, string>} */ const COARSE = t.coarse;
/** @type {Record<string, string>} */ const LATER = Object.fromEntries(t.later.why);

/** @param {string} text */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
