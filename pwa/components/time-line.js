// The brood on one line of time: a row for each stage, the past as it was believed, what is to come with its range.
import { cut, laneOf, months, nestAt, seenIn, SERIES } from '../care/time-line.js';
import { html } from './html.js';
import { say, sayOf } from '../words/say.js';
import { numeral, shortDay } from '../words/shown.js';

/**
 * @typedef {import('../care/time-line.js').Column} Column
 * @typedef {import('../care/time-line.js').Mark} Mark
 * @typedef {import('../care/time-line.js').Point} Point
 */

const WIDTH = 340;
const LEFT = 30;
const RIGHT = 4;
const HEAD = 17;
const TALL = 38;
const ROW = HEAD + TALL + 9;
const BOTTOM = 22;
const LEAST = 4;
/** So near to the word 'today' no month is named. */
const CLEAR = 34;

/** What each stage looks like, on 18 by 12. */
const GLYPHS = {
  eggs: 'M3.5 5.5a1.7 2.5 0 1 0 .01 0zM8.5 3.5a1.7 2.5 0 1 0 .01 0zM12.5 6.5a1.7 2.5 0 1 0 .01 0z',
  small_larvae: 'M4 9.5C3 5.5 8 3 12 6C8.5 5.5 7.5 7 8 9.5C7.5 11.5 4.5 11.5 4 9.5z',
  large_larvae: 'M1.5 10C-.5 4 8-1 16 4.5C17.5 6.5 15 8 13 7.2C9.5 6 8 7.5 8.5 10C8 12.8 2.5 12.8 1.5 10z',
  pupae: 'M5.5 2.5h7a4 4 0 0 1 0 8h-7a4 4 0 0 1 0-8z',
  workers:
    'M3.8 3.5a3.2 2.7 0 1 0 .01 0zM9.5 5a2 1.5 0 1 0 .01 0zM14.5 4a2.1 2 0 1 0 .01 0z' +
    'M9 5L7 1.5L7.5 1.2L9.6 5zM9 7L7 11L7.5 11.3L9.6 7z' +
    'M10 5L12 1.5L12.5 1.7L10.5 5zM10 7L12 11L12.5 10.8L10.5 7z',
};

/**
 * @param {{census: import('../kinds.d.ts').LivingCensus, counts: import('../care/overlay.js').EventRow[],
 *   nowMs: number, toMs: number, words: string}} props
 */
export function TimeLine({ census, counts, nowMs, toMs, words }) {
  const all = /** @type {Column[]} */ (census.stages);
  const past = cut(all, all[0]?.[0] ?? nowMs, nowMs);
  const columns = [...past, ...cut(all, nowMs, toMs).slice(past.length ? 1 : 0)]; // with a column at this moment
  const [from, to] = [columns[0]?.[0] ?? 0, columns.at(-1)?.[0] ?? 1];
  const x = (/** @type {number} */ ms) => LEFT + ((ms - from) / (to - from)) * (WIDTH - LEFT - RIGHT);
  const foot = SERIES.length * ROW;
  const now = nestAt(all, nowMs);
  return html`
    <svg class="chart time-line" viewBox=${`0 0 ${WIDTH} ${foot + BOTTOM}`} role="img" aria-label=${words}>
      <rect class="trough" x=${LEFT} y="0" width=${x(nowMs) - LEFT} height=${foot} />
      ${months(from, to).map(
        (ms) => html`
          <path class="axis" d=${`M${x(ms).toFixed(1)} 0V${foot + 4}`} />
          ${
            Math.abs(x(ms) - x(nowMs)) > CLEAR &&
            x(ms) < WIDTH - CLEAR &&
            html`
              <text x=${x(ms)} y=${foot + 16} text-anchor="middle">${shortDay(ms)}</text>
            `
          }
        `,
      )}
      ${SERIES.map(
        (stage, i) => html`
          <${Lane}
            stage=${stage}
            top=${i * ROW}
            points=${laneOf(columns, i)}
            told=${told(now[i])}
            seen=${seenIn(counts, stage).filter(({ ms }) => ms >= from && ms <= to)}
            hatching=${stage === 'workers' ? spanOf(census.hatching, from, to) : null}
            x=${x}
            nowMs=${nowMs}
          />
        `,
      )}
      <path class="today" d=${`M${x(nowMs).toFixed(1)} 0V${foot + 4}`} />
      <text class="today" x=${x(nowMs)} y=${foot + 16} text-anchor="middle">${say('brood-line-today')}</text>
    </svg>
  `;
}

