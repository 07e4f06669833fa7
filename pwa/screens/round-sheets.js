// Two sheets of the round. Later, or not this time: put a task off by an hour, to the evening or to tomorrow, or skip
// it with a reason. Several at once: all of these got sugar, each colony the portion that its own plan suggests.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice, ManyChoice } from '../components/choices.js';
import { typed } from '../components/forms.js';
import { html } from '../components/html.js';
import { Sheet } from '../components/sheet.js';
import { endOfDayMs } from '../care/instants.js';
import { CAN_WAIT_H, NO_LONGER_KEPT } from '../care/codes.js';
import { DAY_MS, HOUR_MS } from '../care/rules.js';
import { later, logAll } from '../signals/actions.js';
import { nowMs } from '../signals/clock.js';
import { catalogue, itemsAhead, planOf, rowsOf } from '../signals/rows.js';
import { session } from '../signals/session.js';
import { runningTasting } from '../signals/tastings.js';
import { taskTitle } from '../components/task.js';
import { portionInWords } from '../words/portions.js';
import { nameOf } from '../components/in-words.js';
import { choicesOf, labelled, say, sayOf } from '../words/say.js';
import { capital } from '../words/shown.js';

const EVENING = '18:30';
const LONGEST_SKIP_DAYS = 7;

/**
 * Until when this phone may put a need off: what cannot wait over night at most, and a stand-in not beyond the pass.
 * @param {import('../kinds.d.ts').Need} need @returns {number} ms
 */
function latestMs(need) {
  const lastDay = session.value?.pass?.ends_on;
  return Math.min(
    catalogue.value.needs[need]?.may_wait ? Infinity : nowMs() + CAN_WAIT_H * HOUR_MS - 60_000,
    lastDay ? endOfDayMs(new Date(`${lastDay}T12:00`)) : Infinity,
  );
}

/** @param {number} days @param {string} wallTime @returns {number} that time of the local day, in ms */
function at(days, wallTime) {
  const [hours = 0, minutes = 0] = wallTime.split(':').map(Number);
  const day = new Date(nowMs());
  return new Date(day.getFullYear(), day.getMonth(), day.getDate() + days, hours, minutes).getTime();
}

/**
 * How long a skipped turn lasts: what a full gauge would have lasted, at most a week.
 * @param {import('../care/gauges.js').Gauge | null} gauge
 * @returns {number} ms
 */
function turnMs(gauge) {
  const days = gauge?.rate_per_day ? (gauge.capacity - gauge.due_level) / gauge.rate_per_day : 1;
  return Math.min(LONGEST_SKIP_DAYS, Math.max(1, days)) * DAY_MS;
}

/** @param {{item: import('../care/round.js').Item, onClose: () => void}} props */
export function LaterSheet({ item, onClose }) {
  const [why, setWhy] = useState('');
  const [own, setOwn] = useState('');
  const { attempt, busy, said } = useAttempt();
  const hours = rowsOf('household')[0]?.set.care_hours ?? [];
  const evening = at(0, hours[1] ?? EVENING);
  const tomorrow = at(1, hours[0] ?? '08:00');
  const latest = latestMs(item.need);
  /** @param {number} until @param {string} [reason] */
  const put = (until, reason) =>
    attempt(async () => {
      await later(item, Math.min(until, latest), reason);
      onClose();
    });
  return html`
    <${Sheet} title=${say('later-title')} onClose=${onClose}>
      <p>
        <strong>${labelled(nameOf(item.colony_id), taskTitle(item))}</strong>
      </p>
      <div role="group" aria-label=${say('later-when')} class="choice">
        <span>${say('later-when')}</span>
        <div class="wrap even">
          <button type="button" class="button" disabled=${busy} onClick=${() => put(nowMs() + HOUR_MS)}>
            ${say('later-hour')}
          </button>
          ${
            evening > nowMs() + HOUR_MS &&
            evening <= latest &&
            html`
              <button type="button" class="button" disabled=${busy} onClick=${() => put(evening)}>
                ${say('later-evening')}
              </button>
            `
          }
          ${
            tomorrow <= latest &&
            html`
              <button type="button" class="button" disabled=${busy} onClick=${() => put(tomorrow)}>
                ${say('later-tomorrow')}
              </button>
            `
          }
        </div>
      </div>
      ${
        !catalogue.value.needs[item.need]?.may_wait
          ? html`
              <p class="soft">${say('later-cannot-wait')}</p>
            `
          : html`
              <${Choice}
                label=${say('later-skip')}
                options=${choicesOf('later-why', ['still food', 'leave quiet', 'nothing in the house', 'other'])}
                value=${why}
                onPick=${setWhy}
              />
            `
      }
      ${
        why === 'other' &&
        html`
          <label>
            ${say('later-own')}
            <input value=${own} maxlength="200" onInput=${typed(setOwn)} />
          </label>
        `
      }
      ${
        why &&
        html`
          <button
            type="button"
            class="button wide"
            disabled=${busy || (why === 'other' && !own.trim())}
            onClick=${() => put(nowMs() + turnMs(item.gauge), why === 'other' ? own.trim() : why)}
          >
            ${say('later-go')}
          </button>
        `
      }
      ${said}
    </${Sheet}>
  `;
}

