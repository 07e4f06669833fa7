// A small chart in SVG: lines, a band and a due line, or bars by week; always with its table behind it.
import { html } from './html.js';
import { shortDay } from '../words/shown.js';

export const WIDTH = 340;
export const HEIGHT = 190;
export const LEFT = 38;
export const RIGHT = 8;
export const TOP = 10;
export const BOTTOM = 26;
const TICKS = 4;

/** Round steps for an axis from 0 to at least `most`. @param {number} most @returns {number[]} */
export function niceTicks(most) {
  const rough = Math.max(most, 1e-9) / TICKS;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((each) => each * power >= rough) ?? 10) * power;
  return Array.from({ length: Math.ceil(most / step) + 1 }, (_, i) => Math.round(i * step * 1e6) / 1e6);
}

/**
 * @typedef {[number, number]} Point instant in ms, value
 * @param {{title: string, words: string, unit: string, need: string, points: Point[], guess?: Point[],
 *   band?: {low: Point[], high: Point[]}, due?: number | null, behind?: Point[]}} props `behind`: a quiet shape behind
 *   the lines, its values shares of the height
 */
export function LineChart({ title, words, unit, need, points, guess = [], band, due = null, behind = [] }) {
  const all = [...points, ...guess, ...(band ? [...band.low, ...band.high] : [])];
  const from = Math.min(...all.map(([ms]) => ms));
  const to = Math.max(...all.map(([ms]) => ms), from + 1);
  const ticks = niceTicks(Math.max(...all.map(([, value]) => value), due ?? 0));
  const most = ticks.at(-1) ?? 1;
  const x = (/** @type {number} */ ms) => LEFT + ((ms - from) / (to - from)) * (WIDTH - LEFT - RIGHT);
  const y = (/** @type {number} */ value) => HEIGHT - BOTTOM - (value / most) * (HEIGHT - TOP - BOTTOM);
  const path = (/** @type {Point[]} */ some) =>
    some.map(([ms, value], i) => `${i ? 'L' : 'M'}${x(ms).toFixed(1)} ${y(value).toFixed(1)}`).join('');
  const shape = (/** @type {Point[]} */ some) => {
    const [left, right] = [some[0]?.[0] ?? from, some.at(-1)?.[0] ?? to].map((ms) => x(ms).toFixed(1));
    return `${path(some.map(([ms, share]) => [ms, share * most]))}L${right} ${y(0)}L${left} ${y(0)}Z`;
  };
  return html`
    <svg
      class=${`chart need-${need}`}
      viewBox=${`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label=${`${title}. ${words}`}
    >
      ${
        behind.length > 1 &&
        html`
          <path class="trough" d=${shape(behind)} />
        `
      }
      <${Axes} ticks=${ticks} y=${y} unit=${unit} from=${from} to=${to} />
      ${
        band &&
        html`
          <path class="band" d=${`${path(band.low)}${path([...band.high].reverse()).replace('M', 'L')}Z`} />
        `
      }
      ${
        due !== null &&
        html`
          <path class="due" d=${`M${LEFT} ${y(due)}H${WIDTH - RIGHT}`} />
        `
      }
      <path class="line" d=${path(points)} />
      ${
        guess.length > 1 &&
        html`
          <path class="line guess" d=${path(guess)} />
        `
      }
      ${
        points.length < 80 &&
        points.map(
          ([ms, value]) => html`
            <circle class="dot" cx=${x(ms)} cy=${y(value)} r="3.600" />
          `,
        )
      }
    </svg>
  `;
}

/** @param {{title: string, words: string, weeks: Array<{ms: number, sugar: number, other: number}>}} props */
export function WeekBars({ title, words, weeks }) {
  const ticks = niceTicks(Math.max(4, ...weeks.map((week) => week.sugar + week.other)));
  const most = ticks.at(-1) ?? 1;
  const wide = (WIDTH - LEFT - RIGHT) / weeks.length;
  const tall = (/** @type {number} */ value) => (value / most) * (HEIGHT - TOP - BOTTOM);
  const y = (/** @type {number} */ value) => HEIGHT - BOTTOM - tall(value);
  return html`
    <svg class="chart need-sugar" viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label=${`${title}. ${words}`}>
      <defs>
        <pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse">
          <path class="hatch-line" d="M0 6L6 0" />
        </pattern>
      </defs>
      <${Axes} ticks=${ticks} y=${y} unit="" from=${weeks[0]?.ms ?? 0} to=${weeks.at(-1)?.ms ?? 1} />
      ${weeks.map(
        (week, i) => html`
          <rect
            class="bar"
            x=${LEFT + i * wide + 1}
            width=${Math.max(1, wide - 2)}
            y=${y(week.sugar)}
            height=${tall(week.sugar)}
          />
          ${['bar second', 'hatch'].map(
            (part) => html`
              <rect
                class=${part}
                x=${LEFT + i * wide + 1}
                width=${Math.max(1, wide - 2)}
                y=${y(week.sugar + week.other)}
                height=${tall(week.other)}
                fill=${part === 'hatch' ? 'url(#hatch)' : null}
              />
            `,
          )}
        `,
      )}
    </svg>
  `;
}

/** @param {{ticks: number[], y: (value: number) => number, unit: string, from: number, to: number}} props */
export const Axes = ({ ticks, y, unit, from, to }) => html`
  ${ticks.map(
    (tick) => html`
      <path class="axis" d=${`M${LEFT} ${y(tick)}H${WIDTH - RIGHT}`} />
      <text x=${LEFT - 5} y=${y(tick) + 4} text-anchor="end">${tick}${tick === ticks.at(-1) ? unit : ''}</text>
    `,
  )}
  ${[0, 0.5, 1].map(
    (part) => html`
      <text
        x=${LEFT + part * (WIDTH - LEFT - RIGHT)}
        y=${HEIGHT - 8}
        text-anchor=${['start', 'middle', 'end'][part * 2]}
      >
        ${shortDay(from + part * (to - from))}
      </text>
    `,
  )}
`;
