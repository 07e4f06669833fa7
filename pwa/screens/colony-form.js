// Add or change a colony: name, species, vessel, stage, and roughly how many workers.
import { useState } from 'preact/hooks';
import { Choice } from '../components/choice.js';
import { html } from '../components/html.js';
import { uuid7 } from '../database/ids.js';
import { keep, log, say } from '../signals/actions.js';
import { go } from '../signals/route.js';
import { catalogue, rows } from '../signals/shelf.js';
import { t } from '../text/en.js';

/** @param {{colony: import('../care/overlay.js').ShownRow | null, onDone?: () => void}} props */
export function ColonyForm({ colony, onDone }) {
  const was = colony?.set ?? {};
  const vessel = rows.value.get(was.vessel_id)?.set ?? {};
  const [stage, setStage] = useState(was.stage ?? 'nanitics');
  const [condition, setCondition] = useState(was.condition ?? 'well');
  const [workers, setWorkers] = useState('few');
  const [larvae, setLarvae] = useState('some');
  const [error, setError] = useState('');
  const species = catalogue.value?.species ?? {};
  const vessels = catalogue.value?.vessels ?? {};
  const names = Object.entries(species).map(([code, s]) => [code, /** @type {any} */ (s).name]);

  /** @param {any} event */
  async function save(event) {
    event.preventDefault();
    const form = new FormData(event.target);
    const text = (/** @type {string} */ name) => String(form.get(name) ?? '').trim();
    const known = names.find(([, name]) => name === text('species'));
    const length = Number(text('length'));
    if (!text('name')) return setError('Give the colony a name.');
    const vesselId = was.vessel_id ?? uuid7();
    const id = colony?.id ?? uuid7();
    try {
      await keep('vessel', { vessel_code: text('vessel') || null, has_outworld: form.has('outworld') }, vesselId);
      await keep('colony', {
        name: text('name'), stage, condition, vessel_id: vesselId,
        ...(text('number') ? { number: Number(text('number')) } : {}),
        ...(known ? { species_code: known[0] } : text('species') ? { species_code: null, species_name: text('species') } : {}),
        ...(length ? { worker_length_mm: length } : {}),
      }, id);
      if (!colony && stage !== 'founding') await log('count', { colony_id: id, workers_coarse: workers, larvae });
      say('Saved on this phone');
      if (onDone) onDone();
      else go(`#/colony/${id}`);
    } catch (problem) {
      setError(/** @type {Error} */ (problem).message);
    }
  }

  return html`<form class="stack" onSubmit=${save}>
    <label>Name<input name="name" required maxlength="60" defaultValue=${was.name ?? ''} autocomplete="off" /></label>
    <label>Number on the vessel <small>(optional)</small><input name="number" inputmode="numeric" pattern="[0-9]*" defaultValue=${was.number ?? ''} /></label>
    <label>Species <small>from the list, or your own words</small><input name="species" list="species" autocomplete="off" defaultValue=${species[was.species_code]?.name ?? was.species_name ?? ''} /></label>
    <datalist id="species">${names.map(([, name]) => html`<option value=${name} />`)}</datalist>
    <label>Worker length in mm <small>(needed only for a species that is not in the list)</small><input name="length" inputmode="decimal" defaultValue=${was.worker_length_mm ?? ''} /></label>
    <label>Lives in<select name="vessel"><option value="">not in the list</option>${Object.keys(vessels).map((code) => html`<option value=${code} selected=${code === (vessel.vessel_code ?? 'tube_16x150')}>${catalogue.value.words.vessel[code]}</option>`)}</select></label>
    <label class="chip"><input type="checkbox" name="outworld" defaultChecked=${Boolean(vessel.has_outworld)} style=${{ width: '1.5rem', minHeight: '1.5rem' }} /> It has an outworld</label>
    <${Choice} label="Stage" options=${Object.entries(t.stages)} value=${stage} onPick=${setStage} />
    ${colony && html`<${Choice} label="Condition" options=${Object.entries(t.conditions)} value=${condition} onPick=${setCondition} />`}
    ${!colony && stage !== 'founding' && html`<${Choice} label="Workers, roughly" options=${[['few', 'Few (under 20)'], ['some', 'Some (20 to 100)'], ['many', 'Many']]} value=${workers} onPick=${setWorkers} />
      <${Choice} label="Larvae" options=${Object.entries(t.coarse)} value=${larvae} onPick=${setLarvae} />`}
    ${error && html`<p role="alert" class="caution">${error}</p>`}
    <button class="button main wide">${colony ? 'Save' : 'Add the colony'}</button>
  </form>`;
}
