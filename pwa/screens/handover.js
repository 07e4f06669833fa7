// Handing the shelf over: passes for stand-ins, with their link, their dates and what they did.
import { useState } from 'preact/hooks';
import { CalendarAddress } from '../components/calendar-address.js';
import { html } from '../components/html.js';
import { keep, say } from '../signals/actions.js';
import { post } from '../signals/people.js';
import { catalogue, now, rows, rowsOf, syncNow, today } from '../signals/shelf.js';
import { dayOf } from '../care/instants.js';
import { eventInWords, nameOf } from './event-words.js';

export function HandOverScreen() {
  return html`<h1>Hand over</h1><p class="soft">A pass lets a family member or friend look after some colonies for some days, without an account.</p>
    ${rowsOf('pass').reverse().map((row) => html`<${Pass} key=${row.id} row=${row} />`)}<${PassForm} />
    <section class="card"><h2>Calendar of the whole shelf</h2><${CalendarAddress} passId=${null} /></section>`;
}

/** @param {{row: import('../care/overlay.js').ShownRow}} props */
function Pass({ row }) {
  const [link, setLink] = useState(/** @type {any} */ (null));
  const [error, setError] = useState('');
  const v = row.set;
  const state = v.revoked_at_ms ? 'taken back' : today.value < v.starts_on ? `from ${v.starts_on}` : today.value > v.ends_on ? 'ended' : 'on duty now';
  const guests = new Set(rowsOf('person').filter((person) => person.set.pass_id === row.id).map((person) => person.id));
  const done = [...rows.value.values()].filter((each) => each.by && guests.has(each.by) && each.happened_ms !== null);
  /** @param {() => Promise<void>} work */
  const attempt = (work) => work().catch((/** @type {Error} */ problem) => setError(problem.message));
  return html`<article class="card"><h2>${v.name}</h2><p class="soft">${v.starts_on} to ${v.ends_on} · ${state} · ${v.colony_ids.map(nameOf).join(', ')}</p>
    ${done.length > 0 && html`<h3>Done by ${v.name}</h3><ul class="diary">${done.map((each) => html`<li>${nameOf(each.set.colony_id)}: ${eventInWords(each)}</li>`)}</ul>`}
    ${link && html`<p>Send this link, or let them scan it. It is shown once.</p><div class="qr" dangerouslySetInnerHTML=${{ __html: link.qr_svg }} /><p><a href=${link.link}>${link.link}</a></p><p>Or by code: <span class="code">${link.code}</span></p>
      ${'share' in navigator && html`<button type="button" class="button" onClick=${() => navigator.share({ title: `Pass for ${v.name}`, url: link.link }).catch(() => undefined)}>Share</button>`}`}
    ${error && html`<p role="alert" class="caution">${error}</p>`}
    ${!v.revoked_at_ms && html`<div class="wrap"><button type="button" class="button main" onClick=${() => attempt(async () => { await syncNow(); setLink(await post(`/api/passes/${row.id}/link`)); })}>${link ? 'Make a new link' : 'Make the link'}</button>
      <button type="button" class="button warn" onClick=${() => confirm(`Take the pass of ${v.name} back? Their phone stops at once.`) && attempt(async () => { await post(`/api/passes/${row.id}/revoke`); await syncNow(); })}>Take it back</button></div><${CalendarAddress} passId=${row.id} />`}
  </article>`;
}

function PassForm() {
  const colonies = rowsOf('colony');
  const [chosen, setChosen] = useState(/** @type {string[]} */ ([]));
  const [error, setError] = useState('');
  const stings = (/** @type {any} */ colony) => Boolean(catalogue.value?.species?.[colony.set.species_code]?.stings ?? colony.set.stings);
  /** @param {any} event */
  async function save(event) {
    event.preventDefault();
    const form = new FormData(event.target);
    const text = (/** @type {string} */ name) => String(form.get(name) ?? '').trim();
    if (!chosen.length) return setError('Choose at least one colony.');
    if (text('ends_on') < text('starts_on')) return setError('The last day lies before the first.');
    try {
      await keep('pass', {
        name: text('name'), colony_ids: chosen, starts_on: text('starts_on'), ends_on: text('ends_on'), instructions: text('instructions'),
        emergency_contact: text('emergency_contact'), stinging_ok_ids: chosen.filter((id) => stings(colonies.find((c) => c.id === id))),
      });
      say('Saved on this phone');
      event.target.reset();
      setChosen([]);
      setError('');
    } catch (problem) {
      setError(/** @type {Error} */ (problem).message);
    }
    return undefined;
  }
  /** @param {string} id */
  const toggle = (id) => setChosen(chosen.includes(id) ? chosen.filter((each) => each !== id) : [...chosen, id]);
  return html`<form class="card" onSubmit=${save}><h2>A new pass</h2>
    <label>Who<input name="name" required maxlength="60" autocomplete="off" /></label>
    <div role="group" aria-label="Colonies" class="wrap">${colonies.map((colony) => html`<button type="button" class="chip" aria-pressed=${String(chosen.includes(colony.id))} onClick=${() => toggle(colony.id)}>${colony.set.name}${stings(colony) ? ' (stings)' : ''}</button>`)}</div>
    <label>First day<input name="starts_on" type="date" required defaultValue=${today.value} /></label>
    <label>Last day<input name="ends_on" type="date" required defaultValue=${dayOf(new Date(now.peek() + 7 * 86_400_000))} /></label>
    <label>What they should know<textarea name="instructions" maxlength="4000"></textarea></label>
    <label>Whom to call<input name="emergency_contact" maxlength="200" inputmode="tel" /></label>
    ${error && html`<p role="alert" class="caution">${error}</p>`}
    <button class="button main wide">Make the pass</button></form>`;
}

