// What may fail, and the words of its failure.
import { useRef, useState } from 'preact/hooks';
import { html } from './html.js';

/**
 * Attempt and say: run what may fail, keep its button quiet meanwhile, and show the words of the failure beside it.
 * @returns {{attempt: (work: () => unknown) => Promise<boolean>, busy: boolean,
 *   said: import('preact').ComponentChildren, refuse: (words: string) => void}}
 *   `attempt` resolves to whether it went well, and does nothing while work of it is under way; put `said` where the
 *   words belong
 */
export function useAttempt() {
  const [words, setWords] = useState('');
  const [good, setGood] = useState(true);
  const [busy, setBusy] = useState(false);
  const under_way = useRef(false);
  /** @param {() => unknown} work a text that it returns is shown as good news */
  async function attempt(work) {
    if (under_way.current) return false; // a second tap, before the button is seen to be quiet
    under_way.current = true;
    setBusy(true);
    setWords('');
    try {
      const told = await work();
      if (typeof told === 'string') {
        setGood(true);
        setWords(told);
      }
      return true;
    } catch (problem) {
      setGood(false);
      setWords(/** @type {Error} */ (problem).message);
      return false;
    } finally {
      under_way.current = false;
      setBusy(false);
    }
  }
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
  return { attempt, busy, said, refuse };
}
