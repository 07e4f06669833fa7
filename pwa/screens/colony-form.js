// Add or change a colony: name, species, vessel, stage, and roughly how many workers.
// Of a species that is not in the list it asks what the list would say: length, food, founding, sting.
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
  const [guild, setGuild] = useState(was.guild ?? 'omnivore');
  const [founding, setFounding] = useState(was.founding_mode ?? 'claustral');
  const [error, setError] = useState('');
  const species = catalogue.value?.species ?? {};
  const vessels = catalogue.value?.vessels ?? {};
  const names = Object.entries(species).map(([code, s]) => [code, /** @type {any} */ (s).name]);
  const [typed, setTyped] = useState(/** @type {any} */ (species)[was.species_code]?.name ?? was.species_name ?? '');
  const [lives, setLives] = useState(vessel.vessel_code ?? (colony ? '' : 'tube_16x150'));
  const codeOf = (/** @type {string} */ name) => names.find(([, known]) => known === name)?.[0];
  const own = typed.trim() !== '' && !codeOf(typed.trim());

  /** @param {any} event */
  async function save(event) {
    event.preventDefault();
    const form = new FormData(event.target);
    const text = (/** @type {string} */ name) => String(form.get(name) ?? '').trim();
    const number = (/** @type {string} */ name) => Number(text(name).replace(',', '.')) || null;
    if (!text('name')) return setError('Give the colony a name.');
    const vesselId = was.vessel_id ?? uuid7();
    const id = colony?.id ?? uuid7();
    try {
      await keep('vessel', {
        vessel_code: lives || null, has_outworld: form.has('outworld'),
        ...(lives ? {} : { bore_mm: number('bore'), length_mm: number('vessel_length') }),
      }, vesselId);
      await keep('colony', {
        name: text('name'), stage, condition, vessel_id: vesselId,
        ...(text('number') ? { number: Number(text('number')) } : {}),
        ...speciesFields(codeOf(typed.trim()), number('worker_length'), form.has('stings')),
      }, id);
      if (!colony && stage !== 'founding') await log('count', { colony_id: id, workers_coarse: workers, larvae });
      say('Saved on this phone');
      if (onDone) onDone();
      else go(`#/colony/${id}`);
    } catch (problem) {
      setError(/** @type {Error} */ (problem).message);
    }
  }

  /** @param {string | undefined} code @param {number | null} lengthMm @param {boolean} stings */
  function speciesFields(code, lengthMm, stings) {
    if (own) return { species_code: null, species_name: typed.trim(), worker_length_mm: lengthMm, guild, founding_mode: founding, stings };
    if (!code || code === was.species_code) return {};
    return { species_code: code, species_name: null, worker_length_mm: null, guild: null, founding_mode: null, stings: null };
  }

  return html`<form class="stack" onSubmit=${save}>
    <label>Name<input name="name" required maxlength="60" defaultValue=${was.name ?? ''} autocomplete="off" /></label>
    <label>Number on the vessel <small>(optional)</small><input name="number" inputmode="numeric" pattern="[0-9]*" defaultValue=${was.number ?? ''} /></label>
    <label>Species <small>from the list, or your own words</small><input name="species" list="species" autocomplete="off" value=${typed} onInput=${(/** @type {any} */ event) => setTyped(event.target.value)} /></label>
    <datalist id="species">${names.map(([, name]) => html`<option value=${name} />`)}</datalist>
    ${own && html`<div role="group" aria-label="Your own species" class="stack">
      <label>Worker length in mm <small>not in our list: the plan goes by this</small><input name="worker_length" inputmode="decimal" defaultValue=${was.worker_length_mm ?? ''} /></label>
      <${Choice} label="It eats" options=${Object.entries(t.guilds)} value=${guild} onPick=${setGuild} />
      <${Choice} label="Its queen founds" options=${Object.entries(t.foundings)} value=${founding} onPick=${setFounding} />
      <label class="chip"><input type="checkbox" name="stings" defaultChecked=${Boolean(was.stings)} style=${{ width: '1.5rem', minHeight: '1.5rem' }} /> It stings</label>
    </div>`}
    <label>Lives in<select name="vessel" onChange=${(/** @type {any} */ event) => setLives(event.target.value)}><option value="" selected=${!lives}>not in the list</option>${Object.keys(vessels).map((code) => html`<option value=${code} selected=${code === lives}>${catalogue.value.words.vessel[code]}</option>`)}</select></label>
    ${!lives && html`<div role="group" aria-label="Your own vessel" class="stack">
      <label>Inner width or bore in mm <small>(optional)</small><input name="bore" inputmode="decimal" defaultValue=${vessel.bore_mm ?? ''} /></label>
      <label>Length in mm <small>(optional)</small><input name="vessel_length" inputmode="decimal" defaultValue=${vessel.length_mm ?? ''} /></label>
    </div>`}
    <label class="chip"><input type="checkbox" name="outworld" defaultChecked=${Boolean(vessel.has_outworld)} style=${{ width: '1.5rem', minHeight: '1.5rem' }} /> It has an outworld</label>
    <${Choice} label="Stage" options=${Object.entries(t.stages)} value=${stage} onPick=${setStage} />
    ${colony && html`<${Choice} label="Condition" options=${Object.entries(t.conditions)} value=${condition} onPick=${setCondition} />`}
    ${!colony && stage !== 'founding' && html`<${Choice} label="Workers, roughly" options=${[['few', 'Few (under 20)'], ['some', 'Some (20 to 100)'], ['many', 'Many']]} value=${workers} onPick=${setWorkers} />
      <${Choice} label="Larvae" options=${Object.entries(t.coarse)} value=${larvae} onPick=${setLarvae} />`}
    ${error && html`<p role="alert" class="caution">${error}</p>`}
    <button class="button main wide">${colony ? 'Save' : 'Add the colony'}</button>
  </form>`;
}
