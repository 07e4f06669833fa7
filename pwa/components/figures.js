// The figures of a drawing.
import { partsText } from '../text/en/parts.js';
import { html } from './html.js';

/** What a drawing shows, as a table behind it. @param {{heads: string[], rows: string[][]}} props */
export const Figures = ({ heads, rows }) => html`
  <details>
    <summary>${partsText.table}</summary>
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
  </details>
`;
