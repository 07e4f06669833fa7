// What is in the nest and what comes of it: when workers hatch, one question, what moved the days, and the drawing.
import { useState } from 'preact/hooks';
import { unfolded } from '../components/forms.js';
import { html } from '../components/html.js';
import { lazy } from '../components/lazy.js';
import { DAY_MS } from '../care/rules.js';
import { logOf, questionOf } from '../care/awaited.js';
import { unplanned } from '../care/round.js';
import { logAll } from '../signals/actions.js';
import { now, today } from '../signals/clock.js';
import { eventsOf, planOf } from '../signals/rows.js';
import { hear } from '../words/fetched.js';
import { isSaid, labelled, say, sayIf, sayOf } from '../words/say.js';
import { dayOfMonth, listed } from '../words/shown.js';

const BroodLine = lazy(() => import('./brood-line.js'), 'BroodLine', 'charts');

/**
 * @typedef {import('../kinds.d.ts').LivingCensus} LivingCensus
 * @typedef {import('../kinds.d.ts').Reason} Reason
 */

const WIDE = 340;
/** Where a range is longer, its ends alone would say little. */
const MOST_DAYS = 60;

/** In how many days it is. @param {string} on an ISO day */
const daysTo = (on) => Math.round((Date.parse(on) - Date.parse(today.value)) / DAY_MS);

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'>}} props */
export function Brood({ colony }) {
  const plan = planOf(colony.id)?.set;
  const [line, setLine] = useState(false);
  if (!plan?.census) return null;
  const { census, notices = [] } = plan;
  const stalled = notices.find(({ code }) => code === 'founding_stalled');
  const title = census.founding ? say('brood-first') : say('brood-next');
  return html`
    ${
      stalled &&
      html`
        <${Stalled} days=${Number(stalled.args.days)} fed=${!notices.some(({ code }) => code === 'claustral')} />
      `
    }
    <section class="card" aria-label=${title}>
      ${
        !stalled &&
        html`
          <p class="eyebrow">
            <strong>${title}</strong>
          </p>
          <${Hatching} census=${census} mean_c=${warmthOf(notices)} />
        `
      }
      <${Question} colonyId=${colony.id} asked=${census.asks} stalled=${Boolean(stalled)} />
      ${
        !census.measured &&
        html`
          <p class="soft">${say('brood-why-unmeasured')}</p>
        `
      }
      <${WhyTheseDays} census=${census} />
      <details onToggle=${unfolded(setLine)}>
        <summary>${say('brood-open')}</summary>
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
      <p class="lead">${say('brood-none')}</p>
    `;
  }
  const [head, ...more] = inDays(hatching);
  const about = [...more, mean_c === undefined ? '' : say('brood-warm', { mean_c })].filter(Boolean).join(' ');
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
        <p class="soft">${about}</p>
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
  if (high_on === null) {
    return [low > 0 ? say('brood-not-before', { day: dayOfMonth(low_on) }) : say('brood-any'), say('brood-no-end')];
  }
  const high = daysTo(high_on);
  if (high <= 0) return [say('brood-any')];
  if (high - low > MOST_DAYS && best_on) {
    const best = daysTo(best_on);
    const high_day = dayOfMonth(high_on);
    const perhaps =
      best > 0
        ? say('brood-likely', { best: dayOfMonth(best_on), days: best, high: high_day })
        : say('brood-perhaps', { high: high_day });
    return [low > 0 ? say('brood-not-before', { day: dayOfMonth(low_on) }) : say('brood-any'), perhaps];
  }
  if (low <= 0) return [say('brood-any-by', { day: dayOfMonth(high_on) }), say('brood-at-latest', { days: high })];
  const days =
    low === high
      ? say('brood-on', { day: dayOfMonth(low_on) })
      : say('brood-between', { from: shortened(low_on, high_on), to: dayOfMonth(high_on) });
  return [days, low === high ? say('brood-days-about', { days: high }) : say('brood-days', { low, high })];
}

/**
 * A day before another: its month is said once where it is the same and stands last.
 * @param {string} low_on @param {string} high_on
 */
