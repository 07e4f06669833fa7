// What may fail, and the words of its failure.
import { useRef, useState } from 'preact/hooks';
import { html } from './html.js';

/** @typedef {(work: () => unknown) => Promise<boolean>} Run resolves to whether it went well */

/**
 * Attempt and say: run what may fail, keep its button quiet meanwhile, and show the words of the failure beside it.
 * @returns {{attempt: Run, load: Run, busy: boolean, said: import('preact').ComponentChildren,
 *   refuse: (words: string) => void}}
 *   `attempt` does nothing while something is under way, so that a button tapped twice acts once; `load` goes on beside
 *   that and speaks in its place; put `said` where the words belong
 */
export function useAttempt() {
  const [told, setTold] = useState(/** @type {null | {words: string, good: boolean}} */ (null));
  const [busy, setBusy] = useState(false);
  const under_way = useRef(/** @type {object | null} */ (null));
  /** @type {Run} a text that the work returns is shown as good news */
  async function load(work) {
    const mine = (under_way.current = {});
    /** @param {string} words @param {boolean} good */
    const speak = (words, good) => mine === under_way.current && setTold({ words, good });
    setBusy(true);
    setTold(null);
    try {
      const words = await work();
      if (typeof words === 'string') speak(words, true);
      return true;
    } catch (problem) {
      speak(/** @type {Error} */ (problem).message, false);
      return false;
    } finally {
      if (mine === under_way.current) {
        under_way.current = null;
        setBusy(false);
      }
    }
  }
  /** Its button is drawn quiet only later. @type {Run} */
  const attempt = async (work) => !under_way.current && load(work);
  /** @param {string} words what is wrong with a form before anything is tried */
  const refuse = (words) => setTold({ words, good: false });
  const said =
    told &&
    (told.good
      ? html`
          <p role="status">${told.words}</p>
        `
      : html`
          <p role="alert" class="caution">${told.words}</p>
        `);
  return { attempt, load, busy, said, refuse };
}
