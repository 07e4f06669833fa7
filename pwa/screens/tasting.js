// What a colony likes: start a tasting, see what it has told so far, end it, look back at earlier ones.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice, ManyChoice } from '../components/choices.js';
import { Figures } from '../components/figures.js';
import { html } from '../components/html.js';
import { dueInWords, needClass } from '../components/tube.js';
import { dueAtMs } from '../care/gauges.js';
import { DAY_MS } from '../care/rules.js';
import { tell } from '../signals/actions.js';
import { useHistory } from '../signals/history.js';
import { catalogue, gaugesOf, planOf } from '../signals/rows.js';
import {
  endTasting,
  endedTastings,
  foodsToTaste,
  runningTasting,
  startTasting,
  tally,
  unfitFor,
} from '../signals/tastings.js';
import { inWords } from '../components/in-words.js';
import { say, sayIf, sayOf } from '../words/say.js';
import { capital, fullDay, locale } from '../words/shown.js';

/** @typedef {import('../care/overlay.js').ShownRow<'colony'>} ColonyRow */
/** @typedef {import('../care/overlay.js').ShownRow<'tasting'>} TastingRow */
/**
 * @typedef {{food_code: string, offers: number, likes?: number, mean: number, low: number, high: number,
 *   best: number}} Told
 */

const FEWEST = 2;
const MOST = 5;
const LONGEST_NAME = 80;

/** @param {string} code */
const foodName = (code) => capital(sayOf('food', code));

/** What the columns of the figures are called. */
const HEADS = ['food', 'offered', 'share', 'spread', 'favourite'];

/** @param {number} share */
const percent = (share) => Math.round(share * 100);

/** @param {{colony: ColonyRow}} props */
export function Tasting({ colony }) {
  const running = runningTasting(colony.id);
  const unfit = unfitFor(colony);
  const state = sayIf('colony-condition', unfit) || sayIf('colony-stage', unfit);
  return html`
    <div class="stack">
      ${
        !running &&
        html`
          <p class="soft">${say('tasting-about')}</p>
        `
      }
      ${
        state &&
        html`
          <p class="caution calm">${say('tasting-not-now', { state: state.toLocaleLowerCase(locale()) })}</p>
        `
      }
      ${
        running
          ? html`
              <${Running} colony=${colony} tasting=${running} />
            `
          : !unfit &&
            html`
              <${Start} colony=${colony} />
            `
      }
      <${Earlier} colonyId=${colony.id} />
    </div>
  `;
}

/** @param {{colony: ColonyRow}} props */
function Start({ colony }) {
  const kinds = foodsToTaste(colony);
  const [need, setNeed] = useState(kinds.find(([each]) => each === 'protein')?.[0] ?? kinds[0]?.[0] ?? '');
  const [foods, setFoods] = useState(/** @type {string[]} */ ([]));
  const { attempt, busy, said, refuse } = useAttempt();
  if (!kinds.length) {
    return html`
      <p>${say('tasting-none')}</p>
    `;
  }
  function start() {
    if (foods.length < FEWEST || foods.length > MOST) return refuse(say('tasting-pick'));
    return attempt(async () => {
      await startTasting(colony.id, foods.map(foodName).join(', ').slice(0, LONGEST_NAME), foods);
      tell(say('tasting-started'));
    });
  }
  return html`
    ${
      kinds.length > 1 &&
      html`
        <${Choice}
          label=${say('tasting-kind')}
          value=${need}
          onPick=${(/** @type {string} */ next) => {
            setNeed(next);
            setFoods([]);
          }}
          options=${kinds.map(([each]) => [each, sayOf('need', each)])}
        />
      `
    }
    <${ManyChoice}
      label=${say('tasting-foods')}
      values=${foods}
      onChange=${setFoods}
      options=${(kinds.find(([each]) => each === need)?.[1] ?? []).map((code) => [code, foodName(code)])}
    />
    ${said}
    <button type="button" class="button main wide" disabled=${busy} onClick=${start}>${say('tasting-go')}</button>
  `;
}

