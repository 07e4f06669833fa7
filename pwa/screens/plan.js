// What the plan says of a colony: the brood, each gauge with its reasons and its range, and over it the
// keeper's own interval, days, hour or pause.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { ManyChoice } from '../components/choices.js';
import { textsOf } from '../components/forms.js';
import { html } from '../components/html.js';
import { lazy } from '../components/lazy.js';
import { Sheet } from '../components/sheet.js';
import { Stepper } from '../components/stepper.js';
import { levelInWords } from '../components/tube.js';
import { levelAt } from '../care/gauges.js';
import { keep, remove, tell } from '../signals/actions.js';
import { now, today } from '../signals/clock.js';
import { catalogue, gaugesOf, planOf, rowsOf } from '../signals/rows.js';
import { Cautions, Notices, OF_BROOD, Reasons } from '../components/in-words.js';
import { say, sayOf } from '../words/say.js';
import { listed, weekDay } from '../words/shown.js';
import { nameOfWeekday } from './field-words.js';

const Brood = lazy(() => import('./brood.js'), 'Brood', 'charts');

const USUAL_DAYS = 4;
const LONGEST_DAYS = 60;

/** @typedef {import('../kinds.d.ts').Need} Need */

/** Whether the keeper may give a need a rhythm of their own. @param {Need} need */
const maySet = (need) => catalogue.value.needs[need]?.keeper_sets;

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'>}} props */
export function Plan({ colony }) {
  const { notices = [], cautions = [], census } = planOf(colony.id)?.set ?? {};
  const [rhythm, setRhythm] = useState('');
  const gauges = gaugesOf(colony.id);
  const needs = /** @type {Need[]} */ (Object.keys(catalogue.value.needs));
  const unseen = needs.filter((need) => !gauges.some((gauge) => gauge.need === need));
  const paused = unseen.filter((need) => maySet(need) && rhythmOf(colony.id, need));
  return html`
    <section class="stack" aria-label=${say('colony-plan')}>
      <h2>${say('colony-plan')}</h2>
      ${
        census &&
        html`
          <${Brood} colony=${colony} />
        `
      }
      <${Cautions} items=${cautions} />
      <${Notices} items=${notices.filter(({ code }) => !OF_BROOD.includes(code))} />
      ${gauges.map(
        (gauge) => html`
          <details class="card" key=${gauge.need}>
            <summary>${levelInWords(gauge)}</summary>
            <${Reasons} items=${gauge.reasons} />
            <${Spread} gauge=${gauge} />
            ${
              maySet(gauge.need) &&
              html`
                <div class="stack">
                  <${OwnInterval} colony=${colony} need=${gauge.need} />
                  <${OwnRhythm} colony=${colony} need=${gauge.need} onOpen=${setRhythm} />
                </div>
              `
            }
          </details>
        `,
      )}
      ${paused.map(
        (need) => html`
          <div class="card stack" key=${need}>
            <${OwnRhythm} colony=${colony} need=${need} onOpen=${setRhythm} named />
          </div>
        `,
      )}
      ${
        rhythm &&
        html`
          <${RhythmSheet} colony=${colony} need=${rhythm} onClose=${() => setRhythm('')} />
        `
      }
    </section>
  `;
}

/**
 * The keeper's own days, hour or pause, with the way to change them.
 * @param {{colony: import('../care/overlay.js').ShownRow<'colony'>, need: string, onOpen: (need: string) => void,
 *   named?: boolean}} props
 */
function OwnRhythm({ colony, need, onOpen, named = false }) {
  const rule = rhythmOf(colony.id, need);
  return html`
    ${
      rule &&
      html`
        <p>${named ? `${needName(need)}: ` : ''}${rhythmInWords(rule)}</p>
      `
    }
    <button type="button" class="button" onClick=${() => onOpen(need)}>${say('plan-rhythm-open')}</button>
  `;
}

