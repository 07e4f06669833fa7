// A screen that is fetched when it is first shown; all are in the precache, so this works offline too.
import { useEffect, useState } from 'preact/hooks';
import { html } from '../components/html.js';

/** @type {Record<string, () => Promise<Record<string, any>>>} */
const SCREENS = {
  start: () => import('./start.js'), shelf: () => import('./shelf.js'), colony: () => import('./colony.js'),
  larder: () => import('./larder.js'), handover: () => import('./handover.js'), settings: () => import('./settings.js'),
  standin: () => import('./standin.js'), attention: () => import('./attention.js'), log: () => import('./log.js'),
};

/** @param {{from: string, name: string, props?: Record<string, any>}} what */
export function Lazy({ from, name, props = {} }) {
  const [loaded, setLoaded] = useState(/** @type {any} */ (null));
  useEffect(() => {
    SCREENS[from]?.().then((module) => setLoaded(() => module[name]), () => setLoaded(() => Missing));
  }, [from, name]);
  return loaded ? html`<${loaded} ...${props} />` : html`<p class="soft" aria-busy="true">One moment…</p>`;
}

const Missing = () => html`<p>This part of the app could not be loaded. Reload it; nothing that you logged is lost.</p>`;
