// The log sheet: feeding, check, water, fault, count, move, note, in that order of ease.
import { useState } from 'preact/hooks';
import { Choice, Stepper } from '../components/choice.js';
import { html } from '../components/html.js';
import { Cautions, inWords } from '../components/reasons.js';
import { Sheet } from '../components/sheet.js';
import { originVerdict } from '../care/origin.js';
import { say as inTable } from '../care/words.js';
import { log, say } from '../signals/actions.js';
import { catalogue, events, planOf, today } from '../signals/shelf.js';
import { t } from '../text/en.js';
import { eventInWords, nameOf } from './event-words.js';

/** @type {Record<string, string>} */
const KIND_OF_NEED = { water: 'water', leftovers: 'check', room: 'move', barrier: 'check', glance: 'check' };

/** @param {{colonyId: string, kind?: string, need?: string, item?: any, onClose: () => void}} props */
export function LogSheet({ colonyId, kind, need, item, onClose }) {
  const chosen = kind ?? KIND_OF_NEED[need ?? ''] ?? 'feeding';
  const [error, setError] = useState('');
  /** @param {string} what @param {Record<string, any>} set */
  async function save(what, set) {
    try {
      await log(what, { colony_id: colonyId, ...set });
      say('Saved on this phone');
      onClose();
    } catch (problem) {
      setError(/** @type {Error} */ (problem).message);
    }
  }
  const form = { feeding: FeedingForm, check: CheckForm, water: WaterForm, fault: FaultForm, count: CountForm, move: MoveForm, note: NoteForm }[chosen];
  return html`<${Sheet} title=${`${/** @type {any} */ (t.kinds)[chosen]}: ${nameOf(colonyId)}`} onClose=${onClose}>
    ${error && html`<p role="alert" class="caution">${error}</p>`}
    <${form} colonyId=${colonyId} need=${need} item=${item} save=${save} /></${Sheet}>`;
}

/** @param {any} props */
function FeedingForm({ colonyId, need, item, save }) {
  const foods = catalogue.value?.foods ?? {};
  const words = catalogue.value?.words ?? {};
  const plan = planOf(colonyId);
  const tasks = (plan?.set.tasks ?? []).filter((/** @type {any} */ task) => task.portion);
  const task = item ?? tasks.find((/** @type {any} */ each) => each.need === need) ?? tasks[0];
  const [food, setFood] = useState(task?.portion?.food_code ?? 'sugar_water');
  const [amount, setAmount] = useState(task?.portion?.amount ?? 1);
  const [origin, setOrigin] = useState(task?.portion?.origin ?? 'bought_or_bred');
  const kind = foods[food] ?? {};
  const same = task?.portion?.food_code === food ? task.portion : null;
  const unit = same?.unit ?? kind.unit ?? 'piece';
  const verdict = originVerdict(catalogue.value?.origins ?? {}, origin, { got_on: null, today: today.value });
  const stop = ['refuse', 'wait', 'hold'].includes(verdict.verdict);
  const set = {
    need: kind.need ?? 'protein', food_code: food, amount, unit, origin,
    ...(same?.form ?? kind.form ? { form: same?.form ?? kind.form } : {}), ...(same?.size_class ? { size_class: same.size_class } : {}),
    ...(item ? { task_key: item.key.split('/').pop() } : {}),
  };
  return html`<${Choice} label="Food" value=${food} onPick=${setFood} options=${Object.keys(foods).map((code) => [code, inTable(words, 'food', code)])} />
    <${Stepper} label="Amount" value=${amount} step=${unit === 'ml' ? 0.5 : 1} most=${500} unit=${unit === 'ml' ? 'mL' : unit} onChange=${setAmount} />
    <label>Where it comes from<select value=${origin} onChange=${(/** @type {any} */ e) => setOrigin(e.target.value)}>${Object.keys(catalogue.value?.origins ?? {}).map((code) => html`<option value=${code}>${inTable(words, 'origin', code)}</option>`)}</select></label>
    <p class=${stop ? 'caution' : 'soft'} role=${stop ? 'alert' : null}>${stop ? `${STOPS[verdict.verdict]} ` : ''}${inTable(words, 'origin_why', verdict.reason_code)}</p>
    <${Cautions} items=${plan?.set.cautions ?? []} />
    ${stop ? html`<button type="button" class="button warn wide" onClick=${() => save('feeding', { ...set, despite: [verdict.reason_code] })}>It already happened: log it all the same</button>`
      : html`<button type="button" class="button main wide" onClick=${() => save('feeding', set)}>Log the feeding</button>`}`;
}

