// What a person chooses for this phone alone: its light, its degrees.
import { useState } from 'preact/hooks';
import { lookText } from '../text/en/look.js';
import { Choice } from './choices.js';
import { html } from './html.js';

/** Keep a choice on this phone; an empty one is as the phone itself. @param {string} name @param {string} next */
const keepHere = (name, next) => (next ? localStorage.setItem(name, next) : localStorage.removeItem(name));

/** In which light the app is shown. */
export function LookChoice() {
  const [look, setLook] = useState(document.documentElement.dataset.look ?? '');
  /** @param {string} next */
  function pick(next) {
    setLook(next);
    if (next) document.documentElement.dataset.look = next;
    else delete document.documentElement.dataset.look;
    keepHere('look', next);
  }
  return html`
    <${Choice}
      label=${lookText.light}
      value=${look}
      onPick=${pick}
      options=${[
        ['', lookText.as_phone],
        ['light', lookText.day],
        ['dark', lookText.dark],
        ['red', lookText.red],
      ]}
    />
    <p class="soft">${lookText.red_why}</p>
  `;
}

/** In which degrees it shows temperatures. */
export function DegreesChoice() {
  const [degrees, setDegrees] = useState(localStorage.getItem('degrees') ?? '');
  /** @param {string} next */
  function pick(next) {
    setDegrees(next);
    keepHere('degrees', next);
  }
  return html`
    <${Choice}
      label=${lookText.degrees}
      value=${degrees}
      onPick=${pick}
      options=${[
        ['', lookText.as_phone],
        ['c', '°C'],
        ['f', '°F'],
      ]}
    />
  `;
}
