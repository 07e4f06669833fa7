// How far a round has come: a tube lying on its side that fills up.
import { html } from './html.js';

const LENGTH = 300;

/** @param {{part: number, whole: number, words: string}} props */
export function LyingTube({ part, whole, words }) {
  const width = whole ? (LENGTH - 6) * Math.min(1, part / whole) : 0;
  return html`<svg class="lying" viewBox="0 0 300 24" preserveAspectRatio="none" role="img" aria-label=${words}>
    <defs><clipPath id="lying"><path d="M3 3h282a9 9 0 0 1 0 18H3z" /></clipPath></defs>
    <path class="glass" d="M3 3h282a9 9 0 0 1 0 18H3z" />
    <g clip-path="url(#lying)"><rect class="fluid" x="3" y="3" width=${width} height="18" /></g>
  </svg>`;
}