const STEPS = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];

/** The height of a row: a round number above all that it shows. @param {number} most */
function roundUp(most) {
  const power = 10 ** Math.floor(Math.log10(most));
  return Math.ceil((STEPS.find((step) => step * power >= most) ?? 10) * power);
}

/** A number with its range, in whole animals. @param {import('../care/time-line.js').Range | undefined} range */
export function told(range) {
  const [low = 0, best = 0, high = 0] = (range ?? []).map(Math.round);
  return low === high ? numeral(best) : say('brood-line-about', { best, low, high });
}

/**
 * When workers hatch, as far as it is drawn.
 * @param {import('../kinds.d.ts').LivingCensus['hatching']} hatching @param {number} from @param {number} to
 * @returns {[number, number] | null}
 */
function spanOf(hatching, from, to) {
  if (!hatching) return null;
  const at = (/** @type {string} */ day) => new Date(`${day}T12:00:00`).getTime();
  const [low, high] = [at(hatching.low_on), hatching.high_on === null ? to : at(hatching.high_on)];
  return low > to ? null : [Math.max(from, low), Math.min(to, high)];
}

/**
 * @param {{stage: (typeof SERIES)[number], top: number, points: Point[], told: string, seen: Mark[],
 *   hatching: [number, number] | null, x: (ms: number) => number, nowMs: number}} props
 */
function Lane({ stage, top, points, told: words, seen, hatching, x, nowMs }) {
  const counted = seen.map(({ number }) => number ?? 0);
  const highest = Math.max(LEAST, ...points.map(({ range }) => range[2]), ...counted);
  const most = roundUp(highest);
  const floor = top + HEAD + TALL;
  const y = (/** @type {number} */ value) => floor - (value / most) * TALL;
  /** @param {Point[]} some @param {0 | 1 | 2} which */
  const path = (some, which) =>
    some.map(({ ms, range }, i) => `${i ? 'L' : 'M'}${x(ms).toFixed(1)} ${y(range[which]).toFixed(1)}`).join('');
  const back = [...points].reverse();
  const past = points.filter(({ ms }) => ms <= nowMs);
  const ahead = points.slice(Math.max(0, past.length - 1));
  return html`
    <g class=${stage === 'workers' ? '' : 'need-protein'}>
      <path class="glyph" transform=${`translate(${LEFT} ${top + 3})`} d=${GLYPHS[stage]} />
      <text class="name" x=${LEFT + 23} y=${top + 13}>${sayOf('brood-line-stage', stage)}</text>
      <text x=${WIDTH - RIGHT} y=${top + 13} text-anchor="end">${say('brood-line-now', { number: words })}</text>
      <path class="axis" d=${`M${LEFT} ${floor}H${WIDTH - RIGHT}M${LEFT} ${y(most)}H${WIDTH - RIGHT}`} />
      <text x=${LEFT - 4} y=${y(most) + 8} text-anchor="end">${most}</text>
      <text x=${LEFT - 4} y=${floor + 2} text-anchor="end">0</text>
      <path class="band" d=${`${path(points, 0)}${path(back, 2).replace('M', 'L')}Z`} />
      <path class="line" d=${path(past, 1)} />
      <path class="line guess" d=${path(ahead, 1)} />
      ${
        hatching &&
        html`
          <path class="due" d=${`M${x(hatching[0]).toFixed(1)} ${floor}H${x(hatching[1]).toFixed(1)}`} />
        `
      }
      ${seen.map(
        ({ ms, number, found }) => html`
          <circle class=${found ? 'dot' : 'dot hollow'} cx=${x(ms)} cy=${number === null ? floor : y(number)} r="3" />
        `,
      )}
    </g>
  `;
}
