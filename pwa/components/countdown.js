// When workers come, as days that run down: the plan's range, moved on since it was made.
import { DAY_MS } from '../care/gauges.js';
import { now } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { inDegrees } from './degrees.js';
import { html } from './html.js';

const c = m.countdown;
const WIDE = 340;
/** @type {Record<string, string>} */
const TITLES = { first_workers_in: c.first, next_workers_in: c.next };
/** @type {Record<string, string>} */
const STAGES = { eggs: m.log.eggs, larvae: m.log.larvae, pupae: m.log.pupae };

/** @param {{code: string}} notice */
export const countsDown = (notice) => notice.code in TITLES;

/** @param {number} ms */
const day = (ms) => new Date(ms).toLocaleDateString([], { day: 'numeric', month: 'long' });

/** @param {{notice: {code: string, args: Record<string, any>}, fromMs: number}} props `fromMs`: when the plan was made */
export function Countdown({ notice: { code, args }, fromMs }) {
  const [fromDay, toDay] = [fromMs + args.low * DAY_MS, fromMs + args.high * DAY_MS];
  const left = (/** @type {number} */ ms) => Math.max(0, Math.round((ms - now.value) / DAY_MS));
  const [low, high] = [left(fromDay), left(toDay)];
  const words = high === 0 ? c.any : low === 0 ? c.by(high) : c.days(low, high);
  const x = (/** @type {number} */ days) => 8 + (days / Math.max(1, high)) * (WIDE - 16);
  return html`<section class="card" aria-label=${TITLES[code]}><p class="eyebrow"><strong>${TITLES[code]}</strong></p><p class="lead">${words}</p>
    ${high > 0 && html`<svg class="chart need-protein" viewBox=${`0 0 ${WIDE} 22`} aria-hidden="true"><path class="axis" d=${`M8 11H${WIDE - 8}`} /><path class="bar" d=${`M${x(low).toFixed(1)} 5H${x(high).toFixed(1)}v12H${x(low).toFixed(1)}z`} /><circle class="dot" cx="8" cy="11" r="6" /></svg>`}
    <p class="soft">${[c.between(day(fromDay), day(toDay)), inDegrees(c.warm(args.mean_c)), STAGES[args.stage] && c.seen(STAGES[args.stage]?.toLowerCase() ?? '')].filter(Boolean).join(', ')}.</p></section>`;
}