/** @typedef {import('../care/overlay.js').Change & {words: string}} Change */

/**
 * What this colony would get of a need, by its plan.
 * @param {import('../care/overlay.js').ShownRow<'colony'>} colony
 * @param {string} need
 * @param {import('../care/round.js').Item[]} ahead
 * @returns {Change | null}
 */
function changeFor(colony, need, ahead) {
  if (need === 'water') {
    return { kind: 'water', set: { colony_id: colony.id, action: 'refill' }, words: say('several-water') };
  }
  if (need === 'glance') {
    return { kind: 'check', set: { colony_id: colony.id, need: 'glance' }, words: say('several-look') };
  }
  const task = (planOf(colony.id)?.set.tasks ?? []).find((each) => each.need === need && each.suggested);
  if (!task?.suggested || !task.portion) return null;
  const tasting = runningTasting(colony.id);
  // as the task is called after this phone's own logs
  const item = ahead.find((each) => each.colony_id === colony.id && each.need === need && each.gauge);
  const tasted = tasting?.set.food_codes.includes(task.portion.food_code) ? { tasting_id: tasting.id } : {};
  const task_key = item?.task_key ?? task.key;
  return /** @type {Change} */ ({
    kind: task.suggested.kind,
    words: portionInWords(task.portion),
    set: { ...task.suggested.set, ...tasted, colony_id: colony.id, task_key, suggested: true },
  });
}

/** @param {{onClose: () => void}} props */
export function ManySheet({ onClose }) {
  const [need, setNeed] = useState('sugar');
  const [left_out, setLeftOut] = useState(/** @type {string[]} */ ([]));
  const { attempt, busy, said } = useAttempt();
  const foods = Object.entries(catalogue.value.needs).flatMap(([code, row]) => (row.food ? [code] : []));
  const ahead = itemsAhead();
  const able = rowsOf('colony')
    .filter(({ set }) => !NO_LONGER_KEPT.includes(set.condition ?? 'well'))
    .map((colony) => ({ colony, change: changeFor(colony, need, ahead) }))
    .filter((each) => each.change);
  const chosen = able.filter(({ colony }) => !left_out.includes(colony.id));
  const choose = (/** @type {string[]} */ ids) =>
    setLeftOut(able.map(({ colony }) => colony.id).filter((id) => !ids.includes(id)));
  const go = () =>
    attempt(async () => {
      await logAll(
        chosen.map(({ change }) => {
          const { words: _words, ...logged } = /** @type {Change} */ (change);
          return logged;
        }),
      );
      onClose();
    });
  return html`
    <${Sheet} title=${say('several-title')} onClose=${onClose}>
      <${Choice}
        label=${say('several-what')}
        value=${need}
        onPick=${setNeed}
        options=${[...foods, 'water', 'glance'].map((code) => [code, sayOf('need', code)])}
      />
      <${ManyChoice}
        label=${say('several-who')}
        values=${chosen.map(({ colony }) => colony.id)}
        onChange=${choose}
        options=${able.map(({ colony, change }) => [colony.id, labelled(colony.set.name, change?.words ?? '')])}
      />
      ${said}
      <button type="button" class="button main wide stick" disabled=${busy || !chosen.length} onClick=${go}>
        ${chosen.length ? say('several-go', { count: chosen.length }) : capital(say('several-none'))}
      </button>
    </${Sheet}>
  `;
}
