// A screen that is fetched when it is first shown; all are in the precache, so this works offline too.
import { useEffect, useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { Skeleton } from '../components/states.js';
import { t } from '../text/en.js';

/** @type {Record<string, () => Promise<Record<string, any>>>} */
const SCREENS = {
  start: () => import('./start.js'),
  shelf: () => import('./shelf.js'),
  colony: () => import('./colony.js'),
  larder: () => import('./larder.js'),
  reckon: () => import('./reckon.js'),
  handover: () => import('./handover.js'),
  settings: () => import('./settings.js'),
  standin: () => import('./standin.js'),
  attention: () => import('./attention.js'),
  log: () => import('./log.js'),
  round_sheets: () => import('./round-sheets.js'),
  labels: () => import('./labels.js'),
  look: () => import('./look.js'),
  tasting: () => import('./tasting.js'),
  past: () => import('./past.js'),
  places: () => import('./places.js'),
  charts: () => import('./charts.js'),
  at: () => import('./at.js'),
  welcome: () => import('./welcome.js'),
  paper: () => import('./paper.js'),
};

/** @param {{from: string, name: string, props?: Record<string, any>}} what */
export function Lazy({ from, name, props = {} }) {
  const [loaded, setLoaded] = useState(/** @type {any} */ (null));
  useEffect(() => {
    SCREENS[from]?.().then(
      (module) => setLoaded(() => module[name]),
      () => setLoaded(() => Missing),
    );
  }, [from, name]);
  return loaded
    ? html`
        <${loaded} ...${props} />
      `
    : html`
        <${Skeleton} words=${t.loading} />
      `;
}

const Missing = () => html`
  <p>${t.missing}</p>
`;
