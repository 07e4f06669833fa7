// One colony: its gauges, logging, what the plan says, its charts and its diary.
import { useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { Icon } from '../components/icon.js';
import { SaveState } from '../components/save-state.js';
import { Sheet } from '../components/sheet.js';
import { Tube, dueInWords, percentOf } from '../components/tube.js';
import { dueAtMs } from '../care/gauges.js';
import { say } from '../care/words.js';
import { gaugesOf } from '../signals/gauges.js';
import { catalogue, planOf, rows } from '../signals/shelf.js';
import { runningTasting } from '../signals/tastings.js';
import { t } from '../text/en.js';
import { m } from '../text/en-more.js';
import { ColonyForm } from './colony-form.js';
import { Diary } from './diary.js';
import { Lazy } from './lazy.js';
import { LogSheet } from './log.js';
import { Photos } from './photos.js';
import { Plan } from './plan.js';
import { speciesOf } from './shelf.js';

const KINDS = /** @type {const} */ (['feeding', 'water', 'check', 'count', 'note', 'move', 'boost', 'fault']);

/** @param {{id: string}} props */
export function ColonyScreen({ id }) {
  const [sheet, setSheet] = useState('');
  const [charts, setCharts] = useState(false);
  const [tasting, setTasting] = useState(Boolean(runningTasting(id)));
  if (id === 'new') return html`<h1>${m.colony.new}</h1><${ColonyForm} colony=${null} />`;
  const colony = rows.value.get(id);
  if (!colony) return html`<h1>${m.colony.gone}</h1><p>${m.colony.gone_why}</p>`;
  const v = colony.set;
  if (sheet === 'edit') return html`<h1>${m.form.change(v.name)}</h1><${ColonyForm} colony=${colony} onDone=${() => setSheet('')} />`;
  const words = catalogue.value?.words ?? {};
  const stage = /** @type {any} */ (t.stages)[v.stage] ?? '';
  return html`<div class="title">${v.number && html`<span class="number">${v.number}</span>`}<h1>${v.name}</h1><button type="button" class="button" onClick=${() => setSheet('edit')}>${m.colony.change}</button></div>
    <p class="soft"><em>${speciesOf(v)}</em> · ${stage} · <${SaveState} state=${colony.state} /></p>
    <div class="tube-set wide">${gaugesOf(id).map((gauge) => html`<figure key=${gauge.need}><${Tube} gauge=${gauge} /><figcaption aria-hidden="true"><strong>${say(words, 'need', gauge.need)} ${percentOf(gauge)} %</strong>${dueInWords(dueAtMs(gauge))}</figcaption></figure>`)}</div>
    <section class="stack" aria-label=${m.colony.log}><h2>${m.colony.log}</h2><div class="log-bar">
      ${KINDS.map((kind) => html`<button type="button" class=${`button ${kind === 'fault' ? 'warn' : kind === 'feeding' ? 'main' : ''}`} onClick=${() => setSheet(kind)}><${Icon} name=${kind} />${t.kinds[kind]}</button>`)}</div></section>
    ${planOf(id) ? html`<${Plan} colony=${colony} />` : html`<p class="soft">${m.colony.no_plan}</p>`}
    <details onToggle=${(/** @type {any} */ e) => setCharts(e.target.open)}><summary><h2>${m.colony.charts}</h2></summary>${charts && html`<${Lazy} from="charts" name="Charts" props=${{ colony }} />`}</details>
    <details open=${tasting} onToggle=${(/** @type {any} */ e) => setTasting(e.target.open)}><summary><h2>${m.tasting.title}</h2></summary>${tasting && html`<${Lazy} from="tasting" name="Tasting" props=${{ colony }} />`}</details>
    <${Photos} colonyId=${id} name=${v.name} />
    <${Diary} colonyId=${id} />
    <div class="wrap even"><a class="button" href=${`#/paper/${id}`}><${Icon} name="print" />${m.colony.paper}</a>
      <button type="button" class="button" onClick=${() => setSheet('past')}>${m.colony.past}</button></div>
    ${sheet === 'past' ? html`<${Sheet} title=${`${m.past.title}: ${v.name}`} onClose=${() => setSheet('')}><${Lazy} from="past" name="Past" props=${{ row: colony }} /></${Sheet}>` : sheet && html`<${LogSheet} colonyId=${id} kind=${sheet} onClose=${() => setSheet('')} />`}`;
}
