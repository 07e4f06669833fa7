// The history as a diary: by day, newest first, one page at a time so that years of it stay light.
import { useState } from 'preact/hooks';
import { html, Icon } from '../components/html.js';
import { eventInWords, timeOfDay } from '../components/in-words.js';
import { Sheet } from '../components/parts.js';
import { Photo } from '../components/photo.js';
import { SaveState } from '../components/states.js';
import { DAY_MS } from '../care/gauges.js';
import { voidLog } from '../signals/actions.js';
import { useHistory } from '../signals/history.js';
import { now, rows } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { t } from '../text/en.js';
import { Lazy } from './lazy.js';

const PAGE = 30;

/** @param {{colonyId: string}} props */
export function Diary({ colonyId }) {
  const [from, setFrom] = useState(0);
  const [kind, setKind] = useState('');
  const [wanted, setWanted] = useState('');
  const [opened, setOpened] = useState('');
  const text = wanted.trim().toLowerCase();
  const { log: all } = useHistory(colonyId);
  const log = all.filter((row) => (!kind || row.kind === kind) && (!text || `${eventInWords(row)} ${row.set.remark ?? ''}`.toLowerCase().includes(text))).reverse();
  const page = log.slice(from, from + PAGE);
  const open = all.find((row) => row.id === opened);
  const kinds = [...new Set(all.map((row) => row.kind))];
  /** @param {(value: string) => void} set */
  const narrow = (set) => (/** @type {any} */ e) => { set(e.target.value); setFrom(0); };
  return html`<section class="stack" aria-label=${m.colony.diary}><h2>${m.colony.diary}</h2>
    ${all.length > PAGE && html`<div class="pair screen-only"><label>${m.diary.search}<input type="search" value=${wanted} onInput=${narrow(setWanted)} /></label>
      <label>${m.diary.kinds}<select onChange=${narrow(setKind)}><option value="">${m.diary.all}</option>${kinds.map((each) => html`<option value=${each}>${/** @type {any} */ (t.kinds)[each] ?? each}</option>`)}</select></label></div>`}
    ${from > 0 && html`<button type="button" class="button" onClick=${() => setFrom(Math.max(0, from - PAGE))}>${m.diary.newer}</button>`}
    ${byDay(page).map(([day, entries]) => html`<div key=${day}><h3 class="day">${dayInWords(entries[0]?.happened_ms ?? 0)}</h3><ul class="diary">${entries.map((row) => html`<${Entry} key=${row.id} row=${row} onOpen=${() => setOpened(row.id)} />`)}</ul></div>`)}
    ${log.length > from + PAGE && html`<button type="button" class="button" onClick=${() => setFrom(from + PAGE)}>${m.diary.earlier}</button>`}
    ${!log.length && html`<p class="soft">${all.length ? m.diary.none : m.diary.empty}</p>`}
    ${open && html`<${Sheet} title=${eventInWords(open)} onClose=${() => setOpened('')}><${Lazy} from="past" name="Past" props=${{ row: open }} /></${Sheet}>`}</section>`;
}

/** @typedef {import('../care/overlay.js').ShownRow} ShownRow */

/** @param {ShownRow[]} log @returns {Array<[string, ShownRow[]]>} */
function byDay(log) {
  /** @type {Map<string, ShownRow[]>} */
  const days = new Map();
  for (const row of log) {
    const day = new Date(row.happened_ms ?? 0).toDateString();
    days.set(day, [...(days.get(day) ?? []), row]);
  }
  return [...days];
}

/** @param {number} ms */
function dayInWords(ms) {
  const day = new Date(ms);
  if (day.toDateString() === new Date(now.value).toDateString()) return m.diary.today;
  if (day.toDateString() === new Date(now.value - DAY_MS).toDateString()) return m.diary.yesterday;
  return day.toLocaleDateString([], { weekday: 'long', day: 'numeric', month: 'long', ...(day.getFullYear() === new Date(now.value).getFullYear() ? {} : { year: 'numeric' }) });
}

/** @param {{row: ShownRow, onOpen: () => void}} props */
function Entry({ row, onOpen }) {
  const who = row.by ? rows.value.get(row.by)?.set.name : null;
  const tasting = row.set.tasting_id && rows.value.get(row.set.tasting_id)?.set.name;
  return html`<li class="row"><span class=${`badge ${row.kind === 'fault' && !row.set.resolved_at ? 'warn' : ''}`}><${Icon} name=${row.kind === 'feeding' ? row.set.need : row.kind} /></span>
    <button type="button" class="open grow" aria-haspopup="dialog" onClick=${onOpen}><span class="words">${eventInWords(row)}</span>${row.set.remark && html`<span class="soft">${row.set.remark}</span>`}${tasting && html`<span class="soft">${m.tasting.part(tasting)}</span>`}
      <span class="soft">${timeOfDay(row.happened_ms ?? 0)} ${who ? t.round.by(who) : ''}${row.state === 'synced' ? '' : html` · <${SaveState} state=${row.state} />`}</span></button>
    ${row.kind === 'photo' && html`<${Photo} row=${row} words="" />`}<button type="button" class="button quiet screen-only" aria-label=${`${m.diary.void}: ${eventInWords(row)}`} onClick=${() => voidLog(row)}>${m.diary.void}</button></li>`;
}
