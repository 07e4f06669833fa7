// An amount in real units, by two big buttons.
import { html, Icon } from './html.js';
import { say } from '../words/say.js';
import { numeral } from '../words/shown.js';

/**
 * The step at an amount, so that 1, 2, 3 drops and 40, 45, 50 seeds both go by single taps.
 * @param {number} value
 * @param {number} least
 */
function stepAt(value, least) {
  if (value >= 100) return Math.max(least, 10);
  return value >= 20 ? Math.max(least, 5) : least;
}

/**
 * An amount in real units, changed by two big buttons; the steps grow with the amount. `words` say all of it.
 * @param {{label: string, value: number, step: number, most: number, unit: string,
 *   words?: string, onChange: (value: number) => void}} props
 */
export function Stepper({ label, value, step, most, unit, words, onChange }) {
  const set = (/** @type {number} */ next) => onChange(Math.min(most, Math.max(step, Math.round(next * 100) / 100)));
  return html`
    <div role="group" aria-label=${label} class="stepper">
      <button
        type="button"
        class="button"
        aria-label=${say('part-less', { label })}
        disabled=${value <= step}
        onClick=${() => set(value - stepAt(value - step, step))}
      >
        <${Icon} name="less" />
      </button>
      <p>
        <output>${words ?? numeral(value)}</output>
        ${
          !words &&
          html`
            <small>${unit}</small>
          `
        }
      </p>
      <button
        type="button"
        class="button"
        aria-label=${say('part-more', { label })}
        onClick=${() => set(value + stepAt(value, step))}
      >
        <${Icon} name="add" />
      </button>
    </div>
  `;
}
