// The page's end of the worker that looks for dots.

/** @typedef {import('./propose.js').Proposed} Proposed */
/** @typedef {{body_px: number, dots: Proposed[]}} Looked */

/**
 * Look at one picture, as often as frame and size change; only the last question is answered.
 * @param {Blob} blob
 */
export function lookAt(blob) {
  const worker = new Worker(new URL('./looking.js', import.meta.url), { type: 'module' });
  let turn = 0;
  let sent = false;
  /** @type {{resolve: (looked: Looked | null) => void, reject: (problem: Error) => void} | null} */
  let waiting = null;
  worker.addEventListener('message', ({ data }) => {
    if (data.ready || data.turn !== turn) return;
    if (data.problem) waiting?.reject(new Error(data.problem));
    else waiting?.resolve(data);
    waiting = null;
  });
  worker.addEventListener('error', () => waiting?.reject(new Error('The worker for counting did not start.')));
  return {
    /**
     * @param {number | null} body_px @param {import('./propose.js').Frame | null} frame
     * @returns {Promise<Looked | null>} null where another question came after it
     */
    ask(body_px, frame) {
      waiting?.resolve(null);
      turn += 1;
      worker.postMessage({ ...(sent ? {} : { blob }), body_px, frame, turn });
      sent = true;
      return new Promise((resolve, reject) => {
        waiting = { resolve, reject };
      });
    },
    end() {
      waiting?.resolve(null);
      worker.terminate();
    },
  };
}
