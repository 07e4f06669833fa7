// Attempt and say: run what may fail, keep its button quiet meanwhile, and show the words of the failure beside it.
// Ask and wait: what the server is asked when a screen opens.
import { useEffect, useRef, useState } from 'preact/hooks';
import { get } from '../signals/people.js';
import { saving } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { inDegrees } from './degrees.js';
import { html } from './html.js';

/**
 * @returns {{attempt: (work: () => any) => Promise<boolean>, busy: boolean, said: any, say: (words: string) => void}}
 *   `attempt` resolves to whether it went well; put `said` where the words belong
 */
export function useAttempt() {
  const [words, setWords] = useState('');
  const [good, setGood] = useState(true);
  const [busy, setBusy] = useState(false);
  const alive = useRef(0);
  /** @param {() => any} work a text that it returns is shown as good news */
  async function attempt(work) {
    const mine = alive.current += 1;
    setBusy(true);
    setWords('');
    try {
      const told = await work();
      if (typeof told === 'string' && mine === alive.current) { setGood(true); setWords(told); }
      return true;
    } catch (problem) {
      if (mine === alive.current) { setGood(false); setWords(/** @type {Error} */ (problem).message); }
      return false;
    } finally {
      if (mine === alive.current) setBusy(false);
    }
  }
  /** @param {string} text what is wrong with a form before anything is tried */
  const say = (text) => { setGood(false); setWords(text); };
  const said = words && (good ? html`<p role="status">${words}</p>` : html`<p role="alert" class="caution">${words}</p>`);
  return { attempt, busy, said, say };
}

/** A number as people type it; null for nothing, NaN where it is none. @param {string} text */
export const numberOf = (text) => (text === '' ? null : Number(text.replace(',', '.')));

/** @param {any} form a form element @returns {(name: string) => string} its fields, trimmed */
export function textsOf(form) {
  const data = new FormData(form);
  return (name) => String(data.get(name) ?? '').trim();
}

/** Why there is no answer. @param {any} problem @returns {string} */
export const whyNot = (problem) => (problem.code === 'offline' ? m.ahead.needs_server : inDegrees(problem.message));

/**
 * Ask when first shown, when the connection comes back, and whenever `when` changes. An answer that is there stays
 * when a later question fails, so that a form does not go from under the hand.
 * @param {string} path @param {unknown} [when]
 * @returns {{answer: any, problem: any, ask: () => Promise<void>}} both null while the first question is under way; `problem` is that of the last question
 */
export function useAnswer(path, when = null) {
  const [found, setFound] = useState(/** @type {{answer: any, problem: any}} */ ({ answer: null, problem: null }));
  const { online } = saving.value;
  const ask = async () => get(path).then((answer) => setFound({ answer, problem: null }), (problem) => setFound(({ answer }) => ({ answer, problem })));
  useEffect(() => { void ask(); }, [path, when, online]);
  return { ...found, ask };
}
