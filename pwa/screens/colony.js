// One colony: its gauges, what the plan says, the diary, and the forms to add or change it.
import { useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { Cautions, Notices, Reasons } from '../components/reasons.js';
import { SaveState } from '../components/save-state.js';
import { Tube, levelInWords } from '../components/tube.js';
import { remove } from '../signals/actions.js';
import { catalogue, events, planOf, rows } from '../signals/shelf.js';
import { t } from '../text/en.js';
import { ColonyForm } from './colony-form.js';
import { eventInWords } from './event-words.js';
import { LogSheet } from './log.js';
import { Photos } from './photos.js';
import { gaugesOf } from './shelf.js';

const SHOWN_FIRST = 30;

/** @param {{id: string}} props */
export function ColonyScreen({ id }) {
  const [sheet, setSheet] = useState('');
  const [most, setMost] = useState(SHOWN_FIRST);
  if (id === 'new') return html`<h1>A new colony</h1><${ColonyForm} colony=${null} />`;
  const colony = rows.value.get(id);
  if (!colony) return html`<h1>Not here</h1><p>This colony is not on this phone. It may have been deleted, or this phone has not synced yet.</p>`;
  if (sheet === 'edit') return html`<h1>Change ${colony.set.name}</h1><${ColonyForm} colony=${colony} onDone=${() => setSheet('')} />`;
  const plan = planOf(id);
  const log = [...(events.value.get(id) ?? [])].reverse();
  const kinds = /** @type {const} */ (['feeding', 'check', 'water', 'fault', 'count', 'move', 'note']);
  return html`<div class="row"><h1 class="grow">${colony.set.name}</h1><button type="button" class="button" onClick=${() => setSheet('edit')}>Change</button></div>
    <p class="soft"><em>${catalogue.value?.species?.[colony.set.species_code]?.name ?? colony.set.species_name ?? ''}</em> <${SaveState} state=${colony.state} /></p>
    <div class="tube-set">${gaugesOf(id).map((gauge) => html`<figure><${Tube} gauge=${gauge} /><figcaption>${levelInWords(gauge)}</figcaption></figure>`)}</div>
    ${!plan && html`<p class="soft">The plan comes with the next connection to the server. Logging works at once.</p>`}
    <section class="stack" aria-label="Log"><h2>Log</h2><div class="wrap">
      ${kinds.map((kind) => html`<button type="button" class=${`button ${kind === 'fault' ? 'warn' : kind === 'feeding' ? 'main' : ''}`} onClick=${() => setSheet(kind)}>${t.kinds[kind]}</button>`)}</div></section>
    ${plan && html`<section class="stack" aria-label="The plan"><h2>The plan</h2><${Cautions} items=${plan.set.cautions ?? []} /><${Notices} items=${plan.set.notices ?? []} />
      ${gaugesOf(id).map((gauge) => html`<details class="card"><summary>${levelInWords(gauge)}</summary><${Reasons} items=${gauge.reasons} /></details>`)}</section>`}
    <${Photos} colonyId=${id} name=${colony.set.name} />
    <section aria-label="Diary"><h2>Diary</h2><ul class="diary">${log.slice(0, most).map((row) => html`<li key=${row.id} class="row"><div class="grow"><p>${eventInWords(row)}</p>
      <p class="soft">${new Date(row.happened_ms ?? 0).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' })} ${row.by ? t.round.by(rows.value.get(row.by)?.set.name ?? '?') : ''} · <${SaveState} state=${row.state} /></p></div>
      <button type="button" class="button" aria-label=${`Void: ${eventInWords(row)}`} onClick=${() => remove(row.kind, row.id)}>Void</button></li>`)}</ul>
      ${log.length > most && html`<button type="button" class="button" onClick=${() => setMost(most + SHOWN_FIRST)}>Earlier</button>`}
      ${!log.length && html`<p class="soft">Nothing logged yet.</p>`}</section>
    ${sheet && sheet !== 'edit' && html`<${LogSheet} colonyId=${id} kind=${sheet} onClose=${() => setSheet('')} />`}`;
}
