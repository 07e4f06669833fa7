// Places: cabinet, room, cellar, fridge. Colonies share them; their warmth and dryness move every plan.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice } from '../components/choices.js';
import { numberOf, textsOf } from '../components/forms.js';
import { html } from '../components/html.js';
import { lazy } from '../components/lazy.js';
import { Empty } from '../components/states.js';
import { changeFrom, log, tell, write } from '../signals/actions.js';
import { useKind } from '../signals/history.js';
import { rowsOf } from '../signals/rows.js';
import { PLACE_TYPES } from '../care/codes.js';
import { degreeUnit, storedOf, temperature, typedOf } from '../words/measures.js';
import { choicesOf, say, sayIf } from '../words/say.js';
import { listed, moment } from '../words/shown.js';

const PlaceChart = lazy(() => import('./place-chart.js'), 'PlaceChart', 'charts');
const Sensors = lazy(() => import('../components/sensors.js'), 'Sensors', 'online');

export function PlacesScreen() {
  const [adding, setAdding] = useState(false);
  const places = rowsOf('place');
  const readings = useKind('climate');
  return html`
    <h1>${say('place-title')}</h1>
    <p class="soft">${say('place-about')}</p>
    ${
      !places.length &&
      !adding &&
      html`
        <${Empty} bare title=${say('place-empty')} />
      `
    }
    ${places.map(
      (place) => html`
        <${Place} key=${place.id} place=${place} last=${readings.find((row) => row.set.place_id === place.id)} />
      `,
    )}
    ${
      adding
        ? html`
            <section class="card">
              <h2>${say('place-add')}</h2>
              <${PlaceForm} place=${null} onDone=${() => setAdding(false)} />
            </section>
          `
        : html`
            <button type="button" class="button main wide" onClick=${() => setAdding(true)}>${say('place-add')}</button>
          `
    }
  `;
}

/** @typedef {import('../care/overlay.js').ShownRow<'place'>} PlaceRow */

/** @param {{place: PlaceRow, last?: import('../care/overlay.js').ShownRow<'climate'>}} props */
function Place({ place, last }) {
  const [open, setOpen] = useState('');
  const v = place.set;
  const here = rowsOf('colony')
    .filter((colony) => colony.set.place_id === place.id)
    .map((colony) => colony.set.name);
  const facts = [
    sayIf('place-type', v.place_type),
    v.day_temp_c != null ? say('place-day', { warm: temperature(v.day_temp_c) }) : '',
    v.night_temp_c != null ? say('place-night', { warm: temperature(v.night_temp_c) }) : '',
    v.humidity_pct != null ? say('place-moist', { percent: v.humidity_pct }) : '',
  ]
    .filter(Boolean)
    .join(' · ');
  const read =
    last &&
    [
      last.set.temperature_c != null ? temperature(last.set.temperature_c) : '',
      last.set.humidity_pct != null ? say('place-moist', { percent: last.set.humidity_pct }) : '',
    ]
      .filter(Boolean)
      .join(', ');
  return html`
    <article class="card">
      <h2>${v.name}</h2>
      ${
        facts &&
        html`
          <p class="soft">${facts}</p>
        `
      }
      ${
        read &&
        html`
          <p class="soft">${say('place-last', { what: read, when: moment(last.happened_ms ?? 0) })}</p>
        `
      }
      <p>${here.length ? listed(here) : say('place-nobody')}</p>
      ${
        open === '' &&
        html`
          <div class="wrap even">
            <button type="button" class="button" onClick=${() => setOpen('reading')}>${say('place-reading')}</button>
            <button type="button" class="button" onClick=${() => setOpen('change')}>${say('place-change')}</button>
            <button type="button" class="button" onClick=${() => setOpen('sensors')}>${say('place-sensors')}</button>
            <button type="button" class="button" onClick=${() => setOpen('chart')}>${say('place-chart')}</button>
          </div>
        `
      }
      ${
        open === 'change' &&
        html`
          <${PlaceForm} place=${place} onDone=${() => setOpen('')} />
        `
      }
      ${
        (open === 'sensors' || open === 'chart') &&
        html`
          ${
            open === 'chart'
              ? html`
                  <${PlaceChart} place=${place} />
                `
              : html`
                  <${Sensors} placeId=${place.id} />
                `
          }
          <button type="button" class="button" onClick=${() => setOpen('')}>${say('place-close')}</button>
        `
      }
      ${
        open === 'reading' &&
        html`
          <${ReadingForm} place=${place} onDone=${() => setOpen('')} />
        `
      }
    </article>
  `;
}

