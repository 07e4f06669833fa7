// The water level, dragged until it matches the real tube.
import { useRef } from 'preact/hooks';
import { html } from './html.js';
import { BOTTOM, TOP, TubeDrawing } from './tube.js';

const VIEW_HEIGHT = 124;
const KEY_STEPS = /** @type {Record<string, number>} */ ({
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 5,
  PageDown: -5,
});

/**
 * The water level as a tube whose level is dragged until it matches the real one; a slider for keys and screen readers.
 * @param {{label: string, share: number, step: number, words: string, onChange: (share: number) => void}} props
 *   `share` 0 to 1, snapped to multiples of `step`
 */
export function TubeInput({ label, share, step, words, onChange }) {
  const ref = useRef(/** @type {SVGElement | null} */ (null));
  const set = (/** @type {number} */ next) => onChange(Math.min(1, Math.max(0, Math.round(next / step) * step)));
  /** @param {PointerEvent} event */
  function follow(event) {
    const box = ref.current?.getBoundingClientRect();
    if (!box) return;
    const y = ((event.clientY - box.top) / box.height) * VIEW_HEIGHT;
    set((BOTTOM - y) / (BOTTOM - TOP));
  }
  /** @param {PointerEvent} event */
  function grasp(event) {
    ref.current?.setPointerCapture?.(event.pointerId);
    follow(event);
  }
  /** @param {KeyboardEvent} event */
  function key(event) {
    const steps = KEY_STEPS[event.key];
    if (steps === undefined && event.key !== 'Home' && event.key !== 'End') return;
    event.preventDefault();
    set(event.key === 'Home' ? 0 : event.key === 'End' ? 1 : share + (steps ?? 0) * step);
  }
  return html`
    <svg
      ref=${ref}
      class="tube need-water"
      viewBox="0 0 48 124"
      role="slider"
      tabindex="0"
      aria-label=${label}
      aria-orientation="vertical"
      aria-valuemin="0"
      aria-valuemax="100"
      aria-valuenow=${Math.round(share * 100)}
      aria-valuetext=${words}
      onPointerDown=${grasp}
      onPointerMove=${(/** @type {PointerEvent} */ e) => {
        if (e.buttons) follow(e);
      }}
      onKeyDown=${key}
    >
      <${TubeDrawing} need="water" share=${share} due=${null} />
    </svg>
  `;
}
