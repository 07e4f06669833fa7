// Chips to choose from: one of several, or several of several.
import { html } from './html.js';

/**
 * One of several: big chips that a thumb can hit.
 * @param {{label: string, options: Array<[string, string]>, value: string, onPick: (value: string) => void,
 *   hideLabel?: boolean}} props
 */
export const Choice = ({ label, options, value, onPick, hideLabel = false }) => html`
  <div role="group" aria-label=${label} class="choice">
    ${
      !hideLabel &&
      html`
        <span aria-hidden="true">${label}</span>
      `
    }
    <div class="wrap">
      ${options.map(
        ([code, words]) => html`
          <button type="button" class="chip" aria-pressed=${String(code === value)} onClick=${() => onPick(code)}>
            ${words}
          </button>
        `,
      )}
    </div>
  </div>
`;

/**
 * Several of several.
 * @param {{label: string, options: Array<[string, string]>, values: string[],
 *   onChange: (values: string[]) => void}} props
 */
export function ManyChoice({ label, options, values, onChange }) {
  const toggle = (/** @type {string} */ code) =>
    onChange(values.includes(code) ? values.filter((each) => each !== code) : [...values, code]);
  return html`
    <div role="group" aria-label=${label} class="choice">
      <span aria-hidden="true">${label}</span>
      <div class="wrap">
        ${options.map(
          ([code, words]) => html`
            <button
              type="button"
              class="chip"
              aria-pressed=${String(values.includes(code))}
              onClick=${() => toggle(code)}
            >
              ${words}
            </button>
          `,
        )}
      </div>
    </div>
  `;
}
