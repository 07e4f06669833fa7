// The glass tube: a gauge drawn as a small test tube whose level falls. Colour, pattern and words each tell the need.
import { DAY_MS, dueAtMs, levelAt } from '../care/gauges.js';
import { catalogue, now } from '../signals/shelf.js';
import { say } from '../care/words.js';
import { t } from '../text/en.js';
import { html } from './html.js';

const TOP = 14;
const BOTTOM = 112;
const FOOD_AND_WATER = ['sugar', 'protein', 'water', 'seeds', 'leaves'];

/** The class that colours a need. @param {string} need */
export const needClass = (need) => `need-${FOOD_AND_WATER.includes(need) ? need : 'other'}`;

/** @param {{gauge: import('../care/gauges.js').Gauge, small?: boolean}} props */
export function Tube({ gauge, small = false }) {
  const share = levelAt(gauge, now.value) / gauge.capacity;
  const y = BOTTOM - share * (BOTTOM - TOP);
  const due = BOTTOM - (gauge.due_level / gauge.capacity) * (BOTTOM - TOP);
  const clip = `clip-${gauge.need}-${small ? 's' : 'l'}`;
  return html`<svg class=${`tube ${small ? 'small' : ''} ${needClass(gauge.need)}`} viewBox="0 0 48 124" role="img" aria-label=${levelInWords(gauge)}>
    <defs><clipPath id=${clip}><path d="M8 10h32v88a16 16 0 0 1-32 0z" /></clipPath></defs>
    <path class="glass" d="M8 10h32v88a16 16 0 0 1-32 0z" />
    <g clip-path=${`url(#${clip})`}>
      <rect class="fluid" x="6" y=${y} width="36" height=${Math.max(0, 118 - y)} />
      ${share > 0.02 && html`<path class="fluid" d=${`M8 ${y}q16 -6 32 0z`} />`}
      ${PATTERNS[gauge.need]?.map((d) => html`<path class="grain" d=${d} transform=${`translate(0 ${Math.max(0, y - TOP)})`} />`)}
    </g>
    <path class="due" d=${`M4 ${due}h40`} />
    <path class="rim" d="M4 10h40" />
  </svg>`;
}

/** A pattern for each need, so that colour is never alone. @type {Record<string, string[]>} */
const PATTERNS = {
  sugar: ['M16 40v3M30 58v3M20 80v3M32 96v3'],
  protein: ['M8 34l32 14M8 58l32 14M8 82l32 14'],
  water: ['M8 44q8 -5 16 0t16 0', 'M8 72q8 -5 16 0t16 0', 'M8 98q8 -5 16 0t16 0'],
  seeds: ['M16 42h.1M28 52h.1M20 66h.1M32 78h.1M18 90h.1'],
};

/** @param {import('../care/gauges.js').Gauge} gauge @returns {string} e.g. "Water: 50 %, due in 20 days" */
export function levelInWords(gauge) {
  const need = say(catalogue.value?.words ?? {}, 'need', gauge.need);
  const percent = Math.round((levelAt(gauge, now.value) / gauge.capacity) * 100);
  return `${need}: ${percent} %, ${dueInWords(dueAtMs(gauge))}`;
}

/** @param {number | null} dueMs */
export function dueInWords(dueMs) {
  if (dueMs === null) return t.due.never;
  const days = (dueMs - now.value) / DAY_MS;
  if (days <= -1) return t.due.since(Math.floor(-days));
  if (days <= 0) return t.due.now;
  return days < 1 ? t.due.hours(Math.max(1, Math.round(days * 24))) : t.due.days(Math.round(days));
}
