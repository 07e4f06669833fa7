// The round: what is due now, later today and next, each with one tap to log it as suggested.
import { useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { Cautions, Reasons } from '../components/reasons.js';
import { SaveState } from '../components/save-state.js';
import { Tube, dueInWords } from '../components/tube.js';
import { sayPortion, say } from '../care/words.js';
import { later, logAsSuggested, remove, resolve } from '../signals/actions.js';
import { route } from '../signals/route.js';
import { catalogue, round, rows, rowsOf } from '../signals/shelf.js';
import { t } from '../text/en.js';
import { capital, eventInWords, nameOf } from './event-words.js';
import { Lazy } from './lazy.js';

export function RoundScreen() {
  const { items, done } = round.value;
  const [sheet, setSheet] = useState(/** @type {any} */ (null));
  if (!rowsOf('colony').length) {
    return html`<h1>${t.round.title}</h1><p class="lead">${t.round.empty_shelf}</p><a class="button main" href="#/colony/new">Add a colony</a>`;
  }
  const now = items.filter((item) => item.group === 'now');
  const easy = now.filter((item) => item.suggested && !item.urgent);
  const all = html`<button type="button" class="button main wide" onClick=${() => logAsSuggested(easy)}>${t.round.all(easy.length)}${easy.length === 1 ? `: ${nameOf(easy[0]?.colony_id ?? '')}` : ''}</button>`;
  // some systems show a nudge without buttons: then its one tap is the first thing on the page that it opens
  const nudged = route.value.nudge && easy.length > 0;
  return html`<h1>${t.round.title}</h1>
    ${nudged && all}
    ${!now.length && html`<p class="lead">${quietWords(items)}</p>`}
    ${/** @type {const} */ (['now', 'today', 'next']).map((group) => {
      const part = items.filter((item) => item.group === group);
      return part.length > 0 && html`<section class="stack" aria-label=${t.round[group]}><h2>${t.round[group]}</h2>
        ${part.map((item) => html`<${Task} key=${item.key} item=${item} onOther=${() => setSheet(item)} />`)}</section>`;
    })}
    ${!nudged && easy.length > 1 && all}
    ${done.length > 0 && html`<section class="stack" aria-label=${t.round.done}><h2>${t.round.done}</h2><ul class="diary">${done.map((row) => html`<${Done} key=${row.id} row=${row} />`)}</ul></section>`}
    ${sheet && html`<${Lazy} from="log" name="LogSheet" props=${{ colonyId: sheet.colony_id, need: sheet.need, item: sheet, onClose: () => setSheet(null) }} />`}`;
}

/** @param {import('../care/round.js').Item[]} items */
function quietWords(items) {
  const next = items[0];
  if (!next) return t.round.quiet;
  return t.round.next_at(new Date(next.due_at_ms).toLocaleDateString(undefined, { weekday: 'long' }));
}

/** @param {{item: import('../care/round.js').Item, onOther: () => void}} props */
export function Task({ item, onOther }) {
  const words = catalogue.value?.words ?? {};
  const isFault = item.key.includes('/fault:');
  const faultId = item.key.split('fault:')[1] ?? '';
  const title = isFault ? capital(say(words, 'fault', item.reasons[0]?.code)) : item.portion ? sayPortion(words, item.portion) : say(words, 'todo', item.need);
  return html`<article class=${`card ${item.urgent ? 'urgent' : ''}`}>
    <div class="row top-align">${item.gauge && html`<${Tube} gauge=${item.gauge} small />`}
      <div class="grow stack">
        <p class="eyebrow"><a href=${`#/colony/${item.colony_id}`}><strong>${nameOf(item.colony_id)}</strong></a> ${say(words, 'need', item.need)} · ${item.urgent ? 'urgent' : dueInWords(item.due_at_ms)}</p>
        <p class="lead">${title}</p>
        ${isFault ? html`<div class="steps"><${Reasons} items=${item.reasons} /></div>` : html`<details><summary class="soft">Why</summary><${Reasons} items=${item.reasons} /></details>`}
        <${Cautions} items=${item.cautions} />
      </div></div>
    <div class="wrap">
      ${item.suggested && html`<button type="button" class="button main" onClick=${() => logAsSuggested([item])}>${t.round.as_suggested}</button>`}
      ${isFault && html`<button type="button" class="button main" onClick=${() => resolve(faultId)}>${t.round.resolved}</button>`}
      ${!isFault && html`<button type="button" class="button" onClick=${onOther}>${t.round.other}</button>`}
      ${item.group === 'now' && !item.urgent && html`<button type="button" class="button" onClick=${() => later(item, Date.now() + 3_600_000)}>${t.round.later}</button>`}
    </div></article>`;
}

/** @param {{row: import('../care/overlay.js').ShownRow}} props */
function Done({ row }) {
  const who = row.by ? rows.value.get(row.by)?.set.name : null;
  return html`<li class="row"><div class="grow"><p><strong>${nameOf(row.set.colony_id)}</strong> ${eventInWords(row)}</p>
    <p class="soft">${new Date(row.happened_ms ?? 0).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' })} ${who ? t.round.by(who) : ''} · <${SaveState} state=${row.state} /></p></div>
    <button type="button" class="button" onClick=${() => remove(row.kind, row.id)} aria-label=${`${t.round.undo}: ${eventInWords(row)}`}>${t.round.undo}</button></li>`;
}
