// What is in the nest and what comes of it: when workers hatch, one question, what moved the days, and the drawing.
import { useState } from 'preact/hooks';
import { inDegrees } from '../components/degrees.js';
import { unfolded } from '../components/forms.js';
import { html } from '../components/html.js';
import { capital } from '../components/in-words.js';
import { lazy } from '../components/lazy.js';
import { DAY_MS } from '../care/gauges.js';
import { logOf, questionOf } from '../care/awaited.js';
import { unplanned } from '../care/round.js';
import { logAll } from '../signals/actions.js';
import { now, today } from '../signals/clock.js';
import { eventsOf, planOf } from '../signals/rows.js';
import { broodText } from '../text/en/brood.js';
import { eventText } from '../text/en/events.js';
import { stalledText } from '../text/en/stalled.js';

const asks = broodText.asks;
const moves = broodText.why;

const BroodLine = lazy(() => import('./brood-line.js'), 'BroodLine');

/**
 * @typedef {import('../kinds.d.ts').LivingCensus} LivingCensus
 * @typedef {import('../kinds.d.ts').Reason} Reason
 */

const WIDE = 340;
/** Where a range is longer, its ends alone would say little. */
const MOST_DAYS = 60;

/** @param {number | string} when of an instant, or an ISO day */
const day = (when) =>
  new Date(typeof when === 'string' ? `${when}T12:00:00` : when).toLocaleDateString([], {
    day: 'numeric',
    month: 'long',
  });

/** In how many days it is. @param {string} on an ISO day */
const daysTo = (on) => Math.round((Date.parse(on) - Date.parse(today.value)) / DAY_MS);

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'>}} props */
export function Brood({ colony }) {
  const plan = planOf(colony.id)?.set;
  const [line, setLine] = useState(false);
  if (!plan?.census) return null;
  const { census, notices = [] } = plan;
  const stalled = notices.find(({ code }) => code === 'founding_stalled');
  const title = census.founding ? broodText.first : broodText.next;
  return html`
    ${
      stalled &&
      html`
        <${Stalled} days=${stalled.args.days} fed=${!notices.some(({ code }) => code === 'claustral')} />
      `
    }
    <section class="card" aria-label=${title}>
      ${
        !stalled &&
        html`
          <p class="eyebrow"><strong>${title}</strong></p>
          <${Hatching} census=${census} mean_c=${warmthOf(notices)} />
        `
      }
      <${Question} colonyId=${colony.id} asked=${census.asks} stalled=${Boolean(stalled)} />
      ${
        !census.measured &&
        html`
          <p class="soft">${broodText.why.unmeasured}</p>
        `
      }
      <${WhyTheseDays} census=${census} />
      <details onToggle=${unfolded(setLine)}>
        <summary>${broodText.open}</summary>
        ${
          line &&
          html`
            <${BroodLine} colony=${colony} census=${census} />
          `
        }
      </details>
    </section>
  `;
}

/** How warm it is, as the countdown's notice says. @param {Reason[]} notices */
function warmthOf(notices) {
  const found = notices.find(({ args }) => typeof args.mean_c === 'number')?.args.mean_c;
  return typeof found === 'number' ? found : undefined;
}

/**
 * The days on which workers hatch: as dates, and as days that run down.
 * @param {{census: LivingCensus, mean_c: number | undefined}} props
 */
function Hatching({ census: { hatching }, mean_c }) {
  if (!hatching) {
    return html`
      <p class="lead">${broodText.none}</p>
    `;
  }
  const [head, ...more] = inDays(hatching);
  const about = [...more, mean_c === undefined ? '' : inDegrees(broodText.warm(mean_c))].filter(Boolean).join(', ');
  const high = hatching.high_on === null ? null : daysTo(hatching.high_on);
  return html`
    <p class="lead">${head}</p>
    ${
      high !== null &&
      high > 0 &&
      html`
        <${Days} low=${Math.max(0, daysTo(hatching.low_on))} high=${high} />
      `
    }
    ${
      about &&
      html`
        <p class="soft">${capital(about)}.</p>
      `
    }
  `;
}

/**
 * What to say of the days, the most important first.
 * @param {NonNullable<LivingCensus['hatching']>} hatching @returns {string[]}
 */
function inDays({ low_on, best_on, high_on }) {
  const low = daysTo(low_on);
  if (high_on === null) return [low > 0 ? broodText.not_before(day(low_on)) : broodText.any, broodText.no_end];
  const high = daysTo(high_on);
  if (high <= 0) return [broodText.any];
  if (high - low > MOST_DAYS && best_on) {
    const best = daysTo(best_on);
    const likely = best > 0 ? broodText.likely(day(best_on), best) : '';
    return [low > 0 ? broodText.not_before(day(low_on)) : broodText.any, likely, broodText.perhaps(day(high_on))];
  }
  if (low <= 0) return [broodText.any_by(day(high_on)), broodText.at_latest(high)];
  const days = low === high ? broodText.on(day(low_on)) : broodText.between(shortened(low_on, high_on), day(high_on));
  return [days, broodText.days(low, high)];
}

