// The glass tube: a gauge drawn as a small test tube whose level falls. Colour, pattern and words each tell the need.
import { dueAtMs, levelAt } from '../care/gauges.js';
import { DAY_MS } from '../care/rules.js';
import { minute } from '../signals/clock.js';
import { catalogue } from '../signals/rows.js';
import { html } from './html.js';
import { labelled, say, sayOf } from '../words/say.js';

/** @typedef {import('../kinds.d.ts').Need} Need */

/** The inside of the tube in the drawing's own units: where the fluid is when full, and when empty. */
export const TOP = 22;
export const BOTTOM = 112;
const BODY = 'M9 9v89a15 15 0 0 0 30 0V9';

/** The class that colours a need: food and water have colours of their own. @param {string} need */
export const needClass = (need) =>
  `need-${need === 'water' || catalogue.value.needs[/** @type {Need} */ (need)]?.food ? need : 'other'}`;

/** @param {{gauge: import('../care/gauges.js').Gauge, small?: boolean}} props */
export function Tube({ gauge, small = false }) {
  const share = levelAt(gauge, minute.value) / gauge.capacity;
  const due = gauge.due_level / gauge.capacity;
  return html`
    <svg
      class=${`tube ${small ? 'small' : ''} ${needClass(gauge.need)} ${share <= due ? 'low' : ''}`}
      viewBox="0 0 48 124"
      role="img"
      aria-label=${levelInWords(gauge)}
    >
      <${TubeDrawing} need=${gauge.need} share=${share} due=${due} />
    </svg>
  `;
}

/**
 * The drawing alone. Shares of the capacity, 0 to 1; `due` may be null.
 * @param {{need: string, share: number, due: number | null}} props
 */
export function TubeDrawing({ need, share, due }) {
  // in tenths: what cannot be seen to move is not drawn anew
  const y = Math.round((BOTTOM - Math.min(1, Math.max(0, share)) * (BOTTOM - TOP)) * 10) / 10;
  const mark = due === null ? 0 : BOTTOM - due * (BOTTOM - TOP);
  const clip = `inside-${need}-${Math.round(y * 10)}`;
  return html`
    <defs>
      <clipPath id=${clip}>
        <path d=${`${BODY}z`} />
      </clipPath>
    </defs>
    <path class="glass" d=${`${BODY}z`} />
    <g clip-path=${`url(#${clip})`}>
      <g class="level" style=${{ transform: `translateY(${y}px)` }}>
        <path class="fluid" d="M6 0h36v124H6z" />
        ${(PATTERNS[need] ?? PATTERNS.other)?.map(
          (d) => html`
            <path class="grain" d=${d} />
          `,
        )}
        ${
          share > 0 &&
          html`
            <ellipse class="surface" cx="24" cy="0" rx="15" ry="3" />
          `
        }
      </g>
      ${[0.25, 0.5, 0.75].map(
        (part) => html`
          <path class="mark" d=${`M39 ${BOTTOM - part * (BOTTOM - TOP)}h-7`} />
        `,
      )}
      <path class="shine" d="M14.500 18v76" />
    </g>
    <path class="wall" d=${BODY} />
    <path class="rim" d="M5 9h38" />
    ${
      due !== null &&
      html`
        <path class="due" d=${`M9 ${mark}h30`} stroke-dasharray="4 3" />
        <path class="notch" d=${`M8 ${mark}l-8 -5v10z`} />
      `
    }
  `;
}

/** A pattern for each need, so that colour is never alone. @type {Record<string, string[]>} */
const PATTERNS = {
  sugar: ['M17 14v4M30 26v4M20 42v4M32 56v4M18 70v4M29 82v4'],
  protein: ['M6 12l36 16M6 32l36 16M6 52l36 16M6 72l36 16'],
  water: ['M6 18q9 -6 18 0t18 0M6 40q9 -6 18 0t18 0M6 62q9 -6 18 0t18 0M6 84q9 -6 18 0t18 0'],
  seeds: ['M17 12h.1M29 20h.1M20 30h.1M32 40h.1M17 50h.1M28 60h.1M20 72h.1M31 80h.1'],
  leaves: ['M24 10v90M24 24l10 -8M24 24l-10 -8M24 46l10 -8M24 46l-10 -8M24 68l10 -8M24 68l-10 -8'],
  other: ['M6 16h36M6 36h36M6 56h36M6 76h36'],
};

/** @param {import('../care/gauges.js').Gauge} gauge @returns {string} e.g. "Water: 50 %, due in 20 days" */
export function levelInWords(gauge) {
  return labelled(
    sayOf('need', gauge.need),
    say('part-percent', { percent: percentOf(gauge) }),
    dueInWords(dueAtMs(gauge)),
  );
}

/** @param {import('../care/gauges.js').Gauge} gauge */
export const percentOf = (gauge) => Math.round((levelAt(gauge, minute.value) / gauge.capacity) * 100);

/** @param {number | null} dueMs */
export function dueInWords(dueMs) {
  if (dueMs === null) return say('round-due-never');
  const days = (dueMs - minute.value) / DAY_MS;
  if (days <= -1) return say('round-due-since', { days: Math.floor(-days) });
  if (days <= 0) return say('round-due-now');
  return days < 1
    ? say('round-due-hours', { hours: Math.max(1, Math.round(days * 24)) })
    : say('round-due-days', { days: Math.round(days) });
}

/**
 * How far a round has come: a tube lying on its side that fills up.
 * @param {{part: number, whole: number, words: string}} props
 */
export const LyingTube = ({ part, whole, words }) => html`
  <div class="lying" role="img" aria-label=${words}>
    <span style=${{ transform: `translateX(${whole ? Math.min(100, (part / whole) * 100) - 100 : -100}%)` }}></span>
  </div>
`;
