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
  const [told, setTold] = useState(/** @type {null | {words: string, good: boolean}} */ (null));
  const [busy, setBusy] = useState(false);
  const under_way = useRef(false);
  /** @param {() => unknown} work a text that it returns is shown as good news */
  async function attempt(work) {
    if (under_way.current) return false; // a second tap, before the button is seen to be quiet
    under_way.current = true;
    setBusy(true);
    setTold(null);
    try {
      const words = await work();
      if (typeof words === 'string') setTold({ words, good: true });
      return true;
    } catch (problem) {
      refuse(/** @type {Error} */ (problem).message);
      return false;
    } finally {
      under_way.current = false;
      setBusy(false);
    }
  }
  /** @param {string} words what is wrong, also with a form before anything is tried */
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
  return { attempt, busy, said, refuse };
}
