// The rarer logs: a fault with its first steps, a count, a nest move, a note.
import { useState } from 'preact/hooks';
import { Choice } from '../components/choice.js';
import { html } from '../components/html.js';
import { inWords } from '../components/reasons.js';
import { catalogue } from '../signals/shelf.js';
import { t } from '../text/en.js';
import { m } from '../text/en-more.js';
import { capital } from './event-words.js';

const MOST_WORKERS = 1_000_000;

/** @param {any} props */
export function FaultForm({ save }) {
  const [fault, setFault] = useState('leak');
  const words = catalogue.value?.words ?? {};
  return html`<${Choice} label=${m.log.wrong} value=${fault} onPick=${setFault} options=${Object.entries(words.fault ?? {}).map(([code, name]) => [code, capital(/** @type {string} */ (name))])} />
    <p class="caution">${inWords('reason', { code: fault, args: {} })}</p>
    <button type="button" class="button warn wide" onClick=${() => save('fault', { fault })}>${m.log.report}</button>`;
}

/** @param {any} props */
export function CountForm({ save }) {
  const [workers, setWorkers] = useState('');
  const [brood, setBrood] = useState(/** @type {Record<string, string>} */ ({ larvae: 'some' }));
  const [more, setMore] = useState(false);
  const exact = Number(workers);
  const bad = workers !== '' && !(Number.isInteger(exact) && exact >= 0 && exact <= MOST_WORKERS);
  const of = (/** @type {string} */ name) => html`<${Choice} label=${/** @type {any} */ (m.log)[name]} value=${brood[name] ?? ''} onPick=${(/** @type {string} */ code) => setBrood({ ...brood, [name]: code })} options=${Object.entries(t.coarse)} />`;
  return html`<label>${m.log.workers} <small>${m.log.guess}</small><input inputmode="numeric" value=${workers} onInput=${(/** @type {any} */ e) => setWorkers(e.target.value)} /></label>
    ${of('larvae')}${more ? html`${of('eggs')}${of('pupae')}` : html`<button type="button" class="button" onClick=${() => setMore(true)}>${m.log.more_brood}</button>`}
    <button type="button" class="button main wide" disabled=${bad} onClick=${() => save('count', { ...brood, ...(workers === '' ? {} : { workers: exact }) })}>${m.log.count}</button>`;
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
