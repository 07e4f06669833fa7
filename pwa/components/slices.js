// A long list is made a few entries at a time and only as far as it is looked at, so that a page is there at once and a
// tap has nothing to do with what nobody sees. `python -m tests.bench.full_shelf` (tap to saved) pays for it.
import { useEffect, useRef, useState } from 'preact/hooks';
import { html } from './html.js';

/** As many tasks as a phone shows on its first screen, and as many more as a slow one makes in a frame. */
const FEW = 3;
/** So long what is there can be used before more is made, which then may hold a tap up. */
const PAUSE_MS = 50;

/**
 * How many entries of a list are to be made so far. It grows a moment after each painting while the end of what is made
 * is less than a screen away. The last that was made stays the last when others come or go, so that what takes one off
 * the list does not make another at its end before that is seen.
 * @param {string[]} keys of all entries
 * @returns {{made: number, end: import('preact').ComponentChildren}} `end` stands behind the last one that is made
 */
export function useSlices(keys) {
  const last = useRef({ made: FEW, key: '' });
  const [, draw] = useState(0);
  const end = useRef(/** @type {HTMLElement | null} */ (null));
  const made = keys.indexOf(last.current.key) + 1 || last.current.made;
  last.current = { made, key: keys[made - 1] ?? '' };
  const all = made >= keys.length;
  useEffect(() => {
    if (all || !end.current) return undefined;
    /** @type {ReturnType<typeof setTimeout> | undefined} */
    let soon;
    const more = () => {
      last.current = { made: made + FEW, key: '' };
      draw(made);
    };
    const leave = watchNear(end.current, (near) => {
      clearTimeout(soon);
      if (near) soon = setTimeout(more, PAUSE_MS);
    });
    return () => {
      leave();
      clearTimeout(soon);
    };
  }, [made, all]);
  return {
    made,
    end: all
      ? null
      : html`
          <div ref=${end}></div>
        `,
  };
}

/**
 * How many parts of a page are to be made so far: another one after each painting, where all at once would take a slow
 * phone too long.
 * @param {number} all @returns {number} 1 at first
 */
export function useParts(all) {
  const [made, make] = useState(1);
  useEffect(() => make(Math.min(all, made + 1)), [made]);
  return made;
}

/**
 * Say whether a part is in view or less than a screen away, now and whenever that changes.
 * @param {Element} part
 * @param {(near: boolean, height_px: number) => void} tell
 * @returns {() => void} ends it
 */
export function watchNear(part, tell) {
  const watcher = new IntersectionObserver(
    (seen) => {
      const newest = seen.at(-1);
      if (newest) tell(newest.isIntersecting, newest.boundingClientRect.height);
    },
    { rootMargin: '100% 0px' },
  );
  watcher.observe(part);
  return () => watcher.disconnect();
}
