// A task as a stand-in sees it: what the keeper says of this colony, the steps with their drawings, and what was done.
import { html, Icon } from './html.js';
import { Cautions, inWords, nameOf } from './in-words.js';
import { lazy } from './lazy.js';
import { ReadAloud } from './read-aloud.js';
import { Head, isFault, Side, taskTitle } from './task.js';
import { logAsSuggested, resolve } from '../signals/actions.js';
import { rowOf } from '../signals/rows.js';
import { labelled, say } from '../words/say.js';

/** @typedef {import('../care/round.js').Item} Item */
/** @typedef {import('../care/overlay.js').ShownRow<'colony'>} ColonyRow */

const Photo = lazy(() => import('./photo.js'), 'Photo');
const Steps = lazy(() => import('./steps.js'), 'Steps');

/** What was done, as the one says who did it. @param {NonNullable<Item['suggested']>} suggested */
function doneInFirstPerson({ kind, set }) {
  if (kind === 'feeding') return say('stand-in-gave');
  if (kind === 'water' && set.action !== 'read') return say('stand-in-watered');
  return kind === 'check' && set.leftovers_removed ? say('stand-in-took') : say('stand-in-looked');
}

/** The colony of a task. @param {string} id */
const colonyOf = (id) => /** @type {ColonyRow | undefined} */ (rowOf(id));

/** What the keeper tells and shows of this colony. @param {{colony: ColonyRow | undefined}} props */
export function Hint({ colony }) {
  const { helper_hint, helper_photo_id } = colony?.set ?? {};
  if (!helper_hint && !helper_photo_id) return null;
  return html`
    <div class="hint">
      ${
        helper_hint &&
        html`
          <p>${helper_hint}</p>
        `
      }
      ${
        helper_photo_id &&
        html`
          <${Photo} id=${helper_photo_id} words=${say('stand-in-hint-picture')} />
        `
      }
    </div>
  `;
}

/** @param {{item: Item, onCouldNot: (item: Item) => void}} props */
export function HelperTask({ item, onCouldNot }) {
  const title = taskTitle(item);
  const done = item.suggested && doneInFirstPerson(item.suggested);
  const colony = colonyOf(item.colony_id);
  const spoken = [title, colony?.set.helper_hint ?? '', ...item.reasons.map((step) => inWords('reason', step))];
  return html`
    <article class=${`task helping ${item.urgent ? 'urgent' : ''}`}>
      <${Side} item=${item} />
      <${Head} item=${item} title=${title} />
      <div class="more stack">
        <${Hint} colony=${colony} />
        <${Steps} items=${item.reasons} />
        <${ReadAloud} sentences=${spoken.filter(Boolean)} />
        <${Cautions} items=${item.cautions} />
      </div>
      <div class="actions">
        ${
          done &&
          html`
            <button
              type="button"
              class="button main"
              aria-label=${labelled(done, nameOf(item.colony_id), title)}
              onClick=${() => logAsSuggested([item])}
            >
              <${Icon} name="done" />
              ${done}
            </button>
          `
        }
        ${
          isFault(item) &&
          html`
            <button type="button" class="button main" onClick=${() => resolve(item.about)}>
              ${say('round-resolved')}
            </button>
          `
        }
        <button
          type="button"
          class="button"
          aria-label=${labelled(say('stand-in-could-not'), nameOf(item.colony_id), title)}
          onClick=${() => onCouldNot(item)}
        >
          ${say('stand-in-could-not')}
        </button>
      </div>
    </article>
  `;
}
