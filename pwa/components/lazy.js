// A screen or sheet that is fetched when it is first shown; the worker has fetched all ahead, so it opens offline too.
import { useEffect, useState } from 'preact/hooks';
import { html } from './html.js';
import { Skeleton } from './states.js';
import { hear } from '../words/fetched.js';
import { say } from '../words/say.js';

const Missing = () => html`
  <p>${say('frame-missing')}</p>
`;
const NeedsServer = () => html`
  <p>${say('part-needs-server')}</p>
`;

/**
 * A component that stands in for one of another module until that is here, and what it says with it.
 * @template {Record<string, any>} Module
 * @template {keyof Module & string} Name
 * @param {() => Promise<Module>} load
 * @param {Name} name what the module calls it
 * @param {'charts' | 'online'} [words] the messages that it says besides those of all screens; what is `online` is kept
 *   on no phone
 * @returns {Module[Name]}
 */
export function lazy(load, name, words) {
  /** @type {Module[Name] | null} */
  let loaded = null;
  /** @param {Record<string, any>} props */
  function Lazy(props) {
    const [here, setHere] = useState(() => loaded);
    useEffect(() => {
      if (loaded) return;
      Promise.all([load(), hear('screens'), words && hear(words)]).then(
        ([module]) => {
          loaded = module[name];
          setHere(() => loaded);
        },
        () => setHere(() => /** @type {any} */ (words === 'online' ? NeedsServer : Missing)),
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
