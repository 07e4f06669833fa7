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
  const [words, setWords] = useState('');
  const [good, setGood] = useState(true);
  const [busy, setBusy] = useState(false);
  const under_way = useRef(/** @type {object | null} */ (null));
  /** @type {Run} a text that the work returns is shown as good news */
  async function load(work) {
    const mine = (under_way.current = {});
    setBusy(true);
    setWords('');
    try {
      const told = await work();
      if (typeof told === 'string' && mine === under_way.current) {
        setGood(true);
        setWords(told);
      }
      return true;
    } catch (problem) {
      if (mine === under_way.current) {
        setGood(false);
        setWords(/** @type {Error} */ (problem).message);
      }
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
  /** @param {string} text what is wrong with a form before anything is tried */
  const refuse = (text) => {
    setGood(false);
    setWords(text);
  };
  const said =
    words &&
    (good
      ? html`
          <p role="status">${words}</p>
        `
      : html`
          <p role="alert" class="caution">${words}</p>
        `);
  return { attempt, load, busy, said, refuse };
}
