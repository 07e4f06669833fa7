// What needs a person: logs that were refused, and changes that met another phone's. Nothing is dropped by itself.
import { useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { discard, exportUnsent, mend, settle } from '../signals/actions.js';
import { conflicts, outbox, rows } from '../signals/shelf.js';
import { t } from '../text/en.js';

export function AttentionScreen() {
  const entries = outbox.value;
  const met = conflicts.value;
  return html`<h1>For your attention</h1>
    ${!entries.length && !met.length && html`<p class="lead">Everything on this phone has been sent.</p>`}
    ${met.map((each) => html`<${Met} key=${each.op_id} met=${each} />`)}
    ${entries.map((entry) => html`<${Unsent} key=${entry.op_id} entry=${entry} />`)}
    ${entries.length > 0 && html`<button type="button" class="button main" onClick=${exportUnsent}>Export all of these</button>`}`;
}

/** @param {string} name */
const fieldName = (name) => /** @type {Record<string, string>} */ (t.fields)[name] ?? name.replaceAll('_', ' ');

/** @param {unknown} value */
const shown = (value) => (value === null || value === undefined ? 'empty' : value === true ? 'yes' : value === false ? 'no' : String(value));

/** A change of this phone that met another one. @param {{met: any}} props */
function Met({ met }) {
  const lost = met.conflicts.some((/** @type {any} */ c) => c.winner === 'theirs');
  const name = rows.value.get(met.op.id)?.set.name ?? kindName(met.op.kind);
  return html`<article class="card"><h2>${name}: changed on two phones</h2>
    <ul class="stack">${met.conflicts.map((/** @type {any} */ c) => html`<li><strong>${fieldName(c.field)}</strong>: here “${shown(c.mine)}”,
      ${rows.value.get(c.by)?.set.name ?? 'another phone'} “${shown(c.theirs)}” <span class="soft">${new Date(c.at_ms).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' })}</span>.
      <br />${c.winner === 'theirs' ? 'The other one was later and stands.' : 'Yours was later and stands.'}</li>`)}</ul>
    <div class="wrap"><button type="button" class="button main" onClick=${() => settle(met, false)}>Leave it so</button>
      ${lost && html`<button type="button" class="button" onClick=${() => settle(met, true)}>Bring mine back</button>`}</div></article>`;
}

/** @param {string} kind */
const kindName = (kind) => /** @type {Record<string, string>} */ (t.kinds)[kind] ?? kind;

/** @param {{entry: import('../care/overlay.js').Entry}} props */
function Unsent({ entry }) {
  const refused = entry.state !== 'waiting';
  const args = entry.answer?.args ?? {};
  return html`<article class=${`card ${refused ? 'urgent' : ''}`}>
    <p><strong>${entry.op?.kind ? kindName(entry.op.kind) : 'Damaged entry'}</strong> · ${refused ? t.state.attention : t.state.saved}</p>
    ${entry.answer && html`<p class="caution">${args.field ? `${fieldName(args.field)}: ` : ''}${args.why ?? CODES[entry.answer.code] ?? entry.answer.code}</p>`}
    <ul class="why">${Object.entries(entry.op?.set ?? {}).map(([name, value]) => html`<li>${fieldName(name)}: ${shown(value)}</li>`)}</ul>
    ${entry.state === 'rejected' && args.field && args.field in entry.op.set && html`<${Mend} entry=${entry} field=${args.field} />`}
    ${refused && html`<button type="button" class="button warn" onClick=${() => confirm('Drop this for good? Export it first if you are not sure.') && discard(entry.op_id)}>Drop it</button>`}</article>`;
}

/** @type {Record<string, string>} */
const CODES = {
  not_allowed: 'This phone may not do this.', outside_pass: 'This lies outside the pass: another colony, or another day.',
  missing_field: 'Something is missing.', unknown_field: 'The server does not know this field.', unknown_kind: 'The server does not know this kind of log.',
  kind_differs: 'The server has something else under this id.', too_large: 'This is too long.',
  purged: 'This was deleted long ago and is not kept any more.', parent_missing: 'What this belongs to is not on the server any more.',
};

/** @param {{entry: import('../care/overlay.js').Entry, field: string}} props */
function Mend({ entry, field }) {
  const was = entry.op.set[field];
  const [value, setValue] = useState(String(was ?? ''));
  const next = typeof was === 'number' ? Number(value.replace(',', '.')) : value;
  const usable = value.trim() !== '' && !Number.isNaN(next);
  return html`<form class="stack" onSubmit=${(/** @type {any} */ e) => { e.preventDefault(); void mend(entry, field, next); }}>
    <label>${fieldName(field)}<input value=${value} onInput=${(/** @type {any} */ e) => setValue(e.target.value)} /></label>
    <button class="button main" disabled=${!usable}>Send it again</button></form>`;
}