function shortened(low_on, high_on) {
  const same = low_on.slice(0, 7) === high_on.slice(0, 7) && /^\d/.test(dayOfMonth(high_on));
  return same ? String(Number(low_on.slice(8))) : dayOfMonth(low_on);
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

/** @type {Array<import('../care/awaited.js').Answer>} */
const ANSWERS = ['yes', 'not_yet', 'cannot_see'];

/**
 * The brood that should be there, and whether it was seen: one tap, never compulsory, and a week's rest after a look.
 * @param {{colonyId: string, asked: LivingCensus['asks'], stalled: boolean}} props
 */
function Question({ colonyId, asked, stalled }) {
  const plan = planOf(colonyId);
  const question = questionOf(asked, eventsOf(colonyId), now.value, stalled);
  if (!question || !plan) return null;
  const { brood, by_on, turn, looked_ms, again_ms } = question;
  const name = sayOf('event-stage', brood);
  const looked_on = dayOfMonth(looked_ms ?? 0);
  const asked_now = by_on <= today.value;
  const told = { brood, day: dayOfMonth(by_on) };
  const due = asked_now ? say('brood-ask-now', { brood }) : say('brood-ask-by', told);
  const ask = asked_now ? say('brood-ask-now-seen', { brood }) : say('brood-ask-by-seen', told);
  const waits = unplanned(plan, eventsOf(colonyId)).some(({ kind }) => kind === 'count');
  /** @param {import('../care/awaited.js').Answer} answer @param {string} words @param {string} [look] */
  const button = (answer, words, look = '') => html`
    <button
      type="button"
      class=${`button ${look}`}
      aria-label=${labelled(name, words)}
      onClick=${() => logAll([logOf(colonyId, brood, answer, say('brood-ask-remark', { brood }))])}
    >
      ${words}
    </button>
  `;
  return html`
    <div class="stack">
      <p role="status">
        ${turn === 'told' ? say('brood-ask-told', { brood, day: looked_on }) : turn === 'ask' ? ask : due}
        ${turn === 'rest' ? ` ${say('brood-ask-looked', { day: looked_on, again: dayOfMonth(again_ms ?? 0) })}` : ''}
        ${waits ? ` ${say('brood-ask-waits')}` : ''}
      </p>
      ${
        turn === 'ask' &&
        html`
          <div class="wrap even">${ANSWERS.map((answer) => button(answer, sayOf('brood-ask', answer)))}</div>
        `
      }
      ${(turn === 'early' || turn === 'rest') && button('yes', say('brood-ask-early'), 'start')}
    </div>
  `;
}

/** The observations that moved the days, and what they began with. @param {{census: LivingCensus}} props */
function WhyTheseDays({ census: { why, group, source: in_english } }) {
  const [, setHeard] = useState(false);
  const lines = movedInWords(why);
  const source = sayIf('brood-source', group) || in_english;
  const hearSources = () =>
    hear('online').then(
      () => setHeard(true),
      () => undefined,
    ); // else it stays in English
  return html`
    <details class="why" onToggle=${hearSources}>
      <summary>${say('brood-why-title')}</summary>
      <div>
        ${(lines.length ? lines : [say('brood-why-nothing')]).map(
          (line) => html`
            <p>${line}</p>
          `,
        )}
        <p>${say('brood-why-eight')} ${say('brood-why-source', { source })}</p>
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
    const worded = isSaid('brood-why-seen', word)
      ? sayOf('brood-why-seen', word, { brood: seen })
      : say('brood-why-workers');
    const told =
      typeof args.number === 'number' ? say('brood-why-counted', { count: Math.round(args.number) }) : worded;
    const missed = code === 'census_fewer' && (word === 'none' || args.number === 0);
    const moved = missed
      ? say('brood-why-none')
      : (seen === 'protein' && sayIf('brood-why-larvae', code)) || sayOf('brood-why-moved', code);
    const line = lines.get(on + moved) ?? { on, moved, seen: [] };
    line.seen.push(told);
    lines.set(on + moved, line);
  }
  return [...lines.values()].map(({ on, moved, seen }) =>
    say('brood-why-line', { day: dayOfMonth(on), seen: listed(seen), moved }),
  );
}

/** What keepers do, step by step, for a queen who founds with food and for one who lives on her reserves. */
const FED = ['fed 1', 'fed 2', 'fed 3'];
const UNFED = ['unfed 1', 'unfed 2', 'unfed 3', 'unfed 4'];

/**
 * A founding that has stalled, with what keepers do.
 * @param {{days: number, fed: boolean}} props `fed`: she founds with food
 */
function Stalled({ days, fed }) {
  return html`
    <section class="card" aria-label=${say('stalled-title')}>
      <h3>${say('stalled-title')}</h3>
      <p>${say('stalled-days', { days })} ${say('stalled-about')}</p>
      <ol class="numbered stack">
        ${[...(fed ? FED : UNFED), 'last 1', 'last 2'].map(
          (step) => html`
            <li>${sayOf('stalled', step)}</li>
          `,
        )}
      </ol>
    </section>
  `;
}
