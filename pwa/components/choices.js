// Chips to choose from: one of several, or several of several.
import { html } from './html.js';

/**
 * One of several: big chips that a thumb can hit.
 * @template {string} Code
 * @param {{label: string, options: Array<[Code, string]>, value: Code | '' | null, onPick: (value: Code) => void,
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
 * @template {string} Code
 * @param {{label: string, options: Array<[Code, string]>, values: Code[], onChange: (values: Code[]) => void}} props
 */
export function ManyChoice({ label, options, values, onChange }) {
  const toggle = (/** @type {Code} */ code) =>
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
