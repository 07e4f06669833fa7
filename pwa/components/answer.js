// What the server is asked when a screen is shown.
import { useEffect, useRef, useState } from 'preact/hooks';
import { get } from '../signals/people.js';
import { saving } from '../signals/saving.js';
import { inDegrees } from '../words/measures.js';
import { say } from '../words/say.js';

/** Why there is no answer. @param {import('../answers.d.ts').Problem} problem @returns {string} */
export const whyNot = (problem) => (problem.code === 'offline' ? say('part-needs-server') : inDegrees(problem.message));

/** @typedef {import('../answers.d.ts').Got} Got */
/**
 * @template {keyof Got} P
 * @typedef {{answer: Got[P] | null, problem: import('../answers.d.ts').Problem | null}} Found
 */

/**
 * Ask when first shown, when the connection comes back, and whenever `when` changes. An answer that is there stays
 * when a later question fails, so that a form does not go from under the hand. One to an earlier question that comes
 * late is not taken.
 * @template {keyof Got & string} P
 * @param {P} path @param {unknown} [when]
 * @returns {Found<P> & {ask: () => Promise<void>}} both null while the first question is under way;
 *   `problem` is that of the last question
 */
export function useAnswer(path, when = null) {
  const [found, setFound] = useState(/** @type {Found<P>} */ ({ answer: null, problem: null }));
  const { online } = saving.value;
  const newest = useRef(/** @type {unknown} */ (null));
  const ask = async () => {
    const question = get(path);
    newest.current = question;
    const next = await question.then(
      (answer) => () => ({ answer, problem: null }),
      (problem) =>
        (/** @type {Found<P>} */ { answer }) => ({ answer, problem }),
    );
    if (newest.current === question) setFound(next);
  };
  useEffect(() => {
    void ask();
  }, [path, when, online]);
  return { ...found, ask };
}
