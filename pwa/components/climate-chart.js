// Warmth or humidity over days: a shade from the least to the most, the mean as a line, dashed where it is assumed.
import { BOTTOM, HEIGHT, LEFT, RIGHT, TOP, WIDTH, Axes } from './chart.js';
import { html } from './html.js';

/** @typedef {import('../care/place-climate.js').PlaceDay} PlaceDay */
/** @typedef {[number, number]} Point instant in ms, value */

const STEPS = [1, 2, 5, 10, 20];
const MOST_STEPS = 5;
const LEAST_RANGE = 6;
/** From so few points on each gets a dot. */
const DOTS = 32;

/**
 * Round steps from under the least to over the most, and no less than `LEAST_RANGE`: a tenth of a degree is no peak.
 * @param {number} least @param {number} most @returns {number[]}
 */
export function ticksBetween(least, most) {
  const more = Math.max(0, LEAST_RANGE - (most - least)) / 2;
  const [low, high] = [least - more, most + more];
  const step = STEPS.find((each) => Math.ceil(high / each) - Math.floor(low / each) <= MOST_STEPS) ?? 50;
  const first = Math.floor(low / step);
  const last = Math.max(first + 1, Math.ceil(high / step));
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}

/**
 * Runs of neighbours of which all are, or are not, assumed. A dashed run reaches to its neighbours, so that no gap is
 * left. @param {PlaceDay[]} days @returns {Array<{assumed: boolean, days: PlaceDay[]}>}
 */
export function runsOf(days) {
  const known = days.filter((day) => day.mean !== null);
  /** @type {Array<{assumed: boolean, days: PlaceDay[]}>} */
  const runs = [];
  for (const [i, day] of known.entries()) {
    const assumed = day.basis === 'assumed';
    const last = runs.at(-1);
    const before = known[i - 1];
    if (last && last.assumed === assumed) last.days.push(day);
    else {
      if (last?.assumed) last.days.push(day);
      runs.push({ assumed, days: assumed && before ? [before, day] : [day] });
    }
  }
  return runs;
}

/**
 * @param {{title: string, words: string, unit: string, days: PlaceDay[], comfort: [number, number] | null,
 *   shown: (value: number) => number}} props `shown`: a stored value in the unit of the axis
 */
export function ClimateChart({ title, words, unit, days, comfort, shown }) {
  const values = days.flatMap((day) => [day.mean ?? [], day.low ?? [], day.high ?? []].flat());
  const ticks = ticksBetween(
    Math.min(...[...values, ...(comfort ?? [])].map(shown)),
    Math.max(...[...values, ...(comfort ?? [])].map(shown)),
  );
  const [least = 0, most = 1] = [ticks[0], ticks.at(-1)];
  const from = Date.parse(days[0]?.on ?? '');
  const to = Math.max(from + 1, Date.parse(days.at(-1)?.on ?? ''));
  const x = (/** @type {PlaceDay} */ day) =>
    LEFT + ((Date.parse(day.on) - from) / (to - from)) * (WIDTH - LEFT - RIGHT);
  const at = (/** @type {number} */ value) =>
    HEIGHT - BOTTOM - ((value - least) / (most - least)) * (HEIGHT - TOP - BOTTOM);
  const y = (/** @type {number} */ stored) => at(shown(stored));
  const path = (/** @type {PlaceDay[]} */ some, /** @type {'mean' | 'low' | 'high'} */ which) =>
    some.map((day, i) => `${i ? 'L' : 'M'}${x(day).toFixed(1)} ${y(day[which] ?? day.mean ?? 0).toFixed(1)}`).join('');
  const runs = runsOf(days);
  const dots = days.filter((day) => day.mean !== null && (day.basis === 'typed' || days.length <= DOTS));
  return html`
    <svg class="chart need-sugar" viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label=${`${title}. ${words}`}>
      ${
        comfort &&
        html`
          <rect
            class="trough"
            x=${LEFT}
            width=${WIDTH - LEFT - RIGHT}
            y=${y(comfort[1])}
            height=${y(comfort[0]) - y(comfort[1])}
          />
        `
      }
      <${Axes} ticks=${ticks} y=${at} unit=${unit} from=${from} to=${to} />
      ${runs.map(({ assumed, days: run }) =>
        assumed
          ? html`
              <path class="line guess" d=${path(run, 'mean')} />
            `
          : html`
              <path class="band" d=${`${path(run, 'low')}${path([...run].reverse(), 'high').replace('M', 'L')}Z`} />
              <path class="line" d=${path(run, 'mean')} />
            `,
      )}
      ${dots
        .filter((day) => day.basis !== 'assumed')
        .map(
          (day) => html`
            <circle class="dot" cx=${x(day)} cy=${y(day.mean ?? 0)} r="2.6" />
          `,
        )}
    </svg>
  `;
}
