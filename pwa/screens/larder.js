// The larder: foods in the house with their origin, how long they keep or are held, and sugar water mixed at home.
import { useState } from 'preact/hooks';
import { weekDay } from '../components/days.js';
import { Empty } from '../components/empty.js';
import { html } from '../components/html.js';
import { Icon } from '../components/icon.js';
import { DAY_MS } from '../care/gauges.js';
import { originVerdict } from '../care/origin.js';
import { say as inTable } from '../care/words.js';
import { keep, say } from '../signals/actions.js';
import { catalogue, rowsOf, today } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { t } from '../text/en.js';
import { capital } from './event-words.js';
import { LeftSheet, LotSheet, MixSheet } from './larder-forms.js';
import { LarderOutlook } from './larder-outlook.js';

/** Whole days from today to a date. @param {string} date ISO */
const daysTo = (date) => Math.round((Date.parse(date) - Date.parse(today.value)) / DAY_MS);
export function LarderScreen() {
  const [sheet, setSheet] = useState('');
  const lots = rowsOf('lot').filter((lot) => !lot.set.finished_on).sort((a, b) => (a.set.use_by ?? '9') < (b.set.use_by ?? '9') ? -1 : 1);
  return html`<h1>${m.larder.title}</h1>
    ${!lots.length && html`<${Empty} bare title=${m.larder.empty} />`}
    ${lots.length > 0 && html`<section class="stack" aria-label=${m.larder.lots}>${lots.map((lot) => html`<${Lot} key=${lot.id} lot=${lot} />`)}</section>`}
    <div class="wrap even"><button type="button" class="button main" onClick=${() => setSheet('lot')}><${Icon} name="add" />${m.larder.add}</button>
      <button type="button" class="button" onClick=${() => setSheet('mix')}><${Icon} name="sugar" />${m.larder.mix}</button></div>
    <${LarderOutlook} />
    <a class="button" href="#/reckon">${m.reckon.title}</a>
    ${sheet === 'lot' && html`<${LotSheet} onClose=${() => setSheet('')} />`}
    ${sheet === 'mix' && html`<${MixSheet} onClose=${() => setSheet('')} />`}`;
}

/** @param {{lot: import('../care/overlay.js').ShownRow}} props */
function Lot({ lot }) {
  const words = catalogue.value?.words ?? {};
  const v = lot.set;
  const name = v.name || capital(inTable(words, 'food', v.food_code));
  const [open, setOpen] = useState(false);
  const verdict = originVerdict(catalogue.value?.origins ?? {}, v.origin, { got_on: v.got_on ?? null, today: today.value });
  const left = v.use_by ? daysTo(v.use_by) : null;
  const bad = ['refuse', 'hold'].includes(verdict.verdict) || (left !== null && left < 0);
  const state = verdict.verdict === 'hold' && verdict.until ? m.larder.held(weekDay(verdict.until), daysTo(verdict.until))
    : verdict.verdict === 'refuse' ? m.larder.never : left === null ? '' : left < 0 ? m.larder.over : m.larder.left(left);
  const facts = [v.amount == null ? '' : `${v.amount} ${t.units[v.unit]?.(v.amount) ?? ''}`, inTable(words, 'origin', v.origin), v.got_on ? m.larder.got(weekDay(v.got_on)) : '', v.use_by ? m.larder.use_by(weekDay(v.use_by)) : ''].filter(Boolean).join(' · ');
  const need = catalogue.value?.foods?.[v.food_code]?.need ?? 'other';
  async function usedUp() {
    await keep('lot', { finished_on: today.value }, lot.id);
    say(m.larder.used_up, async () => { await keep('lot', { finished_on: null }, lot.id); say(t.taken_back); });
  }
  return html`<article class=${`card ${bad ? 'urgent' : ''}`}><div class="row top-align"><span class="badge"><${Icon} name=${need} /></span>
    <div class="grow stack"><h2>${name}</h2>${state && html`<p><strong>${state}</strong></p>`}<p class="soft">${facts}</p>
      ${verdict.verdict !== 'fine' && html`<p class="caution">${inTable(words, 'origin_why', verdict.reason_code)}</p>`}</div></div>
    <div class="wrap even"><button type="button" class="button" aria-label=${`${m.larder.left_now}: ${name}`} onClick=${() => setOpen(true)}>${m.larder.left_now}</button>
      <button type="button" class="button" aria-label=${`${m.larder.used}: ${name}`} onClick=${usedUp}>${m.larder.used}</button></div>
    ${open && html`<${LeftSheet} lot=${lot} title=${`${m.larder.left_now}: ${name}`} onClose=${() => setOpen(false)} />`}</article>`;
}
