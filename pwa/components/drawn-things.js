// The things that the drawings for a stand-in are made of: tube, box, tools, drawn for this app on 120 by 72.
import { html } from './html.js';

/** @param {number} x @param {number} y */
export const ant = (x, y) => html`
  <g class="ant" transform=${`translate(${x} ${y})`}>
    <circle cx="-5" cy="0" r="2.2" />
    <circle cx="-1" cy="0" r="1.7" />
    <ellipse cx="4" cy="0" rx="3.4" ry="2.5" />
    <path d="M-2 -1l-2 -3.5M-1 -1.5v-4M0 -1l2 -3.5M-2 1l-2 3.5M-1 1.5v4M0 1l2 3.5" />
  </g>
`;

/** A tube on its side: ants, plug, water. @param {{wet?: boolean, leak?: boolean}} how */
export const tube = ({ wet = true, leak = false } = {}) => html`
  <g>
    ${
      wet &&
      html`
        <path class="wet" d="M76 27h24a11 11 0 0 1 0 22h-24z" />
      `
    }
    ${
      leak &&
      html`
        <path class="wet" d="M12 41h40v8h-40z" />
      `
    }
    <path d="M10 27h90a11 11 0 0 1 0 22h-90" />
    <path class="plug" d="M62 27c4 3 -3 5 1 8c4 3 -3 5 1 8c2 2 -1 4 -1 6h13v-22z" />
    <path class="plug" d="M4 28c4 3 -3 5 1 8c4 3 -3 5 1 8c2 2 -1 3 -1 5h9v-22z" />
    ${ant(30, 36)} ${ant(46, 40)}
  </g>
`;

/** The feeding box beside the nest, open. @param {{lid?: 'on' | 'off' | 'none'}} how */
export const box = ({ lid = 'off' } = {}) => html`
  <g>
    <path d="M22 34v30h76v-30" />
    ${
      lid === 'on' &&
      html`
        <path class="bold" d="M17 34h86" />
      `
    }
    ${
      lid === 'off' &&
      html`
        <path class="bold" d="M84 10l32 14" />
      `
    }
  </g>
`;

/** A shallow dish in the box. */
export const dish = html`
  <path d="M44 58c2 6 30 6 32 0z" />
`;
/** A dropper from above. */
export const dropper = html`
  <path d="M57 4h8v12l-2 14h-4l-2 -14zM55 16h12" />
`;
/** Tweezers that hold what lies at their tip. @param {number} x @param {number} y */
export const tweezers = (x, y) => html`
  <path d=${`M${x + 26} ${y - 38}l-24 36M${x + 32} ${y - 34}l-30 34`} />
`;
export const tick = html`
  <path class="good" d="M96 10l6 7l12 -15" />
`;
export const cross = html`
  <path class="bad" d="M96 4l16 16M112 4l-16 16" />
`;
/** A telephone that rings. */
export const phone = html`
  <g class="ringing">
    <rect x="88" y="12" width="22" height="40" rx="4" />
    <path d="M96 47h6M82 20c-4 8 -4 16 0 24M116 20c4 8 4 16 0 24" />
  </g>
`;
/** A hand that points from below. @param {number} x @param {number} y */
export const hand = (x, y) => html`
  <path d=${`M${x} ${y}v-14a3 3 0 0 1 6 0v8c8 0 12 2 12 8v8h-20l-8 -10c-2 -4 2 -6 5 -3z`} />
`;
/** An eye that looks. */
export const eye = html`
  <g>
    <path d="M8 12c8 -10 24 -10 32 0c-8 10 -24 10 -32 0z" />
    <circle cx="24" cy="12" r="4" />
  </g>
`;
/** A bottle with a label. */
export const bottle = html`
  <path d="M18 66v-34l5 -8v-12h12v12l5 8v34zM18 42h22v14h-22M23 17h12" />
`;
/** An insect of the food box, seen from above. @param {number} x @param {number} y */
export const prey = (x, y) => html`
  <g transform=${`translate(${x} ${y})`}>
    <path class="fill" d="M-12 0c0 -6 6 -7 12 -7s12 2 12 7s-6 7 -12 7s-12 -1 -12 -7z" />
    <path d="M-4 -7v14M4 -7v14M-12 -2l-6 -5M-12 2l-6 5" />
  </g>
`;
/** The nest: chambers in a block, its damp end dark. @param {boolean} damp */
export const nest = (damp) => html`
  <g>
    ${
      damp &&
      html`
        <path class="wet" d="M74 20h26v40h-26z" />
      `
    }
    <rect x="16" y="20" width="84" height="40" rx="3" />
    <path d="M26 46c0 -12 16 -14 22 -6s14 8 20 0s18 -4 18 6" />
    ${ant(38, 52)} ${ant(58, 52)}
  </g>
`;
export const leaf = html`
  <path class="fill" d="M30 52c-4 -22 14 -34 38 -34c0 24 -14 38 -38 34zM26 58l30 -28" />
`;
export const seeds = html`
  <g class="fill">
    <ellipse cx="48" cy="56" rx="4" ry="2.6" />
    <ellipse cx="60" cy="58" rx="4" ry="2.6" />
    <ellipse cx="72" cy="55" rx="4" ry="2.6" />
  </g>
`;
export const tap = html`
  <path d="M20 16h30v-8M50 16c10 0 12 4 12 12h-8c0 -4 -2 -4 -6 -4h-28M44 8h12" />
`;
export const snow = html`
  <path d="M24 8v20M15 13l18 10M33 13l-18 10" />
`;
export const clock = html`
  <path d="M102 8a10 10 0 1 0 .1 0M102 12v6l4 3" />
`;
export const fridge = html`
  <path d="M40 6h40v62h-40zM40 28h40M46 14v8M46 34v12" />
`;
