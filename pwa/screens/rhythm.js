// The keeper's own days, hour and pause for a need of a colony: they rule over the plan's own reckoning.
import { useState } from 'preact/hooks';
import { textsOf, useAttempt } from '../components/attempt.js';
import { ManyChoice } from '../components/choice.js';
import { weekDay } from '../components/days.js';
import { html } from '../components/html.js';
import { Sheet } from '../components/sheet.js';
import { say as inTable } from '../care/words.js';
import { keep, remove, say } from '../signals/actions.js';
import { catalogue, rowsOf, today } from '../signals/shelf.js';
import { m } from '../text/en-more.js';

const r = m.rhythm;
const MONDAY_MS = Date.UTC(2024, 0, 1, 12);
const dayName = (/** @type {number} */ day) => new Date(MONDAY_MS + day * 86_400_000).toLocaleDateString([], { weekday: 'long', timeZone: 'UTC' });
/** @param {string} need */
export const needName = (need) => inTable(catalogue.value?.words ?? {}, 'need', need);

/** @param {string} colonyId @param {string} need */
export const rhythmOf = (colonyId, need) => rowsOf('rule').find((rule) => rule.set.colony_id === colonyId && rule.set.need === need);

/** What a rule says, in words. @param {{set: Record<string, any>}} rule */
export function rhythmInWords({ set: { weekdays = [], at, paused_until } }) {
  if (paused_until > today.value) return r.paused(weekDay(paused_until));
  const days = weekdays?.length ? [...weekdays].sort().map(dayName).join(', ') : at ? r.daily : '';
  return [days, at ? r.at(at) : ''].filter(Boolean).join(' ');
}

/** @param {{colony: import('../care/overlay.js').ShownRow, need: string, onClose: () => void}} props */
export function RhythmSheet({ colony, need, onClose }) {
  const rule = rhythmOf(colony.id, need);
  const was = rule?.set ?? {};
  const [days, setDays] = useState(() => Array.from(was.weekdays ?? [], String));
  const { attempt, busy, said } = useAttempt();
  const done = (/** @type {() => Promise<unknown>} */ work) => attempt(async () => { await work(); say(m.plan.kept); onClose(); });
  /** @param {any} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event.target);
    const set = { weekdays: days.map(Number), at: text('at') || null, paused_until: text('until') || null };
    const empty = !set.weekdays.length && !set.at && !set.paused_until;
    return done(async () => (empty ? rule && remove('rule', rule.id) : keep('rule', { colony_id: colony.id, need, ...set }, rule?.id)));
  }
  return html`<${Sheet} title=${`${needName(need)}: ${r.title}`} onClose=${onClose}><form class="stack" onSubmit=${save}>
    <${ManyChoice} label=${r.days} options=${[0, 1, 2, 3, 4, 5, 6].map((day) => [String(day), dayName(day)])} values=${days} onChange=${setDays} />
    <label>${r.hour} <small>${m.form.optional}</small><input name="at" type="time" defaultValue=${was.at ?? ''} /></label>
    <label>${r.until} <small>${m.form.optional}</small><input name="until" type="date" min=${today.value} defaultValue=${was.paused_until ?? ''} /></label>
    <p class="soft">${r.urgent}</p>${said}
    <button class="button main wide" disabled=${busy}>${m.form.save}</button>
    ${rule && html`<button type="button" class="button wide" disabled=${busy} onClick=${() => done(() => remove('rule', rule.id))}>${m.plan.clear}</button>`}</form></${Sheet}>`;
}
