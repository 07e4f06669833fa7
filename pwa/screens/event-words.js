// One line of the diary in words.
import { say, sayPortion } from '../care/words.js';
import { catalogue, rows } from '../signals/shelf.js';
import { t } from '../text/en.js';

/** @param {string} colonyId */
export const nameOf = (colonyId) => rows.value.get(colonyId)?.set.name ?? t.event.colony;

/** @param {import('../care/overlay.js').ShownRow} row @returns {string} */
export function eventInWords(row) {
  const words = catalogue.value?.words ?? {};
  const v = row.set;
  const repeat = v.possible_repeat && !v.confirmed ? t.event.repeat : '';
  switch (row.kind) {
    case 'feeding': return `${v.food_code && v.amount ? sayPortion(words, /** @type {any} */ (v)) : say(words, 'need', v.need)}${repeat}`;
    case 'check': return v.outcome ? OUTCOMES[v.outcome] ?? '' : v.leftovers_removed ? t.event.leftovers : say(words, 'need', v.need ?? 'glance');
    case 'water': return v.action === 'read' ? t.event.read(READINGS[v.reading] ?? `${v.level_mm} mm`) : ACTIONS[v.action] ?? t.kinds.water;
    case 'fault': return `${capital(say(words, 'fault', v.fault))}${v.resolved_at ? t.event.mended : ''}`;
    case 'count': return `${t.event.counted(v.workers ?? COARSE[v.workers_coarse] ?? null)}${v.larvae ? t.event.larvae(COARSE[v.larvae] ?? v.larvae) : ''}`;
    case 'note': return v.text;
    case 'move': return t.kinds.move;
    case 'boost': return t.event.boost(v.number ?? null, v.brood);
    case 'photo': return t.kinds.photo;
    case 'later': return `${say(words, 'need', v.need)}: ${v.why ? `${t.later.skipped} (${LATER[v.why] ?? v.why})` : t.later.put_off}`;
    default: return row.kind;
  }
}

/** @type {Record<string, string>} */ const OUTCOMES = t.outcomes;
/** @type {Record<string, string>} */ const READINGS = t.readings;
/** @type {Record<string, string>} */ const COARSE = t.coarse;
/** @type {Record<string, string>} */ const ACTIONS = t.event.water;
/** @type {Record<string, string>} */ const LATER = Object.fromEntries(t.later.why);

/** @param {string} text */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
