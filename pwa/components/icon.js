// Own line icons on a 24 px grid, drawn for this app.
import { html } from './html.js';

/** @type {Record<string, string>} */
const PATHS = {
  round: 'M4 7h10M4 12h7M4 17h5M15 16l2.2 2.2L21 13',
  shelf: 'M3 20h18M6 20V9M6 9V5M10 20V5M14 20V8M18 20V4M8.5 5h-5M11.5 5h-3M15.500 8h-3M19.5 4h-3',
  larder: 'M7 8h10l1 12H6zM8 8V5h8v3M6.700 13h10.600',
  handover: 'M3 12l4-4 4 2 3-2 7 4M7 16l3 3 2-1 3 2 4-5',
  settings: 'M5 6h14M5 12h14M5 18h14M9 4v4M15 10v4M11 16v4',
  add: 'M12 5v14M5 12h14',
  sugar: 'M12 4c3.500 4.500 5 7 5 9.500a5 5 0 0 1-10 0C7 11 8.500 8.500 12 4z',
  protein: 'M5 14c0-3 3-5 7-5s7 2 7 5-3 4-7 4-7-1-7-4zM9 9L7 5M15 9l2-4M12 9v9',
  water: 'M4 9c2.500-2 5-2 8 0s5.500 2 8 0M4 15c2.500-2 5-2 8 0s5.500 2 8 0',
  other: 'M12 3v18M3 12h18',
};

/** @param {{name: string}} props */
export const Icon = ({ name }) => html`<svg class="icon" viewBox="0 0 24 24" aria-hidden="true"><path d=${PATHS[name] ?? PATHS.other} /></svg>`;