/**
 * A day before another: its month is said once where it is the same and stands last.
 * @param {string} low_on @param {string} high_on
 */
function shortened(low_on, high_on) {
  const same = low_on.slice(0, 7) === high_on.slice(0, 7) && /^\d/.test(day(high_on));
  return same ? String(Number(low_on.slice(8))) : day(low_on);
}

/** The range as a bar, today at its left. @param {{low: number, high: number}} props */
function Days({ low, high }) {
  const x = (/** @type {number} */ days) => 8 + (days / Math.max(1, high)) * (WIDE - 16);
  return html`
    <svg class="chart need-protein" viewBox=${`0 0 ${WIDE} 22`} aria-hidden="true">
      <path class="axis" d=${`M8 11H${WIDE - 8}`} />
      <path class="bar" d=${`M${x(low).toFixed(1)} 5H${x(high).toFixed(1)}v12H${x(low).toFixed(1)}z`} />
      <circle class="dot" cx="8" cy="11" r="6" />
    </svg>
  `;
}

/**
 * The brood that should be there, and whether it was seen: one tap, never compulsory, and a week's rest after a look.
 * @param {{colonyId: string, asked: LivingCensus['asks'], stalled: boolean}} props
 */
function Question({ colonyId, asked, stalled }) {
  const plan = planOf(colonyId);
  const question = questionOf(asked, eventsOf(colonyId), now.value, stalled);
  if (!question || !plan) return null;
  const { brood, by_on, turn, looked_ms, again_ms } = question;
  const name = eventText.stages[brood];
  const due = by_on > today.value ? asks.by(name, day(by_on)) : asks.now(name);
  const waits = unplanned(plan, eventsOf(colonyId)).some(({ kind }) => kind === 'count');
  /** @param {import('../care/awaited.js').Answer} answer @param {string} words @param {string} [look] */
  const button = (answer, words, look = '') => html`
    <button
      type="button"
      class=${`button ${look}`}
      aria-label=${`${name}: ${words}`}
      onClick=${() => logAll([logOf(colonyId, brood, answer, asks.remark(name))])}
    >
      ${words}
    </button>
  `;
  return html`
    <div class="stack">
      <p role="status">
        ${turn === 'told' ? asks.told(name, day(looked_ms ?? 0)) : turn === 'ask' ? asks.seen(due) : `${due}.`}
        ${turn === 'rest' ? ` ${asks.looked(day(looked_ms ?? 0), day(again_ms ?? 0))}` : ''}
        ${waits ? ` ${asks.waits}` : ''}
      </p>
      ${
        turn === 'ask' &&
        html`
          <div class="wrap even">
            ${button('yes', asks.yes)}${button('not_yet', asks.not_yet)}${button('cannot_see', asks.cannot_see)}
          </div>
        `
      }
      ${(turn === 'early' || turn === 'rest') && button('yes', asks.early, 'start')}
    </div>
  `;
}

/** The observations that moved the days, and what they began with. @param {{census: LivingCensus}} props */
function WhyTheseDays({ census: { why, source } }) {
  const lines = movedInWords(why);
  return html`
    <details class="why">
      <summary>${moves.title}</summary>
      <div>
        ${(lines.length ? lines : [moves.nothing]).map(
          (line) => html`
            <p>${line}</p>
          `,
        )}
        <p>${moves.eight} ${moves.source(source)}</p>
      </div>
    </details>
  `;
}

/** What was seen and what it changed: a line for each day and change. @param {Reason[]} why */
function movedInWords(why) {
  /** @type {Map<string, {on: string, moved: string, seen: string[]}>} */
  const lines = new Map();
  for (const { code, args } of why) {
    const [seen = '', on = '', word = ''] = [args.seen, args.on, args.word ?? ''].map(String);
    const worded = moves.words[word]?.(seen) ?? moves.workers;
    const told = typeof args.number === 'number' ? moves.counted(Math.round(args.number)) : worded;
    const missed = code === 'census_fewer' && (word === 'none' || args.number === 0);
    const moved = missed ? moves.none : (((seen === 'protein' && moves.larvae[code]) || moves.moved[code]) ?? code);
    const line = lines.get(on + moved) ?? { on, moved, seen: [] };
    line.seen.push(told);
    lines.set(on + moved, line);
  }
  return [...lines.values()].map(({ on, moved, seen }) => moves.line(day(on), seen, moved));
}

/**
 * A founding that has stalled, with what keepers do.
 * @param {{days: number, fed: boolean}} props `fed`: she founds with food
 */
function Stalled({ days, fed }) {
  return html`
    <section class="card" aria-label=${stalledText.title}>
      <h3>${stalledText.title}</h3>
      <p>${stalledText.days(days)} ${stalledText.about}</p>
      <ol class="numbered stack">
        ${[...(fed ? stalledText.fed : stalledText.unfed), ...stalledText.last].map(
          (step) => html`
            <li>${step}</li>
          `,
        )}
      </ol>
    </section>
  `;
}
