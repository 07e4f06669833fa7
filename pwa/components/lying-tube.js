// How far a round has come: a tube lying on its side that fills up.
import { html } from './html.js';

/** @param {{part: number, whole: number, words: string}} props */
export const LyingTube = ({ part, whole, words }) => html`<div class="lying" role="img" aria-label=${words}>
  <span style=${{ width: `${whole ? Math.min(100, (part / whole) * 100) : 0}%` }}></span></div>`;
