// How things stand: nothing to show, not there yet, saved or sent, just done.
import { toast } from '../signals/actions.js';
import { html, Icon } from './html.js';
import { TubeDrawing } from './tube.js';
import { say, sayOf } from '../words/say.js';

/** @type {Array<[string, number, number]>} need, share, x */
const STANDING = [
  ['sugar', 0.85, 14],
  ['protein', 0.7, 74],
  ['water', 0.9, 134],
];

/**
 * A calm state with a drawing: full tubes on their board.
 * @param {{title: string, children?: import('preact').ComponentChildren, bare?: boolean}} props
 *   `bare`: tubes without anything in them
 */
export const Empty = ({ title, children, bare = false }) => html`
  <div class="empty">
    <svg class="tube" viewBox="0 0 196 140" aria-hidden="true">
      ${STANDING.map(
        ([need, share, x]) => html`
          <g class=${`need-${need}`} transform=${`translate(${x} 0)`}>
            <${TubeDrawing} need=${need} share=${bare ? 0 : share} due=${null} />
          </g>
        `,
      )}
      <path class="rim" d="M4 118h188" />
    </svg>
    <p class="lead">${title}</p>
    ${children}
  </div>
`;

/**
 * A screen without colonies: before the whole shelf is on this phone for the first time, or with an empty one.
 * @param {{title: string, joining: number | null, children?: import('preact').ComponentChildren}} props
 *   `joining`: how many entries have come, null after all have; `children`: below an empty shelf
 */
export const NoColonies = ({ title, joining, children }) => html`
  <h1>${title}</h1>
  ${
    joining !== null
      ? html`
          <div class="empty" role="status" aria-busy="true">
            <p class="lead">${say('round-joining')}</p>
            <p class="soft">${say('round-joined', { count: joining })}</p>
          </div>
        `
      : html`
          <${Empty} bare title=${say('round-empty-shelf')}>
            <a class="button main" href="#/colony/new">
              <${Icon} name="add" />
              ${say('round-add')}
            </a>
          </${Empty}>
          ${children}
        `
  }
`;

/** What is seen for the moment until a screen is there. @param {{words: string}} props */
export const Skeleton = ({ words }) => html`
  <div class="skeleton" aria-busy="true">
    <p class="visually-hidden">${words}</p>
    <span></span>
    <span></span>
    <span></span>
  </div>
`;

/**
 * Where a log stands: on this phone, on the server, or in need of a person.
 * @param {{state: 'synced' | 'saved' | 'attention'}} props
 */
export const SaveState = ({ state }) => html`
  <span class=${`state-mark ${state}`}>${sayOf('saving-state', state)}</span>
`;

/** The last thing done, for ten seconds, with its undo. */
export function Toast() {
  const shown = toast.value;
  if (!shown) return null;
  return html`
    <div class="toast" role="status">
      <span>${shown.text}</span>
      ${
        shown.undo &&
        html`
          <button
            type="button"
            class="button"
            onClick=${() => {
              const { undo } = shown;
              toast.value = null;
              void undo?.();
            }}
          >
            ${say('round-undo')}
          </button>
        `
      }
    </div>
  `;
}
