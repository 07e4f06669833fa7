// The rarer logs: a fault with its first steps, a count, a nest move, a note.
import { useState } from 'preact/hooks';
import { Choice } from '../components/choice.js';
import { html } from '../components/html.js';
import { inWords } from '../components/reasons.js';
import { catalogue, rows, rowsOf } from '../signals/shelf.js';
import { t } from '../text/en.js';
import { m } from '../text/en-more.js';
import { capital } from './event-words.js';

const MOST_WORKERS = 1_000_000;

/** @param {any} props */
export function FaultForm({ save }) {
  const [fault, setFault] = useState('leak');
  const [near, setNear] = useState(false);
  const words = catalogue.value?.words ?? {};
  const mould = fault === 'mould' ? { mould_near_brood: near } : {};
  return html`<${Choice} label=${m.log.wrong} value=${fault} onPick=${setFault} options=${Object.entries(words.fault ?? {}).map(([code, name]) => [code, capital(/** @type {string} */ (name))])} />
    <p class="caution">${inWords('reason', { code: fault, args: {} })}</p>
    ${fault === 'mould' && html`<${Choice} label=${m.log.mould_where} value=${near ? 'near' : 'far'} onPick=${(/** @type {string} */ where) => setNear(where === 'near')} options=${Object.entries(m.log.mould)} />`}
    <button type="button" class="button main warn wide" onClick=${() => save('fault', { fault, ...mould })}>${m.log.report}</button>`;
}

/** @param {any} props */
export function CountForm({ save }) {
  const [workers, setWorkers] = useState('');
  const [brood, setBrood] = useState(/** @type {Record<string, string>} */ ({ larvae: 'some' }));
  const [more, setMore] = useState(false);
  const [males, setMales] = useState(false);
  const exact = Number(workers);
  const bad = workers !== '' && !(Number.isInteger(exact) && exact >= 0 && exact <= MOST_WORKERS);
  const of = (/** @type {string} */ name) => html`<${Choice} label=${/** @type {any} */ (m.log)[name]} value=${brood[name] ?? ''} onPick=${(/** @type {string} */ code) => setBrood({ ...brood, [name]: code })} options=${Object.entries(t.coarse)} />`;
  return html`<label>${m.log.workers} <small>${m.log.guess}</small><input inputmode="numeric" value=${workers} onInput=${(/** @type {any} */ e) => setWorkers(e.target.value)} /></label>
    ${of('larvae')}${more ? html`${of('eggs')}${of('pupae')}<label class="chip"><input type="checkbox" checked=${males} onChange=${(/** @type {any} */ e) => setMales(e.target.checked)} /> ${m.log.males_only}</label>` : html`<button type="button" class="button" onClick=${() => setMore(true)}>${m.log.more_brood}</button>`}
    <button type="button" class="button main wide" disabled=${bad} onClick=${() => save('count', { ...brood, ...(males ? { males_only: true } : {}), ...(workers === '' ? {} : { workers: exact }) })}>${m.log.count}</button>`;
}

/**
 * Brood from another colony: of the same species, or of a host where the queen is parasitic.
 * @param {any} props
 */
export function BoostForm({ colonyId, save }) {
  const mine = rows.value.get(colonyId)?.set ?? {};
  const founds = mine.founding_mode ?? catalogue.value?.species?.[mine.species_code]?.founding;
  const same = (/** @type {any} */ other) => founds === 'parasitic' || (other.species_code ? other.species_code === mine.species_code : other.species_name === mine.species_name);
  const donors = rowsOf('colony').filter((row) => row.id !== colonyId && same(row.set));
  const [donor, setDonor] = useState('');
  const [brood, setBrood] = useState('pupae');
  const [number, setNumber] = useState('');
  const n = Number(number);
  const bad = number !== '' && !(Number.isInteger(n) && n >= 1 && n <= 10_000);
  return html`<p class="caution calm">${m.log.boost_words}</p>
    <${Choice} label=${m.log.donor} value=${donor} onPick=${setDonor} options=${[...donors.map((row) => [row.id, row.set.name]), ['', m.log.from_elsewhere]]} />
    <${Choice} label=${m.log.which_brood} value=${brood} onPick=${setBrood} options=${['pupae', 'larvae', 'eggs'].map((name) => [name, /** @type {any} */ (m.log)[name]])} />
    <label>${m.log.how_many} <small>${m.form.optional}</small><input inputmode="numeric" value=${number} onInput=${(/** @type {any} */ e) => setNumber(e.target.value)} /></label>
    <button type="button" class="button main wide" disabled=${bad} onClick=${() => save('boost', { brood, ...(donor ? { donor_colony_id: donor } : {}), ...(number === '' ? {} : { number: n }) })}>${m.log.boost}</button>`;
}

/** @param {any} props */
export const MoveForm = ({ save }) => html`<p class="soft">${m.log.move_words}</p>
  <div class="wrap even"><button type="button" class="button" onClick=${() => save('move', { how: 'offered' })}>${m.log.offered}</button>
  <button type="button" class="button main" onClick=${() => save('move', { how: 'finished', fresh_reservoir: true })}>${m.log.moved}</button></div>`;

/** @param {any} props */
export function NoteForm({ save }) {
  const [text, setText] = useState('');
  return html`<label>${m.log.note}<textarea value=${text} maxlength="4000" onInput=${(/** @type {any} */ e) => setText(e.target.value)}></textarea></label>
    <button type="button" class="button main wide" disabled=${!text.trim()} onClick=${() => save('note', { text: text.trim() })}>${m.log.keep_note}</button>`;
}