/** The range of the due date, where the plan gives one. @param {{gauge: import('../care/gauges.js').Gauge}} props */
function Spread({ gauge }) {
  const left = levelAt(gauge, now.value) - gauge.due_level;
  if (left <= 0 || gauge.rate_low <= 0 || gauge.rate_high <= gauge.rate_low) return null;
  const days = (/** @type {number} */ rate) => Math.round(left / rate);
  const [low, high] = [days(gauge.rate_high), days(gauge.rate_low)];
  return (
    low !== high &&
    html`
      <p class="soft">${say('plan-spread', { low, high })}</p>
    `
  );
}

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'>, need: string}} props */
function OwnInterval({ colony, need }) {
  const all = /** @type {Record<string, number>} */ (colony.set.interval_days ?? {});
  const was = all[need];
  const [days, setDays] = useState(was ?? USUAL_DAYS);
  const [open, setOpen] = useState(false);
  /** @param {number | null} next */
  async function set(next) {
    const { [need]: _old, ...others } = all;
    await keep('colony', { interval_days: next === null ? others : { ...others, [need]: next } }, colony.id);
    tell(next === null ? say('plan-cleared') : say('plan-kept'));
    setOpen(false);
  }
  return html`
    ${
      was &&
      html`
        <p>${say('plan-every', { days: was })}</p>
      `
    }
    ${
      open
        ? html`
            <${Stepper}
              label=${say('plan-own')}
              value=${days}
              step=${1}
              most=${LONGEST_DAYS}
              unit=${say('plan-days', { count: days })}
              onChange=${setDays}
            />
            <button type="button" class="button main wide" onClick=${() => set(days)}>${say('plan-keep')}</button>
          `
        : html`
            <button type="button" class="button" onClick=${() => setOpen(true)}>${say('plan-set')}</button>
          `
    }
    ${
      was &&
      html`
        <button type="button" class="button" onClick=${() => set(null)}>${say('plan-clear')}</button>
      `
    }
  `;
}

/** @param {string} need */
const needName = (need) => sayOf('need', need);

/**
 * The keeper's own days, hour and pause for a need: they rule over the plan's own reckoning.
 * @param {string} colonyId
 * @param {string} need
 */
const rhythmOf = (colonyId, need) =>
  rowsOf('rule').find((rule) => rule.set.colony_id === colonyId && rule.set.need === need);

/** What a rule says, in words. @param {{set: import('../kinds.d.ts').Rule}} rule */
function rhythmInWords({ set: { weekdays = [], at, paused_until } }) {
  if (paused_until && paused_until > today.value) return say('plan-rhythm-paused', { day: weekDay(paused_until) });
  const days = weekdays?.length ? listed([...weekdays].sort().map(nameOfWeekday)) : at ? say('plan-rhythm-daily') : '';
  return at ? say('plan-rhythm-at', { days, hour: at }) : days;
}

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'>, need: string, onClose: () => void}} props */
function RhythmSheet({ colony, need, onClose }) {
  const rule = rhythmOf(colony.id, need);
  const was = /** @type {Partial<import('../kinds.d.ts').Rule>} */ (rule?.set ?? {});
  const [days, setDays] = useState(() => Array.from(was.weekdays ?? [], String));
  const { attempt, busy, said } = useAttempt();
  const done = (/** @type {() => Promise<unknown>} */ work) =>
    attempt(async () => {
      await work();
      tell(say('plan-kept'));
      onClose();
    });
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    const ruled = /** @type {import('../kinds.d.ts').Rule['need']} */ (need);
    const set = { weekdays: days.map(Number), at: text('at') || null, paused_until: text('until') || null };
    const empty = !set.weekdays.length && !set.at && !set.paused_until;
    return done(async () =>
      empty ? rule && remove('rule', rule.id) : keep('rule', { colony_id: colony.id, need: ruled, ...set }, rule?.id),
    );
  }
  return html`
    <${Sheet} title=${say('plan-rhythm-title', { need: needName(need) })} onClose=${onClose}>
      <form class="stack" onSubmit=${save}>
        <${ManyChoice}
          label=${say('plan-rhythm-days')}
          options=${[0, 1, 2, 3, 4, 5, 6].map((weekday) => [String(weekday), nameOfWeekday(weekday)])}
          values=${days}
          onChange=${setDays}
        />
        <label>
          ${say('plan-rhythm-hour')}${' '}
          <small>${say('colony-form-optional')}</small>
          <input name="at" type="time" defaultValue=${was.at ?? ''} />
        </label>
        <label>
          ${say('plan-rhythm-until')}${' '}
          <small>${say('colony-form-optional')}</small>
          <input name="until" type="date" min=${today.value} defaultValue=${was.paused_until ?? ''} />
        </label>
        <p class="soft">${say('plan-rhythm-urgent')}</p>
        ${said}
        <button class="button main wide" disabled=${busy}>${say('colony-form-save')}</button>
        ${
          rule &&
          html`
            <button
              type="button"
              class="button wide"
              disabled=${busy}
              onClick=${() => done(() => remove('rule', rule.id))}
            >
              ${say('plan-clear')}
            </button>
          `
        }
      </form>
    </${Sheet}>
  `;
}
