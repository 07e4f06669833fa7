// The shelf: every colony with its gauges at a glance.
import { html } from '../components/html.js';
import { Icon } from '../components/icon.js';
import { Tube } from '../components/tube.js';
import { movedGauges } from '../care/round.js';
import { say } from '../care/words.js';
import { catalogue, events, planOf, rowsOf } from '../signals/shelf.js';
import { t } from '../text/en.js';

export function ShelfScreen() {
  const colonies = rowsOf('colony').sort((a, b) => (a.set.number ?? Infinity) - (b.set.number ?? Infinity) || (a.id < b.id ? -1 : 1));
  return html`<h1>The shelf</h1>
    ${colonies.map((colony) => html`<${Colony} key=${colony.id} colony=${colony} />`)}
    ${!colonies.length && html`<p class="lead">${t.round.empty_shelf}</p>`}
    <a class="button main" href="#/colony/new"><${Icon} name="add" />Add a colony</a>`;
}

/** A colony's gauges as this phone knows them. @param {string} colonyId */
export function gaugesOf(colonyId) {
  const plan = planOf(colonyId);
  if (!plan) return [];
  const fresh = (events.value.get(colonyId) ?? []).filter((e) => !e.rev || e.rev > plan.set.inputs_rev);
  return movedGauges(plan, fresh).filter((gauge) => !['glance', 'room'].includes(gauge.need));
}

/** @param {{colony: import('../care/overlay.js').ShownRow}} props */
function Colony({ colony }) {
  const words = catalogue.value?.words ?? {};
  const v = colony.set;
  const species = catalogue.value?.species?.[v.species_code]?.name ?? v.species_name ?? 'Species not given';
  return html`<article class="card">
    <div class="row">${v.number && html`<span class="number">${v.number}</span>`}<h2 class="grow"><a href=${`#/colony/${colony.id}`}>${v.name}</a></h2></div>
    <p class="soft"><em>${species}</em> · ${/** @type {any} */ (t.stages)[v.stage] ?? ''} ${v.condition && v.condition !== 'well' ? `· ${/** @type {any} */ (t.conditions)[v.condition]}` : ''}</p>
    <div class="tube-set">${gaugesOf(colony.id).map((gauge) => html`<figure><${Tube} gauge=${gauge} small /><figcaption aria-hidden="true">${say(words, 'need', gauge.need)}</figcaption></figure>`)}</div>
  </article>`;
}
