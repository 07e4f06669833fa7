// How a task is done, step by step, each with its drawing.
import { Drawing } from './how-to-drawings.js';
import { html } from './html.js';
import { inWords } from './in-words.js';

/** @typedef {import('../kinds.d.ts').Reason} Reason */

/** @param {{items: Reason[]}} props */
export const Steps = ({ items }) => html`
  <ol class="how-to">
    ${items.map(
      (item) => html`
        <li key=${item.code}>
          <${Drawing} code=${item.code} />
          <p>${inWords('reason', item)}</p>
        </li>
      `,
    )}
  </ol>
`;
