// The stand-in's view: what to do today in half a minute, and whom to call.
import { useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { round, rowsOf, session } from '../signals/shelf.js';
import { LogSheet } from './log.js';
import { Nudges } from './nudges.js';
import { Task } from './round.js';

export function StandInScreen() {
  const me = session.value;
  const given = rowsOf('pass').find((row) => row.id === me.pass?.id)?.set;
  const colonies = rowsOf('colony');
  const [wrong, setWrong] = useState('');
  const [other, setOther] = useState(/** @type {any} */ (null));
  const due = round.value.items.filter((item) => item.group !== 'next');
  const state = me.pass?.state;
  return html`<h1>${state === 'not_yet' ? `From ${me.pass.starts_on}` : due.length ? `Today: ${due.length} ${due.length === 1 ? 'thing' : 'things'}, about ${due.length * 2} minutes` : 'Nothing today'}</h1>
    <p class="soft">A missed day is fine. Do not open the nest, shake, or give extra.</p>
    ${given?.instructions && html`<section class="card"><h2>From the keeper</h2><p>${given.instructions}</p></section>`}
    ${given?.emergency_contact && html`<a class="button wide" href=${`tel:${given.emergency_contact.replace(/[^+0-9]/g, '')}`}>Call ${given.emergency_contact}</a>`}
    ${due.map((item) => html`<${Task} key=${item.key} item=${item} onOther=${() => setOther(item)} />`)}
    <section class="stack"><h2>Your colonies</h2>${colonies.map((colony) => html`<article class="card" key=${colony.id}><h3>${colony.set.number ? `${colony.set.number} · ` : ''}${colony.set.name}</h3>
      <button type="button" class="button warn" onClick=${() => setWrong(colony.id)}>Something is wrong</button></article>`)}</section>
    <${Nudges} />
    ${wrong && html`<${LogSheet} colonyId=${wrong} kind="fault" onClose=${() => setWrong('')} />`}
    ${other && html`<${LogSheet} colonyId=${other.colony_id} need=${other.need} item=${other} onClose=${() => setOther(null)} />`}`;
}
