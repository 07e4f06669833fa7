// What a colony likes: start a tasting, see what it has told so far, end it, look back at earlier ones.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice, ManyChoice } from '../components/choices.js';
import { Figures } from '../components/figures.js';
import { html } from '../components/html.js';
import { capital, fullDay, inWords, wordFor } from '../components/in-words.js';
import { dueInWords, needClass } from '../components/tube.js';
import { DAY_MS, dueAtMs } from '../care/gauges.js';
import { say } from '../signals/actions.js';
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
import { colonyText } from '../text/en/colony.js';
import { tastingText } from '../text/en/tasting.js';

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
const foodName = (code) => capital(wordFor('food', code));

/** @param {number} share */
const percent = (share) => Math.round(share * 100);

/** @param {{colony: ColonyRow}} props */
export function Tasting({ colony }) {
  const running = runningTasting(colony.id);
  const unfit = unfitFor(colony);
  const states = /** @type {Record<string, string>} */ ({ ...colonyText.conditions, ...colonyText.stages });
  const state = unfit && states[unfit]?.toLowerCase();
  return html`
    <div class="stack">
      ${
        !running &&
        html`
          <p class="soft">${tastingText.about}</p>
        `
      }
      ${
        state &&
        html`
          <p class="caution calm">${tastingText.not_now(state)}</p>
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
  const { attempt, busy, said, say: tell } = useAttempt();
  if (!kinds.length) {
    return html`
      <p>${tastingText.none}</p>
    `;
  }
  function start() {
    if (foods.length < FEWEST || foods.length > MOST) return tell(tastingText.pick);
    return attempt(async () => {
      await startTasting(colony.id, foods.map(foodName).join(', ').slice(0, LONGEST_NAME), foods);
      say(tastingText.started);
    });
  }
  return html`
    ${
      kinds.length > 1 &&
      html`
        <${Choice}
          label=${tastingText.kind}
          value=${need}
          onPick=${(/** @type {string} */ next) => {
            setNeed(next);
            setFoods([]);
          }}
          options=${kinds.map(([each]) => [each, wordFor('need', each)])}
        />
      `
    }
    <${ManyChoice}
      label=${tastingText.foods}
      values=${foods}
      onChange=${setFoods}
      options=${(kinds.find(([each]) => each === need)?.[1] ?? []).map((code) => [code, foodName(code)])}
    />
    ${said}
    <button type="button" class="button main wide" disabled=${busy} onClick=${start}>${tastingText.go}</button>
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
      say(tastingText.ended, async () => {
        await endTasting(tasting, null);
      });
    });
  const rows = told.map((each) => [
    foodName(each.food_code),
    String(each.offers),
    `${percent(each.mean)} %`,
    `${percent(each.low)}–${percent(each.high)} %`,
    `${percent(each.best)} %`,
  ]);
  return html`
    <h3>${tastingText.told}</h3>
    <p class="soft">
      ${tastingText.since(fullDay(tasting.set.started_on))}. ${told.length ? tastingText.range : tastingText.wait}
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
          <li key=${each.food_code}><${Liking} told=${each} /></li>
        `,
      )}
    </ul>
    ${
      told.length > 0 &&
      html`
        <${Figures}
          heads=${[tastingText.food, tastingText.offered, tastingText.share, tastingText.spread, tastingText.favourite]}
          rows=${rows}
        />
      `
    }
    ${said}
    <button type="button" class="button start" disabled=${busy} onClick=${end}>${tastingText.end}</button>
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
  return tastingText.next(foodName(task.portion.food_code), dueInWords(gauge ? dueAtMs(gauge) : task.due_at_ms));
}

const WIDE = 340;

/** How often one food is taken, as a bar with its range over it. @param {{told: Told}} props */
function Liking({ told }) {
  const need = catalogue.value?.foods?.[told.food_code]?.need ?? 'other';
  const [low, mean, high] = [told.low * WIDE, told.mean * WIDE, told.high * WIDE];
  const range = tastingText.taken(percent(told.mean), percent(told.low), percent(told.high));
  return html`
    <p class="eyebrow">
      <strong>${foodName(told.food_code)}</strong>
      ${told.offers ? tastingText.best(percent(told.best)) : tastingText.not_offered}
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
  likes ? tastingText.offers_and_likes(offers, likes) : tastingText.offers(offers);

/** @param {{colonyId: string}} props */
function Earlier({ colonyId }) {
  const ended = endedTastings(colonyId);
  const from_ms = Math.min(...ended.map((tasting) => Date.parse(tasting.set.started_on) - DAY_MS));
  const log = useHistory(colonyId, { from_ms, fits: (row) => Boolean(row.set.tasting_id || row.set.outcome) }) ?? [];
  if (!ended.length) return null;
  return html`
    <details>
      <summary>${tastingText.earlier}</summary>
      ${ended.map(
        (tasting) => html`
          <div class="stack" key=${tasting.id}>
            <p class="soft">
              ${tastingText.days(fullDay(tasting.set.started_on), fullDay(tasting.set.ended_on ?? ''))}
            </p>
            <ul>
              ${tally(log, tasting).map(
                ({ food, taken, checked }) => html`
                  <li>
                    ${
                      checked
                        ? tastingText.tally(foodName(food), taken, checked)
                        : tastingText.unchecked(foodName(food))
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
