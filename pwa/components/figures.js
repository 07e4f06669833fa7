// The figures of a drawing.
import { html } from './html.js';
import { say } from '../words/say.js';

/**
 * What a drawing shows, as a table behind it. `wide`: it may be wider than the page, and is moved across.
 * @param {{heads: string[], rows: string[][], wide?: boolean}} props
 */
export const Figures = ({ heads, rows, wide = false }) => html`
  <details>
    <summary>${say('part-table')}</summary>
    ${
      wide
        ? html`
            <div class="across" role="region" tabindex="0" aria-label=${say('part-table')}>
              <${Table} heads=${heads} rows=${rows} />
            </div>
          `
        : html`
            <${Table} heads=${heads} rows=${rows} />
          `
    }
  </details>
`;

/** @param {{heads: string[], rows: string[][]}} props */
const Table = ({ heads, rows }) => html`
  <table>
    <thead>
      <tr>
        ${heads.map(
          (head) => html`
            <th scope="col">${head}</th>
          `,
        )}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (cells) => html`
          <tr>
            ${cells.map(
              (cell) => html`
                <td>${cell}</td>
              `,
            )}
          </tr>
        `,
      )}
    </tbody>
  </table>
`;
