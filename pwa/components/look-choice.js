// How the app is shown: its light, and the degrees of its temperatures.
import { useState } from 'preact/hooks';
import { m } from '../text/en-more.js';
import { Choice } from './choice.js';
import { html } from './html.js';

/** Keep a choice on this phone; an empty one is as the phone itself. @param {string} name @param {string} next */
const keepHere = (name, next) => (next ? localStorage.setItem(name, next) : localStorage.removeItem(name));

export function LookChoice() {
  const [look, setLook] = useState(document.documentElement.dataset.look ?? '');
  /** @param {string} next */
  function pick(next) {
    setLook(next);
    if (next) document.documentElement.dataset.look = next;
    else delete document.documentElement.dataset.look;
    keepHere('look', next);
  }
  return html`<${Choice} label=${m.look.light} value=${look} onPick=${pick} options=${[['', m.look.as_phone], ['light', m.look.day], ['dark', m.look.dark], ['red', m.look.red]]} /><p class="soft">${m.look.red_why}</p>`;
}

export function DegreesChoice() {
  const [degrees, setDegrees] = useState(localStorage.getItem('degrees') ?? '');
  /** @param {string} next */
  function pick(next) {
    setDegrees(next);
    keepHere('degrees', next);
  }
  return html`<${Choice} label=${m.look.degrees} value=${degrees} onPick=${pick} options=${[['', m.look.as_phone], ['c', '°C'], ['f', '°F']]} />`;
}
