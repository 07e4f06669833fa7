// A screen or sheet that is fetched when it is first shown; the worker has fetched all ahead, so it opens offline too.
import { useEffect, useState } from 'preact/hooks';
import { html } from './html.js';
import { Skeleton } from './states.js';
import { say } from '../words/say.js';

const Missing = () => html`
  <p>${say('frame-missing')}</p>
`;

/**
 * A component that stands in for one of another module until that is here.
 * @template {Record<string, any>} Module
 * @template {keyof Module & string} Name
 * @param {() => Promise<Module>} load
 * @param {Name} name what the module calls it
 * @returns {Module[Name]}
 */
export function lazy(load, name) {
  /** @type {Module[Name] | null} */
  let loaded = null;
  /** @param {Record<string, any>} props */
  function Lazy(props) {
    const [here, setHere] = useState(() => loaded);
    useEffect(() => {
      if (loaded) return;
      load().then(
        (module) => {
          loaded = module[name];
          setHere(() => loaded);
        },
        () => setHere(() => /** @type {any} */ (Missing)),
      );
    }, []);
    return here
      ? html`
          <${here} ...${props} />
        `
      : html`
          <${Skeleton} words=${say('frame-loading')} />
        `;
  }
  return /** @type {any} */ (Lazy);
}
