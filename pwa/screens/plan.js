// What the plan says of a colony: each gauge with its reasons and its range, and the keeper's own interval over it.
import { useState } from 'preact/hooks';
import { Countdown, countsDown } from '../components/countdown.js';
import { html } from '../components/html.js';
import { Cautions, Notices, Reasons } from '../components/reasons.js';
import { Stepper } from '../components/stepper.js';
import { levelInWords } from '../components/tube.js';
import { levelAt } from '../care/gauges.js';
import { keep, say } from '../signals/actions.js';
import { gaugesOf } from '../signals/gauges.js';
import { now, planOf } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { RhythmSheet, needName, rhythmInWords, rhythmOf } from './rhythm.js';

const MAY_BE_SET = ['sugar', 'protein', 'seeds', 'leaves', 'barrier', 'glance']; // server: care/plan/own.py
const USUAL_DAYS = 4;
const LONGEST_DAYS = 60;

/** @param {{colony: import('../care/overlay.js').ShownRow}} props */
export function Plan({ colony }) {
  const { notices = [], cautions = [], computed_at_ms } = planOf(colony.id)?.set ?? {};
  const [rhythm, setRhythm] = useState('');
  const gauges = gaugesOf(colony.id);
  const paused = MAY_BE_SET.filter((need) => rhythmOf(colony.id, need) && !gauges.some((gauge) => gauge.need === need));
  return html`<section class="stack" aria-label=${m.colony.plan}><h2>${m.colony.plan}</h2>
  ${notices.filter(countsDown).map((/** @type {any} */ notice) => html`<${Countdown} notice=${notice} fromMs=${computed_at_ms} />`)}
  <${Cautions} items=${cautions} />
  <${Notices} items=${notices.filter((/** @type {any} */ notice) => !countsDown(notice))} />
  ${gauges.map((gauge) => html`<details class="card" key=${gauge.need}><summary>${levelInWords(gauge)}</summary>
    <${Reasons} items=${gauge.reasons} /><${Spread} gauge=${gauge} />
    ${MAY_BE_SET.includes(gauge.need) && html`<div class="stack"><${OwnInterval} colony=${colony} need=${gauge.need} /><${OwnRhythm} colony=${colony} need=${gauge.need} onOpen=${setRhythm} /></div>`}</details>`)}
  ${paused.map((need) => html`<div class="card stack" key=${need}><${OwnRhythm} colony=${colony} need=${need} onOpen=${setRhythm} named /></div>`)}
  ${rhythm && html`<${RhythmSheet} colony=${colony} need=${rhythm} onClose=${() => setRhythm('')} />`}</section>`;
}

/** The keeper's own days, hour or pause, with the way to change them. @param {{colony: import('../care/overlay.js').ShownRow, need: string, onOpen: (need: string) => void, named?: boolean}} props */
function OwnRhythm({ colony, need, onOpen, named = false }) {
  const rule = rhythmOf(colony.id, need);
  return html`${rule && html`<p>${named ? `${needName(need)}: ` : ''}${rhythmInWords(rule)}</p>`}
    <button type="button" class="button" onClick=${() => onOpen(need)}>${m.rhythm.open}</button>`;
}

/** The range of the due date, where the plan gives one. @param {{gauge: import('../care/gauges.js').Gauge}} props */
function Spread({ gauge }) {
  const left = levelAt(gauge, now.value) - gauge.due_level;
  if (left <= 0 || gauge.rate_low <= 0 || gauge.rate_high <= gauge.rate_low) return null;
  const days = (/** @type {number} */ rate) => Math.round(left / rate);
  const [low, high] = [days(gauge.rate_high), days(gauge.rate_low)];
  return low !== high && html`<p class="soft">${m.plan.spread(low, high)}</p>`;
}

/** @param {{colony: import('../care/overlay.js').ShownRow, need: string}} props */
function OwnInterval({ colony, need }) {
  const all = colony.set.interval_days ?? {};
  const was = all[need];
  const [days, setDays] = useState(was ?? USUAL_DAYS);
  const [open, setOpen] = useState(false);
  /** @param {number | null} next */
  async function set(next) {
    const { [need]: _old, ...others } = all;
    await keep('colony', { interval_days: next === null ? others : { ...others, [need]: next } }, colony.id);
    say(next === null ? m.plan.cleared : m.plan.kept);
    setOpen(false);
  }
  return html`${was && html`<p>${m.plan.every(was)}</p>`}
    ${open ? html`<${Stepper} label=${m.plan.own} value=${days} step=${1} most=${LONGEST_DAYS} unit=${m.plan.days(days)} onChange=${setDays} />
      <button type="button" class="button main wide" onClick=${() => set(days)}>${m.plan.keep}</button>`
      : html`<button type="button" class="button" onClick=${() => setOpen(true)}>${m.plan.set}</button>`}
    ${was && html`<button type="button" class="button" onClick=${() => set(null)}>${m.plan.clear}</button>`}`;
}
