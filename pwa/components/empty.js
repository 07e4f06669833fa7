// A calm state with a drawing: full tubes on their board. And what is seen for the moment until a screen is there.
import { TubeDrawing } from './tube.js';
import { html } from './html.js';

/** @type {Array<[string, number, number]>} need, share, x */
const STANDING = [['sugar', 0.85, 14], ['protein', 0.7, 74], ['water', 0.9, 134]];

/** @param {{title: string, children?: any, bare?: boolean}} props `bare`: tubes without anything in them */
export const Empty = ({ title, children, bare = false }) => html`<div class="empty">
  <svg class="tube" viewBox="0 0 196 140" aria-hidden="true">
    ${STANDING.map(([need, share, x]) => html`<g class=${`need-${need}`} transform=${`translate(${x} 0)`}><${TubeDrawing} need=${need} share=${bare ? 0 : share} due=${null} /></g>`)}
    <path class="rim" d="M4 118h188" />
  </svg>
  <p class="lead">${title}</p>${children}</div>`;

/** @param {{words: string}} props */
export const Skeleton = ({ words }) => html`<div class="skeleton" aria-busy="true"><p class="visually-hidden">${words}</p><span></span><span></span><span></span></div>`;