/** @param {number | null} value @param {number} low @param {number} high */
const outside = (value, low, high) => value !== null && !(value >= low && value <= high);

/** @param {{place: PlaceRow | null, onDone: () => void}} props */
function PlaceForm({ place, onDone }) {
  const [opened] = useState(place);
  const was = /** @type {Partial<import('../kinds.d.ts').Place>} */ (opened?.set ?? {});
  const [type, setType] = useState(was.place_type ?? (place ? null : 'room'));
  const form = useAttempt();
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    const day_temp_c = storedOf(numberOf(text('day')), was.day_temp_c);
    const night_temp_c = storedOf(numberOf(text('night')), was.night_temp_c);
    const humidity_pct = numberOf(text('moist'));
    if (outside(day_temp_c, -10, 45) || outside(night_temp_c, -10, 45)) {
      return form.refuse(say('place-bad-temp', { unit: degreeUnit() }));
    }
    if (outside(humidity_pct, 0, 100)) return form.refuse(say('place-bad-moist'));
    return form.attempt(async () => {
      const set = { name: text('name'), place_type: type, day_temp_c, night_temp_c, humidity_pct };
      await write([changeFrom('place', opened, set)]);
      tell(say('saving-saved'));
      onDone();
    });
  }
  return html`
    <form class="stack" onSubmit=${save}>
      <label>
        ${say('place-name')}
        <input name="name" required maxlength="60" defaultValue=${was.name ?? ''} autocomplete="off" />
      </label>
      <${Choice}
        label=${say('place-type')}
        options=${choicesOf('place-type', PLACE_TYPES)}
        value=${type}
        onPick=${setType}
      />
      <div class="pair">
        <label>
          ${say('place-day-temp', { unit: degreeUnit() })}
          <input name="day" inputmode="decimal" defaultValue=${typedOf(was.day_temp_c)} />
        </label>
        <label>
          ${say('place-night-temp', { unit: degreeUnit() })}
          <input name="night" inputmode="decimal" defaultValue=${typedOf(was.night_temp_c)} />
        </label>
      </div>
      <label>
        ${say('place-humidity')}${' '}
        <small>${say('colony-form-optional')}</small>
        <input name="moist" inputmode="decimal" defaultValue=${was.humidity_pct ?? ''} />
      </label>
      ${form.said}
      <button class="button main wide" disabled=${form.busy}>${say('colony-form-save')}</button>
    </form>
  `;
}

/** @param {{place: PlaceRow, onDone: () => void}} props */
function ReadingForm({ place, onDone }) {
  const form = useAttempt();
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    const temperature_c = storedOf(numberOf(text('temperature')));
    const humidity_pct = numberOf(text('moist'));
    if (temperature_c === null && humidity_pct === null) return form.refuse(say('place-nothing'));
    if (outside(temperature_c, -20, 80)) return form.refuse(say('place-bad-temp', { unit: degreeUnit() }));
    if (outside(humidity_pct, 0, 100)) return form.refuse(say('place-bad-moist'));
    return form.attempt(async () => {
      await log('climate', {
        place_id: place.id,
        ...(temperature_c === null ? {} : { temperature_c }),
        ...(humidity_pct === null ? {} : { humidity_pct }),
      });
      tell(say('saving-saved'));
      onDone();
    });
  }
  return html`
    <form class="stack" onSubmit=${save}>
      <div class="pair">
        <label>
          ${say('place-temperature', { unit: degreeUnit() })}
          <input name="temperature" inputmode="decimal" />
        </label>
        <label>
          ${say('place-humidity')}
          <input name="moist" inputmode="decimal" />
        </label>
      </div>
      ${form.said}
      <button class="button main wide" disabled=${form.busy}>${say('place-log')}</button>
    </form>
  `;
}
