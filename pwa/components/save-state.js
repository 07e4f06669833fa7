// Where a log stands: on this phone, on the server, or in need of a person.
import { t } from '../text/en.js';
import { html } from './html.js';

/** @param {{state: 'synced' | 'saved' | 'attention'}} props */
export const SaveState = ({ state }) => html`<span class=${`state-mark ${state}`}>${t.state[state]}</span>`;
