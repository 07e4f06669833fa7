// What may fail, and the words of its failure.
import { useRef, useState } from 'preact/hooks';
import { html } from './html.js';

/**
 * Attempt and say: run what may fail, keep its button quiet meanwhile, and show the words of the failure beside it.
 * @returns {{attempt: (work: () => unknown) => Promise<boolean>, busy: boolean,
 *   said: import('preact').ComponentChildren, refuse: (words: string) => void}}
 *   `attempt` resolves to whether it went well; put `said` where the words belong
 */
export function useAttempt() {
  const [words, setWords] = useState('');
  const [good, setGood] = useState(true);
  const [busy, setBusy] = useState(false);
  const alive = useRef(0);
  /** @param {() => unknown} work a text that it returns is shown as good news */
  async function attempt(work) {
    const mine = (alive.current += 1);
    setBusy(true);
    setWords('');
    try {
      const told = await work();
      if (typeof told === 'string' && mine === alive.current) {
        setGood(true);
        setWords(told);
      }
      return true;
    } catch (problem) {
      if (mine === alive.current) {
        setGood(false);
        setWords(/** @type {Error} */ (problem).message);
      }
      return false;
    } finally {
      if (mine === alive.current) setBusy(false);
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
