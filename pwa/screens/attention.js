// What could not be sent: shown with its reason and content, exportable, dropped only when the person says so.
import { html } from '../components/html.js';
import { discard, exportUnsent } from '../signals/actions.js';
import { outbox } from '../signals/shelf.js';
import { t } from '../text/en.js';

export function AttentionScreen() {
  const entries = outbox.value;
  return html`<h1>Unsent logs</h1>
    ${!entries.length && html`<p class="lead">Everything on this phone has been sent.</p>`}
    ${entries.map((entry) => html`<article class=${`card ${entry.state === 'waiting' ? '' : 'urgent'}`} key=${entry.op_id}>
      <p><strong>${/** @type {any} */ (t.kinds)[entry.op?.kind] ?? entry.op?.kind ?? 'Damaged entry'}</strong> · ${entry.state === 'waiting' ? t.state.saved : t.state.attention}</p>
      ${entry.answer && html`<p class="caution">${entry.answer.args?.why ?? entry.answer.code?.replaceAll('_', ' ')} ${entry.answer.args?.field ? `(${entry.answer.args.field})` : ''}</p>`}
      <dl class="why">${Object.entries(entry.op?.set ?? {}).map(([name, value]) => html`<div><dt class="visually-hidden">${name}</dt><dd>${name.replaceAll('_', ' ')}: ${String(value)}</dd></div>`)}</dl>
      ${entry.state !== 'waiting' && html`<button type="button" class="button warn" onClick=${() => confirm('Drop this log for good? Export it first if you are not sure.') && discard(entry.op_id)}>Drop it</button>`}
    </article>`)}
    ${entries.length > 0 && html`<button type="button" class="button main" onClick=${exportUnsent}>Export all of these</button>`}`;
}
