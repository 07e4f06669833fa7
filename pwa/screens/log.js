// The log sheet: what happened at one colony. Feeding, check and water here; the rarer kinds in log-more.js.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice } from '../components/choice.js';
import { html } from '../components/html.js';
import { Sheet } from '../components/sheet.js';
import { TubeInput } from '../components/tube-input.js';
import { levelAt } from '../care/gauges.js';
import { logAll } from '../signals/actions.js';
import { gaugesOf } from '../signals/gauges.js';
import { catalogue, events, now, rows } from '../signals/shelf.js';
import { t } from '../text/en.js';
import { m } from '../text/en-more.js';
import { eventInWords, nameOf } from './event-words.js';
import { FeedingForm } from './log-feeding.js';
import { BoostForm, CountForm, FaultForm, MoveForm, NoteForm } from './log-more.js';

/** @type {Record<string, string>} */
const KIND_OF_NEED = { water: 'water', leftovers: 'check', room: 'move', barrier: 'check', glance: 'check' };

/** @param {{colonyId: string, kind?: string, need?: string, item?: any, onClose: () => void}} props */
export function LogSheet({ colonyId, kind, need, item, onClose }) {
  const chosen = kind ?? KIND_OF_NEED[need ?? ''] ?? 'feeding';
  const { attempt, said } = useAttempt();
  /** @param {string} what @param {Record<string, any>} set */
  const save = (what, set) => attempt(async () => { await logAll([{ kind: what, set: { colony_id: colonyId, ...set } }]); onClose(); });
  const form = { feeding: FeedingForm, check: CheckForm, water: WaterForm, fault: FaultForm, count: CountForm, boost: BoostForm, move: MoveForm, note: NoteForm }[chosen];
  return html`<${Sheet} title=${`${/** @type {any} */ (t.kinds)[chosen]}: ${nameOf(colonyId)}`} onClose=${onClose}>
    ${said}<${form} colonyId=${colonyId} need=${need} item=${item} save=${save} /></${Sheet}>`;
}

const LAST_FEEDINGS = 4;

/** @param {any} props */
function CheckForm({ colonyId, need, save }) {
  const feedings = (events.value.get(colonyId) ?? []).filter((row) => row.kind === 'feeding').slice(-LAST_FEEDINGS).reverse();
  const [about, setAbout] = useState(feedings[0]?.id ?? '');
  const set = about ? { feeding_id: about } : {};
  return html`${need === 'barrier' && html`<button type="button" class="button main wide" onClick=${() => save('check', { need: 'barrier' })}>${m.log.barrier_good}</button>`}
    ${feedings.length > 0 && html`<${Choice} label=${m.log.which_feeding} value=${about} onPick=${setAbout} options=${feedings.map((row) => [row.id, `${eventInWords(row)}, ${new Date(row.happened_ms ?? 0).toLocaleDateString([], { weekday: 'short', day: 'numeric' })}`])} />
    <div role="group" aria-label=${m.log.what_became} class="choice"><span aria-hidden="true">${m.log.what_became}</span><div class="wrap even">${Object.entries(t.outcomes).map(([code, words]) => html`<button type="button" class="button main" onClick=${() => save('check', { ...set, outcome: code })}>${words}</button>`)}</div></div>
    <button type="button" class="button wide" onClick=${() => save('check', { ...set, need: 'leftovers', leftovers_removed: true })}>${m.log.leftovers}</button>`}
    <button type="button" class="button wide" onClick=${() => save('check', { need: 'glance' })}>${m.log.calm}</button>`;
}

/** @type {Array<[string, number]>} */
const LEVELS = [['full', 1], ['three_quarters', 0.75], ['half', 0.5], ['quarter', 0.25], ['empty', 0]];

/** @param {any} props */
function WaterForm({ colonyId, save }) {
  const gauge = gaugesOf(colonyId).find((each) => each.need === 'water');
  const [share, setShare] = useState(gauge ? Math.round((levelAt(gauge, now.peek()) / gauge.capacity) * 4) / 4 : 0.5);
  const [mm, setMm] = useState('');
  const vessel = rows.value.get(rows.value.get(colonyId)?.set.vessel_id)?.set ?? {};
  const is_tube = (catalogue.value?.vessels?.[vessel.vessel_code]?.kind ?? 'tube') === 'tube';
  const reading = LEVELS.find(([, level]) => level === share)?.[0] ?? 'half';
  const words = /** @type {any} */ (t.readings)[reading];
  const level_mm = Number(mm.replace(',', '.'));
  const typed = mm.trim() !== '';
  const bad = typed && !(level_mm >= 0 && level_mm <= 1000);
  return html`<div class="drag"><${TubeInput} label=${m.log.level} share=${share} step=${0.25} words=${words} onChange=${(/** @type {number} */ next) => { setShare(next); setMm(''); }} />
    <div class="stack"><output>${typed ? `${mm} mm` : words}</output><p class="soft">${m.log.drag} ${m.log.bubble}</p>
      <label>${m.log.mm}<input inputmode="decimal" value=${mm} onInput=${(/** @type {any} */ e) => setMm(e.target.value)} /></label></div></div>
    <button type="button" class="button main wide" disabled=${bad} onClick=${() => save('water', typed ? { action: 'read', level_mm } : { action: 'read', reading })}>${m.log.read}</button>
    <div class="wrap even"><button type="button" class="button" onClick=${() => save('water', { action: 'refill' })}>${m.log.filled}</button>
    ${is_tube ? html`<button type="button" class="button" onClick=${() => save('water', { action: 'new_tube' })}>${m.log.new_tube}</button>`
      : html`<button type="button" class="button" onClick=${() => save('water', { action: 'hydrate' })}>${m.log.hydrate}</button>`}</div>`;
}
