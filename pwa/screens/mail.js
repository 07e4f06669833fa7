// Nudges by mail: a keeper notes a person's address, and it counts once the code that was sent there is typed in.
import { useAnswer, whyNot } from '../components/answer.js';
import { textsOf, useAttempt } from '../components/attempt.js';
import { html } from '../components/html.js';
import { say } from '../signals/actions.js';
import { call, post } from '../signals/people.js';
import { rowsOf, today } from '../signals/shelf.js';
import { m } from '../text/en-more.js';

/** Nothing at all where the server has no mail, or cannot be asked. */
export function Mail() {
  const { answer, ask } = useAnswer('/api/mail');
  if (!answer?.available) return null;
  const passes = new Set(rowsOf('pass').filter((pass) => !pass.set.revoked_at_ms && today.value <= pass.set.ends_on).map((pass) => pass.id));
  const people = rowsOf('person').filter((person) => person.set.role === 'keeper' || passes.has(person.set.pass_id));
  return html`<section class="card" aria-label=${m.mail.title}><h2>${m.mail.title}</h2><p class="soft">${m.mail.about}</p>
    ${people.map((person) => html`<${Mailbox} key=${person.id} id=${person.id} name=${person.set.name} had=${answer.people.find((/** @type {any} */ each) => each.person_id === person.id)} onChange=${ask} />`)}</section>`;
}

/** @param {{id: string, name: string, had?: {address: string, confirmed: boolean}, onChange: () => Promise<void>}} props */
function Mailbox({ id, name, had, onChange }) {
  const { attempt, busy, said } = useAttempt();
  const path = `/api/mail/${id}`;
  /** @param {() => Promise<void>} work */
  const change = (work) => attempt(async () => {
    await work().catch((problem) => { throw new Error(whyNot(problem)); });
    await onChange();
  });
  /** @param {string} address */
  const send = (address) => change(async () => {
    const { outcome } = await call('PUT', path, { address });
    if (outcome !== 'sent') throw new Error(m.mail.not_sent(outcome));
  });
  /** @param {any} event */
  function submit(event) {
    event.preventDefault();
    const text = textsOf(event.target);
    if (!had) return void send(text('address'));
    return void change(async () => { await post(`${path}/confirm`, { code: text('code') }); say(m.mail.on); });
  }
  const remove = () => change(async () => { await call('DELETE', path, {}); say(m.mail.removed); });
  return html`<form class="stack" aria-label=${name} onSubmit=${submit}><h3>${name}</h3>
    ${had && html`<p class="address">${had.address}</p><p class="soft">${had.confirmed ? m.mail.comes : m.mail.asked}</p>`}
    ${!had && html`<label>${m.mail.address}<input name="address" type="email" required maxlength="254" autocomplete="off" /></label>`}
    ${had && !had.confirmed && html`<label>${m.mail.code}<input name="code" required autocomplete="one-time-code" autocapitalize="characters" spellcheck=${false} /></label>`}
    ${said}<div class="wrap">${!had?.confirmed && html`<button class="button main" disabled=${busy}>${had ? m.mail.confirm : m.mail.send}</button>`}
      ${had && !had.confirmed && html`<button type="button" class="button" disabled=${busy} onClick=${() => send(had.address)}>${m.mail.anew}</button>`}
      ${had && html`<button type="button" class="button warn" disabled=${busy} onClick=${remove} aria-label=${`${m.mail.remove}: ${name}`}>${m.mail.remove}</button>`}</div></form>`;
}