/** @type {Record<string, string>} */
const STOPS = { refuse: 'Do not offer this.', wait: 'Not yet.', hold: 'Hold it first.' };

/** @param {any} props */
function CheckForm({ colonyId, need, save }) {
  const feedings = (events.value.get(colonyId) ?? []).filter((row) => row.kind === 'feeding').slice(-4).reverse();
  const [about, setAbout] = useState(feedings[0]?.id ?? '');
  const set = about ? { feeding_id: about } : {};
  return html`${need === 'barrier' && html`<button type="button" class="button main" onClick=${() => save('check', { need: 'barrier' })}>The barrier is good</button>`}
    ${feedings.length > 0 && html`<${Choice} label="Which feeding" value=${about} onPick=${setAbout} options=${feedings.map((row) => [row.id, eventInWords(row)])} />
    <div class="wrap">${Object.entries(t.outcomes).map(([code, words]) => html`<button type="button" class="button" onClick=${() => save('check', { ...set, outcome: code })}>${words}</button>`)}
    <button type="button" class="button main" onClick=${() => save('check', { ...set, need: 'leftovers', leftovers_removed: true })}>Leftovers taken out</button></div>`}
    <button type="button" class="button" onClick=${() => save('check', { need: 'glance' })}>Looked in, all calm</button>`;
}

/** @param {any} props */
function WaterForm({ save }) {
  return html`<p class="soft">How full is the reservoir? In a lying tube a bubble floats over the water: read the end at the cotton.</p>
    <div class="wrap">${Object.entries(t.readings).map(([code, words]) => html`<button type="button" class="button" onClick=${() => save('water', { action: 'read', reading: code })}>${words}</button>`)}</div>
    <div class="wrap"><button type="button" class="button main" onClick=${() => save('water', { action: 'refill' })}>Filled up</button>
    <button type="button" class="button" onClick=${() => save('water', { action: 'new_tube' })}>New tube offered</button></div>`;
}

/** @param {any} props */
function FaultForm({ save }) {
  const [fault, setFault] = useState('leak');
  const words = catalogue.value?.words ?? {};
  return html`<${Choice} label="What is wrong" value=${fault} onPick=${setFault} options=${Object.entries(words.fault ?? {})} />
    <p class="caution">${inWords('reason', { code: fault, args: {} })}</p>
    <button type="button" class="button warn wide" onClick=${() => save('fault', { fault })}>Report it</button>`;
}

/** @param {any} props */
function CountForm({ save }) {
  const [workers, setWorkers] = useState('');
  const [larvae, setLarvae] = useState('some');
  const exact = Number(workers);
  return html`<label>Workers seen <small>(a guess is fine)</small><input inputmode="numeric" value=${workers} onInput=${(/** @type {any} */ e) => setWorkers(e.target.value)} /></label>
    <${Choice} label="Larvae" value=${larvae} onPick=${setLarvae} options=${Object.entries(t.coarse)} />
    <button type="button" class="button main wide" disabled=${workers !== '' && !(Number.isInteger(exact) && exact >= 0 && exact <= 1_000_000)} onClick=${() => save('count', { larvae, ...(workers === '' ? {} : { workers: exact }) })}>Log the count</button>`;
}

/** @param {any} props */
function MoveForm({ save }) {
  return html`<p class="soft">Offer the new tube beside the old one, darken it and light the old. Give them 1 to 4 weeks (common practice). Never shake them out unless the old one is flooded or dry.</p>
    <div class="wrap"><button type="button" class="button" onClick=${() => save('move', { how: 'offered' })}>New nest offered</button>
    <button type="button" class="button main" onClick=${() => save('move', { how: 'finished', fresh_reservoir: true })}>They have moved</button></div>`;
}

/** @param {any} props */
function NoteForm({ save }) {
  const [text, setText] = useState('');
  return html`<label>Note<textarea value=${text} maxlength="4000" onInput=${(/** @type {any} */ e) => setText(e.target.value)}></textarea></label>
    <button type="button" class="button main wide" disabled=${!text.trim()} onClick=${() => save('note', { text: text.trim() })}>Keep the note</button>`;
}
