// A screen or sheet that is fetched when it is first shown, with what it says. The worker has fetched ahead all but
// what works with a connection only, so the others open offline, too.
import { useEffect, useState } from 'preact/hooks';
import { html } from './html.js';
import { Skeleton } from './states.js';
import { hear } from '../words/fetched.js';
import { say } from '../words/say.js';

const Missing = () => html`
  <p>${say('frame-missing')}</p>
`;

/** @param {{onAgain: () => void}} props */
const NeedsServer = ({ onAgain }) => html`
  <section class="card">
    <p role="status">${say('part-needs-server')}</p>
    <button type="button" class="button" onClick=${onAgain}>${say('part-again')}</button>
  </section>
`;

/**
 * A component that stands in for one of another module until that is here.
 * @template {{[key in Name]: (props: never) => unknown}} Module
 * @template {string} Name
 * @param {() => Promise<Module>} load
 * @param {Name} name what the module calls it
 * @param {'charts' | 'counting' | 'online' | 'once'} [words] the messages that it says besides those of all screens;
 *   `online`: it needs a connection, and no phone keeps it; `once`: so, and it has no messages of its own
 * @returns {Module[Name]}
 */
export function lazy(load, name, words) {
  const part = words === 'once' ? undefined : words;
  const again = words === 'once' ? () => location.reload() : null;
  /** @type {unknown} */
  let loaded = null;
  async function fetchIt() {
    // a browser may remember for the life of a page that a module could not be fetched
    if (part === 'online') await hear(part);
    const [module] = await Promise.all([load(), hear('screens'), part && hear(part)]);
    loaded = module[name];
  }
  /** @param {object} props */
  function Lazy(props) {
    const [here, setHere] = useState(/** @type {() => (props: object) => unknown} */ (() => loaded));
    const show = () =>
      fetchIt().then(
        () => setHere(() => loaded),
        () => setHere(() => (again || part === 'online' ? NeedsServer : Missing)),
      );
    useEffect(() => {
      // what came since this was drawn is asked for, too
      here ?? void show();
    }, []);
    return here
      ? html`
          <${here} ...${props} onAgain=${again ?? show} />
        `
      : html`
          <${Skeleton} words=${say('frame-loading')} />
        `;
  }
  return /** @type {Module[Name]} */ (/** @type {unknown} */ (Lazy)); // whoever uses it gives what that one takes
}
