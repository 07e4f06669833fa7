// The page's end of the worker for pictures.

/** @typedef {import('./propose.js').Proposed} Proposed */
/** @typedef {{body_px: number, dots: Proposed[]}} Looked */
/** @typedef {import('./small.js').Small} Small */
/** @typedef {{practise: unknown, small: Small | null, look: Looked}} Made what is made of each question */
/** @typedef {ReturnType<typeof startLooker>} Looker */

const NOT_STARTED = 'The worker for pictures did not start.';

/** Start a worker: it makes pictures small, and looks at one as often as frame and size change. */
export function startLooker() {
  const worker = new Worker(new URL('./looking.js', import.meta.url), { type: 'module' });
  /** @type {Map<number, {resolve(made: unknown): void, reject(problem: Error): void}>} */
  const waiting = new Map();
  let asked = 0;
  let looked = 0;
  let held = '';
  let broken = false;
  worker.addEventListener('message', ({ data: { id, made, problem } }) => {
    const asker = waiting.get(id);
    waiting.delete(id);
    if (problem) asker?.reject(new Error(problem));
    else asker?.resolve(made);
  });
  worker.addEventListener('error', () => {
    broken = true;
    for (const { reject } of waiting.values()) reject(new Error(NOT_STARTED));
    waiting.clear();
  });
  /**
   * @template {keyof Made} W @param {{way: W} & Record<string, unknown>} what
   * @returns {Promise<Made[W] | null>}
   */
  const ask = (what) => {
    if (broken) return Promise.reject(new Error(NOT_STARTED));
    asked += 1;
    worker.postMessage({ id: asked, ...what });
    return new Promise((resolve, reject) => waiting.set(asked, { resolve, reject }));
  };
  return {
    /** Become quick before there is a picture: the browser compiles what runs often. */
    practise: () => ask({ way: 'practise' }).catch(() => undefined),
    /** Make a picture small. @param {Blob} file @returns {Promise<Small | null>} null: it stays too large */
    async small(file) {
      const made = await ask({ way: 'small', file });
      held = made?.sha256 ?? '';
      return made;
    },
    /**
     * Look for dots; only the last question is answered.
     * @param {Blob} blob @param {string} sha256 of it @param {import('./looking.js').How} how
     * @returns {Promise<Looked | null>} null where another question came after it
     */
    look(blob, sha256, how) {
      waiting.get(looked)?.resolve(null);
      waiting.delete(looked);
      const found = ask({ way: 'look', ...(sha256 === held ? {} : { blob }), ...how });
      held = sha256;
      looked = asked;
      return found;
    },
    end() {
      worker.terminate();
      for (const { resolve } of waiting.values()) resolve(null);
      waiting.clear();
    },
  };
}
