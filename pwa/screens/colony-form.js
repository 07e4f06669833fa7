// Add or change a colony: name, species, stage and roughly how many workers; the rest has good defaults.
// Longer than 300 lines because adding and changing a colony are one form.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice } from '../components/choices.js';
import { formOf, numberOf, textsOf, typed } from '../components/forms.js';
import { html } from '../components/html.js';
import { uuid7 } from '../database/ids.js';
import { changeFrom, eventOf, tell, write } from '../signals/actions.js';
import { go } from '../signals/route.js';
import { today } from '../signals/clock.js';
import { catalogue, rows, rowsOf } from '../signals/rows.js';
import { COARSE, CONDITIONS, FOUNDING_MODES, GUILDS, STAGES } from '../care/codes.js';
import { hear } from '../words/fetched.js';
import { choicesOf, say, sayIf, sayOf } from '../words/say.js';
import { capital } from '../words/shown.js';

const USUAL_VESSEL = 'tube_16x150';

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'> | null, onDone?: () => void}} props */
export function ColonyForm({ colony, onDone }) {
  // as they were when the form was opened, whatever comes by a sync meanwhile
  const [opened] = useState(colony);
  const was = /** @type {Partial<import('../kinds.d.ts').Colony>} */ (opened?.set ?? {});
  const [held] = useState(
    () =>
      /** @type {import('../care/overlay.js').ShownRow<'vessel'> | undefined} */ (rows.peek().get(was.vessel_id ?? '')),
  );
  const vessel = /** @type {Partial<import('../kinds.d.ts').Vessel>} */ (held?.set ?? {});
  // once a form: what is tried again after a full disk is the same colony
  const [[id, vessel_id, photoId, countId]] = useState(
    /** @returns {[string, string, string, string]} */
    () => [colony?.id ?? uuid7(), was.vessel_id ?? uuid7(), uuid7(), uuid7()],
  );
  const species = catalogue.value?.species ?? {};
  const vessels = catalogue.value?.vessels ?? {};
  const names = choicesOf('species', Object.keys(species));
  const [stage, setStage] = useState(was.stage ?? (colony ? null : 'nanitics'));
  const [condition, setCondition] = useState(was.condition);
  const [workers, setWorkers] = useState(/** @type {import('../kinds.d.ts').Coarse} */ ('few'));
  const [larvae, setLarvae] = useState(/** @type {import('../kinds.d.ts').Coarse} */ ('some'));
  const [wanted, setWanted] = useState(sayIf('species', was.species_code) || (was.species_name ?? ''));
  const [guild, setGuild] = useState(was.guild ?? 'omnivore');
  const [founding, setFounding] = useState(was.founding_mode ?? 'claustral');
  const [lives, setLives] = useState(vessel.vessel_code ?? (colony ? '' : USUAL_VESSEL));
  const places = rowsOf('place');
  const form = useAttempt();
  const known = names.find(([, name]) => name.toLowerCase() === wanted.trim().toLowerCase());
  const founds = known ? species[known[0]]?.founding : founding;
  // the days of a rest that is over are not those of the next
  const rest = /** @type {typeof was} */ (was.condition === 'resting' ? was : { resting_since: today.value });

  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    const number = (/** @type {string} */ name) => numberOf(text(name)) || null;
    const data = new FormData(formOf(event));
    // what is not asked for now stays as it is
    const said = (/** @type {string} */ name) => (data.has(name) ? text(name) || null : undefined);
    if (!text('name')) return form.refuse(say('colony-form-needed'));
    const first = !rowsOf('colony').length;
    const picture = data.get('helper_photo');
    return form.attempt(async () => {
      // first, so that nothing is kept by halves where the picture cannot be read
      const taking = picture instanceof File && picture.size ? await import('./taking.js') : null;
      if (taking) await hear('counting');
      const small = await taking?.smallOf(/** @type {File} */ (picture));
      const shot = small && (await taking?.keepBlob(photoId, id, small));
      const home = {
        vessel_code: lives || null,
        has_outworld: data.has('outworld'),
        bore_mm: lives ? null : number('bore'),
        length_mm: lives ? null : number('vessel_length'),
      };
      const set = {
        name: text('name'),
        stage,
        condition,
        vessel_id,
        number: number('number'),
        place_id: said('place'),
        came_from: said('came_from'),
        resting_since: said('rests_since'),
        condition_until: said('wakes_on'),
        went_to: said('went_to'),
        died_of: said('died_of'),
        host_species_code: said('host'),
        helper_hint: said('helper_hint'),
        helper_photo_id: shot?.id,
        ...speciesFields(number('worker_length'), data.has('stings')),
      };
      const counted = { colony_id: id, workers_coarse: workers, larvae };
      await write(
        [
          changeFrom('vessel', held, home, vessel_id),
          changeFrom('colony', opened, set, id),
          shot,
          !colony && stage !== 'founding' && eventOf('count', counted, countId),
        ].filter((each) => !!each),
      );
      tell(say('saving-saved'));
      if (onDone) onDone();
      else go(first ? `#/welcome/${id}` : `#/colony/${id}`);
    });
  }

  /**
   * What the list says of a species, or what the keeper says of one of their own.
   * @param {number | null} lengthMm
   * @param {boolean} stings
   */
  function speciesFields(lengthMm, stings) {
    if (known && known[0] === was.species_code) return {};
    const own = known ? '' : wanted.trim();
    return {
      species_code: known?.[0] ?? null,
      species_name: own || null,
      worker_length_mm: own ? lengthMm : null,
      guild: own ? guild : null,
      founding_mode: own ? founding : null,
      stings: own ? stings : null,
    };
  }

  return html`
    <form class="stack" onSubmit=${save}>
      <label>
        ${say('colony-form-name')}
        <input name="name" required maxlength="60" defaultValue=${was.name ?? ''} autocomplete="off" />
      </label>
      <label>
        ${say('colony-form-species')}${' '}
        <small>${say('colony-form-species-hint')}</small>
        <input name="species" list="species" autocomplete="off" value=${wanted} onInput=${typed(setWanted)} />
      </label>
      <datalist id="species">
        ${names.map(
          ([code, name]) => html`
            <option value=${name}>${sayIf('species', code, 'common')}</option>
          `,
        )}
      </datalist>
      ${
        known &&
        species[known[0]]?.stings &&
        html`
          <p class="caution" role="status">${say('colony-form-stings')}</p>
        `
      }
      ${
        wanted.trim() &&
        !known &&
        html`
          <div role="group" aria-label=${say('colony-form-own-species')} class="stack">
            <label>
              ${say('colony-form-length')}${' '}
              <small>${say('colony-form-length-hint')}</small>
              <input name="worker_length" inputmode="decimal" defaultValue=${was.worker_length_mm ?? ''} />
            </label>
            <${Choice}
              label=${say('colony-form-own-eats')}
              options=${choicesOf('colony-form-own-guild', GUILDS)}
              value=${guild}
              onPick=${setGuild}
            />
            <${Choice}
              label=${say('colony-form-own-founds')}
              options=${choicesOf('colony-form-own-founding', FOUNDING_MODES)}
              value=${founding}
              onPick=${setFounding}
            />
            <label class="chip">
              <input type="checkbox" name="stings" defaultChecked=${Boolean(was.stings)} />
              ${' '}${say('colony-form-own-stings')}
            </label>
          </div>
        `
      }
      <${Choice}
        label=${say('colony-form-stage')}
        options=${choicesOf('colony-stage', STAGES)}
        value=${stage}
        onPick=${setStage}
      />
      ${
        colony &&
        html`
          <${Choice}
            label=${say('colony-form-condition')}
            options=${choicesOf('colony-condition', CONDITIONS)}
            value=${condition ?? 'well'}
            onPick=${setCondition}
          />
        `
      }
      ${
        colony &&
        condition === 'resting' &&
        html`
          <div class="pair">
            <label>
              ${say('colony-form-fate-rests-since')}
              <input name="rests_since" type="date" defaultValue=${rest.resting_since ?? ''} />
            </label>
            <label>
              ${say('colony-form-fate-wakes-on')}${' '}
              <small>${say('colony-form-optional')}</small>
              <input name="wakes_on" type="date" defaultValue=${rest.condition_until ?? ''} />
            </label>
          </div>
        `
      }
      ${
        colony &&
        condition === 'given_away' &&
        html`
          <label>
            ${say('colony-form-fate-went-to')}
            <input name="went_to" maxlength="200" defaultValue=${was.went_to ?? ''} />
          </label>
        `
      }
      ${
        colony &&
        condition === 'dead' &&
        html`
          <label>
            ${say('colony-form-fate-died-of')}
            <input name="died_of" maxlength="200" defaultValue=${was.died_of ?? ''} />
          </label>
        `
      }
      ${
        !colony &&
        stage !== 'founding' &&
        html`
          <${Choice}
            label=${say('colony-form-roughly')}
            options=${[
              ['few', say('colony-form-few')],
              ['some', say('colony-form-some')],
              ['many', say('colony-form-many')],
            ]}
            value=${workers}
            onPick=${setWorkers}
          />
          <${Choice}
            label=${say('colony-form-larvae')}
            options=${choicesOf('event-coarse', COARSE)}
            value=${larvae}
            onPick=${setLarvae}
          />
        `
      }
      <details open=${Boolean(colony)}>
        <summary>${say('colony-form-more')}</summary>
        <label>
          ${say('colony-form-lives')}
          <select name="vessel" onChange=${typed(setLives)}>
            <option value="" selected=${!lives}>${say('colony-form-not-listed')}</option>
            ${Object.keys(vessels).map(
              (code) => html`
                <option value=${code} selected=${code === lives}>${capital(sayOf('vessel', code))}</option>
              `,
            )}
          </select>
        </label>
        ${
          !lives &&
          html`
            <div role="group" aria-label=${say('colony-form-own-vessel')} class="stack">
              <label>
                ${say('colony-form-own-bore')}${' '}
                <small>${say('colony-form-optional')}</small>
                <input name="bore" inputmode="decimal" defaultValue=${vessel.bore_mm ?? ''} />
              </label>
              <label>
                ${say('colony-form-own-vessel-length')}${' '}
                <small>${say('colony-form-optional')}</small>
                <input name="vessel_length" inputmode="decimal" defaultValue=${vessel.length_mm ?? ''} />
              </label>
            </div>
          `
        }
        <label class="chip">
          <input type="checkbox" name="outworld" defaultChecked=${Boolean(vessel.has_outworld)} />
          ${' '}${say('colony-form-outworld')}
        </label>
        <label>
          ${say('place-stands')}
          <select name="place">
            <option value="">${places.length ? say('place-nowhere') : say('place-none-yet')}</option>
            ${places.map(
              (place) => html`
                <option value=${place.id} selected=${place.id === was.place_id}>${place.set.name}</option>
              `,
            )}
          </select>
        </label>
        ${
          founds === 'parasitic' &&
          html`
            <label>
              ${say('colony-form-fate-host')}
              <input name="host" list="species" maxlength="60" defaultValue=${was.host_species_code ?? ''} />
            </label>
          `
        }
        <label>
          ${say('colony-form-fate-came-from')}${' '}
          <small>${say('colony-form-optional')}</small>
          <input name="came_from" maxlength="200" defaultValue=${was.came_from ?? ''} />
        </label>
        <label>
          ${say('colony-form-number')}${' '}
          <small>${say('colony-form-optional')}</small>
          <input name="number" inputmode="numeric" pattern="[0-9]*" defaultValue=${was.number ?? ''} />
        </label>
      </details>
      <details open=${Boolean(was.helper_hint || was.helper_photo_id)}>
        <summary>${say('stand-in-hint')}</summary>
        <p class="soft">${say('stand-in-hint-about')}</p>
        <label>
          ${say('stand-in-hint')}${' '}
          <small>${say('stand-in-hint-example')}</small>
          <textarea name="helper_hint" maxlength="300" rows="2" defaultValue=${was.helper_hint ?? ''}></textarea>
        </label>
        <label>
          ${say('stand-in-hint-picture')}
          <input name="helper_photo" type="file" accept="image/*" />
        </label>
      </details>
      ${form.said}
      <button class="button main wide" disabled=${form.busy}>
        ${colony ? say('colony-form-save') : say('colony-form-add')}
      </button>
    </form>
  `;
}
