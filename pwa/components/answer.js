// What the server is asked when a screen opens: its answer, or why there is none.
import { useEffect, useState } from 'preact/hooks';
import { get } from '../signals/people.js';
import { saving } from '../signals/shelf.js';
import { m } from '../text/en-more.js';

/** @param {any} problem @returns {string} */
export const whyNot = (problem) => (problem.code === 'offline' ? m.ahead.needs_server : problem.message);

/**
 * Ask when first shown, when the connection comes back, and whenever `when` changes.
 * @param {string} path @param {unknown} [when]
 * @returns {{answer: any, problem: any, ask: () => Promise<void>}} both null while the first question is under way
 */
export function useAnswer(path, when = null) {
  const [found, setFound] = useState(/** @type {{answer: any, problem: any}} */ ({ answer: null, problem: null }));
  const { online } = saving.value;
  const ask = async () => setFound(await get(path).then((answer) => ({ answer, problem: null }), (problem) => ({ answer: null, problem })));
  useEffect(() => { void ask(); }, [path, when, online]);
  return { ...found, ask };
}
