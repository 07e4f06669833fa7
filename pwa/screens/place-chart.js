// How warm and moist a place was: two weeks, three months, a year, beside what suits those who live there.
import { useState } from 'preact/hooks';
import { Choice } from '../components/choices.js';
import { ClimateChart } from '../components/climate-chart.js';
import { Figures } from '../components/figures.js';
import { html } from '../components/html.js';
import { dayOf } from '../care/instants.js';
import { byWeek, comfortOf, daysUpTo, placeClimate } from '../care/place-climate.js';
import { now } from '../signals/clock.js';
import { useKind } from '../signals/history.js';
import { catalogue, planOf, rowsOf } from '../signals/rows.js';
import { degreeUnit, temperature, typedOf } from '../words/measures.js';
import { choicesOf, say, sayOf } from '../words/say.js';
import { fullDay } from '../words/shown.js';

/** @typedef {import('../care/place-climate.js').Measure} Measure */
/** @typedef {import('../care/place-climate.js').PlaceDay} PlaceDay */

/** @type {Record<string, number>} */
const DAYS = { days: 14, weeks: 91, year: 364 };

/** @param {{place: import('../care/overlay.js').ShownRow<'place'>}} props */
export function PlaceChart({ place }) {
  const [measure, setMeasure] = useState(/** @type {Measure} */ ('temperature'));
  const [span, setSpan] = useState('days');
  const here = rowsOf('colony').filter((colony) => colony.set.place_id === place.id);
  const days = useClimate(place, measure, DAYS[span] ?? 14);
  const drawn = span === 'year' ? byWeek(days) : days;
  return html`
    <section class="stack">
      <${Choice}
        label=${say('climate-which')}
        hideLabel
        value=${measure}
        onPick=${setMeasure}
        options=${[
          ['temperature', say('climate-temperature')],
          ['humidity', say('climate-humidity')],
        ]}
      />
      <${Choice}
        label=${say('climate-span')}
        hideLabel
        value=${span}
        onPick=${setSpan}
        options=${choicesOf('climate-span-of', ['days', 'weeks', 'year'])}
      />
      ${
        days.some((day) => day.mean !== null)
          ? html`
              <${Drawn} days=${days} drawn=${drawn} measure=${measure} colonies=${here} />
            `
          : html`
              <p class="soft">${say('climate-nothing')}</p>
            `
      }
      ${
        measure === 'temperature' &&
        here.map(
          (colony) => html`
            <${DegreeDays} key=${colony.id} colony=${colony} />
          `,
        )
      }
    </section>
  `;
}

/** @param {import('../care/overlay.js').ShownRow<'place'>} place @param {Measure} measure @param {number} count */
function useClimate(place, measure, count) {
  const mine = (/** @type {{set: {place_id?: string}}} */ row) => row.set.place_id === place.id;
  const measured = useKind('place_day').filter(mine);
  const typed = useKind('climate').filter(mine);
  const found = placeClimate({
    days: daysUpTo(dayOf(new Date(now.peek())), count),
    measured: measured.map((row) => row.set),
    typed: typed.map((row) => ({ ...row.set, on: String(row.set.happened_at).slice(0, 10) })),
    place: place.set,
    measure,
  });
  // a day that runs is not written yet, and its setting would hang on as a tail
  return measured.length && found.at(-1)?.basis === 'assumed' ? found.slice(0, -1) : found;
}

/**
 * @param {{days: PlaceDay[], drawn: PlaceDay[], measure: Measure,
 *   colonies: Array<import('../care/overlay.js').ShownRow<'colony'>>}} props
 */
function Drawn({ days, drawn, measure, colonies }) {
  const weekly = drawn.length < days.length;
  const warm = measure === 'temperature';
  const inUnit = (/** @type {number} */ value) =>
    warm ? temperature(round(value)) : say('part-percent', { percent: Math.round(value) });
  const shown = (/** @type {number} */ value) => (warm ? Number(typedOf(value)) : value);
  const ranges = warm ? colonies.flatMap((colony) => comfortRange(colony.set.species_code)) : [];
  const comfort = comfortOf(ranges);
  const words = summary(days, inUnit);
  return html`
    <p>${words}</p>
    <${ClimateChart}
      title=${sayOf('climate', measure)}
      words=${words}
      unit=${warm ? ` ${degreeUnit()}` : ' %'}
      days=${drawn}
      comfort=${comfort}
      shown=${shown}
    />
    <p class="soft">
      ${weekly ? say('climate-key-weeks') : say('climate-key')}${' '}${
        comfort
          ? say('climate-comfort', { low: temperature(comfort[0]), high: temperature(comfort[1]) })
          : ranges.length > 1
            ? say('climate-no-comfort')
            : ''
      }
    </p>
    <${Figures}
      heads=${[
        weekly ? say('climate-week') : say('climate-day'),
        say('climate-mean'),
        say('climate-low'),
        say('climate-high'),
        say('climate-basis'),
      ]}
      rows=${drawn
        .filter((day) => day.mean !== null)
        .map((day) => [
          fullDay(day.on),
          ...[day.mean, day.low, day.high].map((value) => (value === null ? '–' : inUnit(value))),
          sayOf('climate-basis', day.basis),
        ])
        .reverse()}
    />
  `;
}

/** @param {number} value */
const round = (value) => Math.round(value * 10) / 10;

/** What suits a species, in °C. @param {string | null | undefined} code @returns {Array<[number, number]>} */
function comfortRange(code) {
  const range = catalogue.value.species[code ?? '']?.temp_c;
  return range ? [range] : [];
}

/** @param {PlaceDay[]} days @param {(value: number) => string} inUnit */
function summary(days, inUnit) {
  const known = days.filter((day) => day.mean !== null);
  const told = known.filter((day) => day.basis !== 'assumed');
  const some = told.length ? told : known;
  const means = some.flatMap((day) => day.mean ?? []);
  const low = Math.min(...some.map((day) => day.low ?? day.mean ?? Infinity));
  const high = Math.max(...some.map((day) => day.high ?? day.mean ?? -Infinity));
  const mean = means.reduce((sum, value) => sum + value, 0) / means.length;
  const of_it =
    told.length === days.length
      ? say('climate-measured-all')
      : say('climate-measured', { measured: told.length, days: days.length });
  return `${say('climate-summary', { mean: inUnit(mean), low: inUnit(low), high: inUnit(high) })} ${of_it}`;
}

/**
 * The degree-days of its season, where anything of it was measured.
 * @param {{colony: import('../care/overlay.js').ShownRow<'colony'>}} props
 */
function DegreeDays({ colony }) {
  const warmth = planOf(colony.id)?.set.warmth;
  if (!warmth) return null;
  const assumed = Math.round(warmth.assumed * 100);
  const told = {
    name: colony.set.name,
    sum: warmth.degree_days,
    threshold: temperature(warmth.threshold_c),
    since: fullDay(warmth.since_on),
  };
  const words = assumed
    ? say('climate-degree-days-assumed', { ...told, percent: assumed })
    : say('climate-degree-days', told);
  return html`
    <p class="soft">${words}</p>
  `;
}
