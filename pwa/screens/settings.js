// The house: its hours, the phones that are signed in, how this app looks, and what this phone has stored.
import { useEffect, useState } from 'preact/hooks';
import { Choice } from '../components/choice.js';
import { html } from '../components/html.js';
import { exportUnsent, keep, say } from '../signals/actions.js';
import { get, logout, post } from '../signals/people.js';
import { Nudges } from './nudges.js';
import { rowsOf, saving, session, syncNow, unsent } from '../signals/shelf.js';

/** @param {{code: string}} props */
export function SettingsScreen({ code }) {
  return html`<h1>The house</h1><${Nudges} /><${House} /><${Phones} code=${code} /><${Look} /><${Stored} />
    <section class="card"><h2>Good to know</h2><p>Broodshelf gives general husbandry advice, not veterinary or medical advice.</p>
    <p>Never release ants or feeder insects. Keeping and moving species is a matter of local law: ask the authority.</p>
    <p class="soft">Build ${document.body.dataset.build}</p></section>`;
}

function House() {
  const house = rowsOf('household')[0];
  const [error, setError] = useState('');
  if (!house) return null;
  const v = house.set;
  /** @param {any} event */
  async function save(event) {
    event.preventDefault();
    const form = new FormData(event.target);
    const text = (/** @type {string} */ name) => String(form.get(name) ?? '').trim();
    try {
      await keep('household', {
        name: text('name'), zone: text('zone'), care_hours: [text('first'), text('second')].filter(Boolean),
        quiet_from: text('quiet_from') || null, quiet_to: text('quiet_to') || null,
      }, house?.id);
      say('Saved on this phone');
    } catch (problem) {
      setError(/** @type {Error} */ (problem).message);
    }
  }
  return html`<form class="card" onSubmit=${save}><h2>Names and hours</h2>
    <label>Name of the shelf<input name="name" required defaultValue=${v.name} /></label>
    <label>Time zone<input name="zone" required defaultValue=${v.zone} /></label>
    <label>First care hour<input name="first" type="time" defaultValue=${v.care_hours?.[0] ?? ''} /></label>
    <label>Second care hour<input name="second" type="time" defaultValue=${v.care_hours?.[1] ?? ''} /></label>
    <label>Quiet from<input name="quiet_from" type="time" defaultValue=${v.quiet_from ?? ''} /></label>
    <label>Quiet to<input name="quiet_to" type="time" defaultValue=${v.quiet_to ?? ''} /></label>
    ${error && html`<p role="alert" class="caution">${error}</p>`}<button class="button main">Save</button></form>`;
}

/** @param {{code: string}} props */
function Phones({ code }) {
  const [list, setList] = useState(/** @type {any[]} */ ([]));
  const [found, setFound] = useState(/** @type {any} */ (null));
  const [error, setError] = useState('');
  /** @param {() => Promise<void>} work */
  const attempt = (work) => { setError(''); return work().catch((/** @type {Error} */ problem) => setError(problem.message)); };
  const load = () => attempt(async () => setList((await get('/api/devices')).devices));
  useEffect(() => { void load(); }, []);
  const people = rowsOf('person').filter((person) => person.set.role === 'keeper');
  /** @param {any} event */
  function look(event) {
    event.preventDefault();
    const typed = String(new FormData(event.target).get('code') ?? '');
    void attempt(async () => setFound({ code: typed, ...(await post('/api/pairings/look', { code: typed })) }));
  }
  /** @param {Record<string, string>} who */
  const approve = (who) => attempt(async () => {
    await post('/api/pairings/approve', { code: found.code, ...who });
    setFound(null);
    say('The phone is let in');
    await syncNow();
    await load();
  });
  return html`<section class="card"><h2>Phones</h2>
    <ul class="diary">${list.map((phone) => html`<li class="row" key=${phone.id}><div class="grow"><strong>${phone.name}</strong>${phone.here ? ' (this one)' : ''}<p class="soft">last seen ${new Date(phone.last_seen_ms).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' })}</p></div>
      ${!phone.here && html`<button type="button" class="button warn" onClick=${() => confirm(`Sign out ${phone.name}?`) && attempt(async () => { await post(`/api/devices/${phone.id}/revoke`); await load(); })}>Sign out</button>`}</li>`)}</ul>
    <form class="stack" onSubmit=${look}><label>Let a new phone in <small>type the code that it shows</small><input name="code" required defaultValue=${code} autocapitalize="characters" autocomplete="off" /></label><button class="button">Look</button></form>
    ${found && html`<p><strong>${found.device_name}</strong> asks to join. Whose is it?</p><div class="wrap">${people.map((person) => html`<button type="button" class="button" onClick=${() => approve({ person_id: person.id })}>${person.set.name}</button>`)}
      <button type="button" class="button" onClick=${() => { const name = prompt('Name of the new keeper'); if (name) void approve({ person_name: name }); }}>Somebody new</button></div>`}
    ${error && html`<p role="alert" class="caution">${error}</p>`}</section>`;
}

function Look() {
  const [look, setLook] = useState(document.documentElement.dataset.look ?? '');
  /** @param {string} next */
  function pick(next) {
    setLook(next);
    if (next) document.documentElement.dataset.look = next;
    else delete document.documentElement.dataset.look;
    if (next) localStorage.setItem('look', next);
    else localStorage.removeItem('look');
  }
  return html`<section class="card"><h2>Look</h2><${Choice} label="Light" value=${look} onPick=${pick} options=${[['', 'As the phone'], ['light', 'Light'], ['dark', 'Dark'], ['red', 'Dim red']]} />
    <p class="soft">Dim red is for looking into a dark nest: ants hardly see deep red (common practice).</p></section>`;
}

function Stored() {
  const [kept, setKept] = useState(/** @type {boolean | null} */ (null));
  useEffect(() => { navigator.storage?.persisted?.().then(setKept); }, []);
  const { last_sync_ms } = saving.value;
  const { waiting, attention } = unsent.value;
  return html`<section class="card"><h2>On this phone</h2>
    <p>${last_sync_ms ? `Last synced ${new Date(last_sync_ms).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' })}.` : 'Not synced yet.'} ${waiting + attention ? `${waiting + attention} not sent.` : 'Nothing waits.'}</p>
    <p class="soft">${kept ? 'The browser has promised to keep the data.' : 'The browser may clear data of apps that are not used; the server copy is the safety. Installing the app on the home screen helps.'}</p>
    <div class="wrap"><button type="button" class="button" onClick=${() => syncNow()}>Sync now</button><button type="button" class="button" onClick=${exportUnsent}>Export unsent logs</button>
    <button type="button" class="button warn" onClick=${() => confirm(waiting ? `${waiting} logs are not sent yet and stay on this phone. Sign out all the same?` : `Sign ${session.value?.name ?? 'this phone'} out?`) && logout().catch((/** @type {Error} */ e) => say(e.message))}>Sign out</button></div></section>`;
}
