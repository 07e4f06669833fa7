// One of several: big chips that a thumb can hit. And a stepper in real units.
import { html } from './html.js';

/** @param {{label: string, options: Array<[string, string]>, value: string, onPick: (value: string) => void}} props */
export const Choice = ({ label, options, value, onPick }) => html`<div role="group" aria-label=${label} class="stack">
  <span aria-hidden="true"><strong>${label}</strong></span>
  <div class="wrap">${options.map(([code, words]) => html`<button type="button" class="chip" aria-pressed=${String(code === value)} onClick=${() => onPick(code)}>${words}</button>`)}</div>
</div>`;

/** @param {{label: string, value: number, step: number, most: number, unit: string, onChange: (value: number) => void}} props */
export function Stepper({ label, value, step, most, unit, onChange }) {
  const set = (/** @type {number} */ next) => onChange(Math.min(most, Math.max(step, Math.round(next * 100) / 100)));
  return html`<div role="group" aria-label=${label} class="stepper">
    <button type="button" class="button" aria-label=${`${label}: less`} onClick=${() => set(value - step)}>−</button>
    <output>${value}</output> <span>${unit}</span>
    <button type="button" class="button" aria-label=${`${label}: more`} onClick=${() => set(value + step)}>+</button>
  </div>`;
}
