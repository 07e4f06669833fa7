// Later, or not this time: put a task off by an hour, to the evening or to tomorrow, or skip it with a reason.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice } from '../components/choice.js';
import { html } from '../components/html.js';
import { Sheet } from '../components/sheet.js';
import { DAY_MS } from '../care/gauges.js';
import { later } from '../signals/actions.js';
import { rowsOf } from '../signals/shelf.js';
import { t } from '../text/en.js';
import { nameOf } from './event-words.js';
import { taskTitle } from './task.js';

const HOUR_MS = 3_600_000;
const EVENING = '18:30';
const LONGEST_SKIP_DAYS = 7;

/** @param {number} days @param {string} wallTime @returns {number} that time of the local day, in ms */
function at(days, wallTime) {
  const [hours = 0, minutes = 0] = wallTime.split(':').map(Number);
  const day = new Date();
  return new Date(day.getFullYear(), day.getMonth(), day.getDate() + days, hours, minutes).getTime();
}

/** How long a skipped turn lasts: what a full gauge would have lasted, at most a week. @param {any} gauge @returns {number} ms */
function turnMs(gauge) {
  const days = gauge?.rate_per_day ? (gauge.capacity - gauge.due_level) / gauge.rate_per_day : 1;
  return Math.min(LONGEST_SKIP_DAYS, Math.max(1, days)) * DAY_MS;
}

/** @param {{item: any, onClose: () => void}} props */
export function LaterSheet({ item, onClose }) {
  const [why, setWhy] = useState('');
  const [own, setOwn] = useState('');
  const { attempt, busy, said } = useAttempt();
  const hours = rowsOf('household')[0]?.set.care_hours ?? [];
  const evening = at(0, hours[1] ?? EVENING);
  /** @param {number} until @param {string} [reason] */
  const put = (until, reason) => attempt(async () => { await later(item, until, reason); onClose(); });
  return html`<${Sheet} title=${t.later.title} onClose=${onClose}>
    <p><strong>${nameOf(item.colony_id)}</strong>: ${taskTitle(item)}</p>
    <div role="group" aria-label=${t.later.when} class="choice"><span>${t.later.when}</span><div class="wrap even">
      <button type="button" class="button" disabled=${busy} onClick=${() => put(Date.now() + HOUR_MS)}>${t.later.hour}</button>
      ${evening > Date.now() + HOUR_MS && html`<button type="button" class="button" disabled=${busy} onClick=${() => put(evening)}>${t.later.evening}</button>`}
      <button type="button" class="button" disabled=${busy} onClick=${() => put(at(1, hours[0] ?? '08:00'))}>${t.later.tomorrow}</button></div></div>
    <${Choice} label=${t.later.skip} options=${t.later.why} value=${why} onPick=${setWhy} />
    ${why === 'other' && html`<label>${t.later.own}<input value=${own} maxlength="200" onInput=${(/** @type {any} */ e) => setOwn(e.target.value)} /></label>`}
    ${why && html`<button type="button" class="button wide" disabled=${busy || (why === 'other' && !own.trim())} onClick=${() => put(Date.now() + turnMs(item.gauge), why === 'other' ? own.trim() : why)}>${t.later.go}</button>`}
    ${said}
  </${Sheet}>`;
}
