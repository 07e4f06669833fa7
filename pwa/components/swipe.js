// A swipe to the right does what the button does; the button is always there too.
import { useRef } from 'preact/hooks';

const FAR_PX = 110;
const SLIP_PX = 12;

/**
 * Handlers for an element that may be swiped by a finger; a mouse and a vertical scroll leave it alone.
 * @param {(() => void) | null} onSwipe null where there is nothing to do by a swipe
 */
export function useSwipe(onSwipe) {
  const from = useRef(/** @type {null | {x: number, y: number}} */ (null));
  /** @param {any} event @param {number} px */
  const shift = (event, px) => { event.currentTarget.style.transform = px ? `translateX(${px}px)` : ''; };
  /** @param {any} event */
  const moved = (event) => (from.current ? event.clientX - from.current.x : 0);
  if (!onSwipe) return {};
  return {
    onPointerDown: (/** @type {any} */ event) => { from.current = event.pointerType === 'touch' ? { x: event.clientX, y: event.clientY } : null; },
    onPointerMove: (/** @type {any} */ event) => { if (from.current) shift(event, moved(event) > SLIP_PX ? Math.min(moved(event), FAR_PX * 1.4) : 0); },
    onPointerUp: (/** @type {any} */ event) => {
      const far = moved(event) >= FAR_PX;
      from.current = null;
      shift(event, 0);
      if (far) onSwipe();
    },
    onPointerCancel: (/** @type {any} */ event) => { from.current = null; shift(event, 0); },
  };
}
