// Markup as template strings, without a build step: htm bound to Preact's h. And the icons that stand in it.
import htm from 'htm';
import { h } from 'preact';

export const html = htm.bind(h);

/** Own line icons on a 24 px grid, drawn for this app. @type {Record<string, string>} */
const PATHS = {
  round: 'M4 7h10M4 12h7M4 17h5M15 16l2.2 2.2L21 13',
  shelf: 'M3 20h18M6 20V9M6 9V5M10 20V5M14 20V8M18 20V4M8.5 5h-5M11.5 5h-3M15.5 8h-3M19.5 4h-3',
  larder: 'M7 8h10l1 12H6zM8 8V5h8v3M6.7 13h10.6',
  handover: 'M3 12l4-4 4 2 3-2 7 4M7 16l3 3 2-1 3 2 4-5',
  settings: 'M5 6h14M5 12h14M5 18h14M9 4v4M15 10v4M11 16v4',
  add: 'M12 5v14M5 12h14',
  less: 'M5 12h14',
  done: 'M4.5 12.5l5 5L19.5 7',
  close: 'M6 6l12 12M18 6L6 18',
  sugar: 'M12 4c3.5 4.5 5 7 5 9.5a5 5 0 0 1-10 0C7 11 8.5 8.5 12 4z',
  feeding: 'M12 4c3.5 4.5 5 7 5 9.5a5 5 0 0 1-10 0C7 11 8.5 8.5 12 4z',
  protein: 'M5 14c0-3 3-5 7-5s7 2 7 5-3 4-7 4-7-1-7-4zM9 9L7 5M15 9l2-4M12 9v9',
  water: 'M4 9c2.5-2 5-2 8 0s5.5 2 8 0M4 15c2.5-2 5-2 8 0s5.5 2 8 0',
  seeds: 'M12 20c-4-3-5-7-5-9 0-4 3-6 5-8 2 2 5 4 5 8 0 2-1 6-5 9zM12 20V9',
  leaves: 'M5 19C4 10 9 5 20 4c0 11-5 16-13 14M5 19l8-8',
  leftovers: 'M6 8h12l-1 12H7zM4 8h16M10 8V4h4v4M10 12v5M14 12v5',
  check: 'M2.5 12C6 7 9 5.5 12 5.5S18 7 21.5 12C18 17 15 18.5 12 18.5S6 17 2.5 12zM12 9.5v5M9.5 12h5',
  glance: 'M2.5 12C6 7 9 5.5 12 5.5S18 7 21.5 12C18 17 15 18.5 12 18.5S6 17 2.5 12zM12 9.5v5M9.5 12h5',
  barrier: 'M4 20V8M20 20V8M4 8h16M4 14h16',
  room: 'M4 20V10l8-6 8 6v10zM9 20v-6h6v6',
  boost: 'M6 15a3 4 0 1 0 6 0a3 4 0 1 0-6 0M17 5v8M13 9h8',
  move: 'M3 17h7V7M3 7h7M14 12h7M17.5 8.5L21 12l-3.5 3.5',
  rest: 'M12 3v18M4.5 7.5l15 9M19.5 7.5l-15 9',
  fault: 'M12 4l9 16H3zM12 10v5M12 17.5v.5',
  count: 'M5 5v14M9 5v14M13 5v14M17 5v14M3 16L20 8',
  note: 'M6 3h9l4 4v14H6zM9 11h7M9 15h7',
  photo: 'M4 8h4l2-3h4l2 3h4v11H4zM12 10.5a3 3 0 1 0 0 6 3 3 0 0 0 0-6z',
  climate: 'M10 14V5a2 2 0 0 1 4 0v9a4 4 0 1 1-4 0z',
  later: 'M12 4a8 8 0 1 0 0 16 8 8 0 0 0 0-16zM12 8v4.5l3 2',
  other: 'M6 12h.01M12 12h.01M18 12h.01',
  scan: 'M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5M4 12h16',
  print: 'M7 9V4h10v5M7 17H4V9h16v8h-3M7 14h10v6H7z',
  share: 'M12 15V4M8 8l4-4 4 4M5 13v7h14v-7',
  many: 'M4 6.5l2 2 3-4M12 7h8M4 13l2 2 3-4M12 13h8M12 19h8M4 19h4',
};

/** @param {{name: string}} props */
export const Icon = ({ name }) => html`
  <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
    <path d=${PATHS[name] ?? PATHS.other} />
  </svg>
`;
