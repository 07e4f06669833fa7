// Several at once: all of these got sugar. Each colony gets the portion that its own plan suggests.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice, ManyChoice } from '../components/choice.js';
import { html } from '../components/html.js';
import { Sheet } from '../components/sheet.js';
import { say, sayPortion } from '../care/words.js';
import { logAll } from '../signals/actions.js';
import { catalogue, planOf, rowsOf } from '../signals/shelf.js';
import { runningTasting } from '../signals/tastings.js';
import { t } from '../text/en.js';
import { capital } from './event-words.js';

/** @typedef {{kind: string, set: Record<string, any>, words: string}} Change */

/** What this colony would get of a need, by its plan. @param {any} colony @param {string} need @returns {Change | null} */
function changeFor(colony, need) {
  if (need === 'water') return { kind: 'water', set: { colony_id: colony.id, action: 'refill' }, words: t.many.water };
  if (need === 'glance') return { kind: 'check', set: { colony_id: colony.id, need: 'glance' }, words: t.many.look };
  const task = (planOf(colony.id)?.set.tasks ?? []).find((/** @type {any} */ each) => each.need === need && each.suggested);
  if (!task) return null;
  const tasting = runningTasting(colony.id);
  return {
    kind: task.suggested.kind, words: sayPortion(catalogue.value.words, task.portion),
    set: { ...task.suggested.set, ...(tasting?.set.food_codes.includes(task.portion.food_code) ? { tasting_id: tasting.id } : {}), colony_id: colony.id, task_key: task.key, suggested: true },
  };
}

/** @param {{onClose: () => void}} props */
export function ManySheet({ onClose }) {
  const words = catalogue.value?.words ?? {};
  const [need, setNeed] = useState('sugar');
  const [left_out, setLeftOut] = useState(/** @type {string[]} */ ([]));
  const { attempt, busy, said } = useAttempt();
  const able = rowsOf('colony').map((colony) => ({ colony, change: changeFor(colony, need) })).filter((each) => each.change);
  const chosen = able.filter(({ colony }) => !left_out.includes(colony.id));
  const go = () => attempt(async () => { await logAll(chosen.map(({ change }) => ({ kind: /** @type {Change} */ (change).kind, set: /** @type {Change} */ (change).set }))); onClose(); });
  return html`<${Sheet} title=${t.many.title} onClose=${onClose}>
    <${Choice} label=${t.many.what} value=${need} onPick=${setNeed} options=${['sugar', 'protein', 'seeds', 'water', 'glance'].map((code) => [code, say(words, 'need', code)])} />
    <${ManyChoice} label=${t.many.who} values=${chosen.map(({ colony }) => colony.id)} onChange=${(/** @type {string[]} */ ids) => setLeftOut(able.map(({ colony }) => colony.id).filter((id) => !ids.includes(id)))}
      options=${able.map(({ colony, change }) => [colony.id, `${colony.set.name}: ${change?.words}`])} />
    ${said}
    <button type="button" class="button main wide stick" disabled=${busy || !chosen.length} onClick=${go}>${chosen.length ? t.many.go(chosen.length) : capital(t.many.none)}</button>
  </${Sheet}>`;
}