/** @param {{colony: ColonyRow, tasting: TastingRow}} props */
function Running({ colony, tasting }) {
  const { attempt, busy, said } = useAttempt();
  /** @type {Told[]} */
  const told = planOf(colony.id)?.set.tasting ?? [];
  const next = nextOffer(colony.id, tasting.id);
  const end = () =>
    attempt(async () => {
      await endTasting(tasting);
      tell(say('tasting-ended'), async () => {
        await endTasting(tasting, null);
      });
    });
  const rows = told.map((each) => [
    foodName(each.food_code),
    String(each.offers),
    say('part-percent', { percent: percent(each.mean) }),
    say('part-percent', { percent: `${percent(each.low)}–${percent(each.high)}` }),
    say('part-percent', { percent: percent(each.best) }),
  ]);
  return html`
    <h3>${say('tasting-told')}</h3>
    <p class="soft">
      ${say('tasting-since', { day: fullDay(tasting.set.started_on) })}${' '}
      ${told.length ? say('tasting-range') : say('tasting-wait')}
    </p>
    ${
      next &&
      html`
        <p>${next}</p>
      `
    }
    <ul class="stack">
      ${told.map(
        (each) => html`
          <li key=${each.food_code}>
            <${Liking} told=${each} />
          </li>
        `,
      )}
    </ul>
    ${
      told.length > 0 &&
      html`
        <${Figures} heads=${HEADS.map((head) => sayOf('tasting', head))} rows=${rows} />
      `
    }
    ${said}
    <button type="button" class="button start" disabled=${busy} onClick=${end}>${say('tasting-end')}</button>
  `;
}

/**
 * What the tasting offers next and when, or why it offers nothing now.
 * @param {string} colonyId
 * @param {string} tastingId
 */
function nextOffer(colonyId, tastingId) {
  const plan = planOf(colonyId)?.set;
  const task = plan?.tasks.find((each) => each.suggested?.set.tasting_id === tastingId);
  if (!task?.portion) return plan?.tasting_waits ? inWords('reason', plan.tasting_waits) : '';
  const gauge = gaugesOf(colonyId).find((each) => each.need === task.need);
  return say('tasting-next', {
    food: foodName(task.portion.food_code),
    due: dueInWords(gauge ? dueAtMs(gauge) : task.due_at_ms),
  });
}

const WIDE = 340;

/** How often one food is taken, as a bar with its range over it. @param {{told: Told}} props */
function Liking({ told }) {
  const need = catalogue.value?.foods?.[told.food_code]?.need ?? 'other';
  const [low, mean, high] = [told.low * WIDE, told.mean * WIDE, told.high * WIDE];
  const range = say('tasting-taken', { mean: percent(told.mean), low: percent(told.low), high: percent(told.high) });
  return html`
    <p class="eyebrow">
      <strong>${foodName(told.food_code)}</strong>
      ${told.offers ? say('tasting-best', { percent: percent(told.best) }) : say('tasting-not-offered')}
    </p>
    ${
      Boolean(told.offers || told.likes) &&
      html`
        <svg class=${`chart ${needClass(need)}`} viewBox="0 0 340 22" aria-hidden="true">
          <path class="trough" d="M0 3h340v16H0z" />
          <path class="bar" d=${`M0 3h${mean.toFixed(1)}v16H0z`} />
          <path
            class="range"
            d=${`M${low.toFixed(1)} 11H${high.toFixed(1)}M${low.toFixed(1)} 5v12M${high.toFixed(1)} 5v12`}
          />
        </svg>
        <p class="soft">${range} · ${offersInWords(told)}</p>
      `
    }
  `;
}

/** @param {{offers: number, likes?: number}} told */
const offersInWords = ({ offers, likes = 0 }) =>
  likes ? say('tasting-offers-and-likes', { count: offers, others: likes }) : say('tasting-offers', { count: offers });

/** @param {{colonyId: string}} props */
function Earlier({ colonyId }) {
  const ended = endedTastings(colonyId);
  const from_ms = Math.min(...ended.map((tasting) => Date.parse(tasting.set.started_on) - DAY_MS));
  const log = useHistory(colonyId, { from_ms, fits: (row) => Boolean(row.set.tasting_id || row.set.outcome) }) ?? [];
  if (!ended.length) return null;
  return html`
    <details>
      <summary>${say('tasting-earlier')}</summary>
      ${ended.map(
        (tasting) => html`
          <div class="stack" key=${tasting.id}>
            <p class="soft">
              ${say('tasting-days', { from: fullDay(tasting.set.started_on), to: fullDay(tasting.set.ended_on ?? '') })}
            </p>
            <ul>
              ${tally(log, tasting).map(
                ({ food, taken, checked }) => html`
                  <li>
                    ${
                      checked
                        ? say('tasting-tally', { food: foodName(food), taken, checked })
                        : say('tasting-unchecked', { food: foodName(food) })
                    }
                  </li>
                `,
              )}
            </ul>
          </div>
        `,
      )}
    </details>
  `;
}
