// Handing the shelf over: passes for stand-ins, with their link, their dates and what they did.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { CalendarAddress } from '../components/calendar-address.js';
import { shortDay } from '../components/days.js';
import { html } from '../components/html.js';
import { Icon } from '../components/icon.js';
import { Sheet } from '../components/sheet.js';
import { post } from '../signals/people.js';
import { events, rows, rowsOf, syncNow, today } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { eventInWords, nameOf } from './event-words.js';
import { Holiday } from './holiday.js';
import { PassForm } from './pass-form.js';
import { StandInView } from './standin.js';

export function HandOverScreen() {
  const [trip, setTrip] = useState(/** @type {import('./holiday.js').Trip | null} */ (null));
  return html`<h1>${m.handover.title}</h1><p class="soft">${m.handover.about}</p>
    ${rowsOf('pass').reverse().map((row) => html`<${Pass} key=${row.id} row=${row} />`)}
    <${Holiday} onPass=${setTrip} /><${PassForm} key=${JSON.stringify(trip)} trip=${trip} />
    <section class="card"><h2>${m.handover.calendar}</h2><${CalendarAddress} passId=${null} /></section>`;
}

/** What the guests of a pass logged, newest first. @param {string} passId @param {string[]} colonyIds */
export function doneUnder(passId, colonyIds) {
  const guests = new Set(rowsOf('person').filter((person) => person.set.pass_id === passId).map((person) => person.id));
  return colonyIds.flatMap((id) => events.value.get(id) ?? []).filter((row) => row.by && guests.has(row.by)).sort((a, b) => (b.happened_ms ?? 0) - (a.happened_ms ?? 0));
}

/** @param {{row: import('../care/overlay.js').ShownRow}} props */
function Pass({ row }) {
  const [link, setLink] = useState(/** @type {any} */ (null));
  const [preview, setPreview] = useState(false);
  const { attempt, busy, said } = useAttempt();
  const v = row.set;
  const over = v.revoked_at_ms || today.value > v.ends_on;
  const state = v.revoked_at_ms ? m.handover.state.back : today.value < v.starts_on ? m.handover.state.from(shortDay(v.starts_on)) : over ? m.handover.state.ended : m.handover.state.now;
  const done = doneUnder(row.id, v.colony_ids);
  const makeLink = () => attempt(async () => { await syncNow(); setLink(await post(`/api/passes/${row.id}/link`)); });
  const takeBack = () => confirm(m.handover.sure(v.name)) && attempt(async () => { await post(`/api/passes/${row.id}/revoke`); await syncNow(); });
  return html`<article class="card"><h2>${v.name}</h2><p class="soft">${shortDay(v.starts_on)} ${m.handover.to} ${shortDay(v.ends_on)} · <strong>${state}</strong> · ${v.colony_ids.map(nameOf).join(', ')}</p>
    ${(done.length > 0 || over) && html`<section class="stack"><h3>${m.handover.done_by(v.name)}</h3>${done.length ? html`<ul class="done-list">${done.map((each) => html`<li key=${each.id}><${Icon} name="done" /><div class="grow"><p><strong>${nameOf(each.set.colony_id)}</strong> ${eventInWords(each)}</p>
      <p class="soft">${new Date(each.happened_ms ?? 0).toLocaleString([], { weekday: 'short', day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' })}</p></div></li>`)}</ul>` : html`<p class="soft">${m.handover.nothing}</p>`}</section>`}
    ${link && html`<div class="stack"><p>${m.handover.link_once}</p><div class="qr" role="img" aria-label=${m.handover.share_title(v.name)} dangerouslySetInnerHTML=${{ __html: link.qr_svg }} /><p><a class="address" href=${link.link}>${link.link}</a></p><p>${m.handover.by_code} <span class="code">${link.code}</span></p>
      ${'share' in navigator && html`<button type="button" class="button wide" onClick=${() => navigator.share({ title: m.handover.share_title(v.name), url: link.link }).catch(() => undefined)}><${Icon} name="share" />${m.handover.share}</button>`}</div>`}
    ${said}
    ${!over && html`<div class="wrap even"><button type="button" class="button main" disabled=${busy} onClick=${makeLink}>${link ? m.handover.new_link : m.handover.make_link}</button>
      <button type="button" class="button" onClick=${() => setPreview(true)}>${m.handover.preview}</button>
      <a class="button" href=${`#/paper/${row.id}`}><${Icon} name="print" />${m.handover.print}</a></div><${CalendarAddress} passId=${row.id} />`}
    ${!v.revoked_at_ms && html`<button type="button" class="button warn" disabled=${busy} onClick=${takeBack}>${m.handover.take_back}</button>`}
    ${preview && html`<${Sheet} title=${m.handover.preview_title(v.name)} onClose=${() => setPreview(false)}><div class="stack" inert><${StandInView} given=${v} state="open" colonies=${rowsWith(v.colony_ids)} /></div></${Sheet}>`}
  </article>`;
}

/** @param {string[]} ids */
const rowsWith = (ids) => ids.map((id) => rows.value.get(id)).filter((row) => row !== undefined);
