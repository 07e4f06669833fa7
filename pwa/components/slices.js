// A long list is made a few entries at a time, those in view first, so that a page is there at once and stays quick.
import { useEffect, useState } from 'preact/hooks';

/** As many tasks as a phone shows on its first screen, and as many more as a slow one makes in a frame. */
const FIRST = 5;
const MORE = 3;

/**
 * How many entries of a list are to be made so far; it grows after each painting until all are.
 * @param {number} total @param {number} [more] how many a painting
 */
export function useSlices(total, more = MORE) {
  const [made, setMade] = useState(FIRST);
  useEffect(() => {
    if (made >= total) return undefined;
    const timer = setTimeout(() => setMade(made + more));
    return () => clearTimeout(timer);
  }, [made, total]);
  return made;
}
