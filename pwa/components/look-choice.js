// In which light the app is shown: as the phone, light, dark, or dim red.
import { useState } from 'preact/hooks';
import { m } from '../text/en-more.js';
import { Choice } from './choice.js';
import { html } from './html.js';

export function LookChoice() {
  const [look, setLook] = useState(document.documentElement.dataset.look ?? '');
  /** @param {string} next */
  function pick(next) {
    setLook(next);
    if (next) document.documentElement.dataset.look = next;
    else delete document.documentElement.dataset.look;
    if (next) localStorage.setItem('look', next);
    else localStorage.removeItem('look');
  }
  return html`<${Choice} label=${m.look.light} value=${look} onPick=${pick} options=${[['', m.look.as_phone], ['light', m.look.day], ['dark', m.look.dark], ['red', m.look.red]]} /><p class="soft">${m.look.red_why}</p>`;
}
