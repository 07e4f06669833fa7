// A task of the round: its tube, what to do in real units, why, and one tap to log it as suggested.
import { useRef } from 'preact/hooks';
import { asksForCount } from '../care/round.js';
import { html, Icon } from './html.js';
import { dueInWords, Tube } from './tube.js';
import { logAsSuggested, resolve } from '../signals/actions.js';
import { rowOf } from '../signals/rows.js';
import { portionInWords } from '../words/portions.js';
import { Cautions, nameOf, todoInWords, Why } from './in-words.js';
import { labelled, say, sayOf } from '../words/say.js';

/** @typedef {import('../care/round.js').Item} Item */
/** @typedef {PointerEvent & {currentTarget: HTMLElement}} Swipe */

/** How far a swipe goes, and what is only a slip of the finger. */
const FAR_PX = 110;
const SLIP_PX = 12;

/**
 * What to do.
 * @param {Pick<Item, 'what' | 'need' | 'portion' | 'fault'>} item
 * @returns {string}
 */
export function taskTitle(item) {
  if (item.fault) return sayOf('fault', item.fault);
  return item.portion ? portionInWords(item.portion) : todoInWords(item);
}

/**
 * What the first button says: what one does, where that is not simply 'done'.
 * @param {NonNullable<Item['suggested']>} suggested
 */
function doneInWords(suggested) {
  if (suggested.kind === 'check' && suggested.set.need === 'room') return say('round-not-moved');
  if (suggested.kind !== 'move') return say('round-done-short');
  return suggested.set.how === 'offered' ? say('round-offered') : say('round-moved');
}

/** @param {import('../care/round.js').Item} item */
export const isFault = (item) => item.what === 'fault';

/**
 * What is due in the next days, in one line: looked at more than done, so its tick is small.
 * @param {{item: import('../care/round.js').Item}} props
 */
export function CompactTask({ item }) {
  const title = taskTitle(item);
  return html`
    <article class="task compact">
      <${Side} item=${item} />
      <${Head} item=${item} title=${title} />
      ${
        item.suggested &&
        html`
          <button
            type="button"
            class="button"
            aria-label=${labelled(say('round-as-suggested'), nameOf(item.colony_id), title)}
            onClick=${() => logAsSuggested([item])}
          >
            <${Icon} name="done" />
          </button>
        `
      }
    </article>
  `;
}

/** @param {{item: import('../care/round.js').Item}} props */
export const Side = ({ item }) => html`
  <div class="side">
    ${
      item.gauge
        ? html`
            <${Tube} gauge=${item.gauge} small />
          `
        : html`
            <span class=${`badge ${isFault(item) ? 'warn' : ''}`}>
              <${Icon} name=${isFault(item) ? 'fault' : item.need} />
            </span>
          `
    }
  </div>
`;

/** @param {{item: import('../care/round.js').Item, title: string}} props */
export function Head({ item, title }) {
  const number = rowOf(item.colony_id)?.set.number;
  return html`
    <a class="open" href=${`#/colony/${item.colony_id}`}>
      <span class="eyebrow">
        <strong>${number ? `${number} · ` : ''}${nameOf(item.colony_id)}</strong>
        ${' '}
        <span>${sayOf('need', item.need)}</span>
        <span class=${item.group === 'now' ? 'due-now' : ''}>
          ${item.urgent ? say('round-urgent') : dueInWords(item.due_at_ms)}
        </span>
      </span>
      <span class="lead">${title}</span>
    </a>
  `;
}

/**
 * @param {{item: Item, onOther: (item: Item) => void, onLater?: (item: Item) => void}} props
 */
export function Task({ item, onOther, onLater }) {
  const fault = isFault(item);
  const title = taskTitle(item);
  const done = item.suggested && doneInWords(item.suggested);
  const done_aloud = done === say('round-done-short') ? say('round-as-suggested') : done;
  const swipe = useSwipe(item.suggested ? () => void logAsSuggested([item]) : null);
  const asks = asksForCount(item);
  const other = asks ? say('round-count') : say('round-other');
  const changes = item.need === 'rest' && !item.suggested; // a rest is put right in the colony itself
  return html`
    <article class=${`task ${item.urgent ? 'urgent' : ''}`} ...${swipe}>
      <${Side} item=${item} />
      <${Head} item=${item} title=${title} />
      <div class="more">
        <${Why} items=${item.reasons} open=${fault} />
        <${Cautions} items=${item.cautions} />
      </div>
      <div class="actions">
        ${
          item.suggested &&
          html`
            <button
              type="button"
              class="button main"
              aria-label=${labelled(done_aloud ?? '', nameOf(item.colony_id), title)}
              onClick=${() => logAsSuggested([item])}
            >
              <${Icon} name="done" />
              ${done}
            </button>
          `
        }
        ${
          fault &&
          html`
            <button type="button" class="button main" onClick=${() => resolve(item.about)}>
              ${say('round-resolved')}
            </button>
          `
        }
        ${
          changes &&
          html`
            <a
              class="button main"
              aria-label=${labelled(say('round-change'), nameOf(item.colony_id), title)}
              href=${`#/colony/${item.colony_id}`}
            >
              ${say('round-change')}
            </a>
          `
        }
        ${
          !fault &&
          !changes &&
          html`
            <button
              type="button"
              class=${`button ${asks ? 'main' : ''}`}
              aria-label=${labelled(other, title)}
              onClick=${() => onOther(item)}
            >
              ${other}
            </button>
          `
        }
        ${
          onLater &&
          !item.urgent &&
          item.group !== 'next' &&
          html`
            <button
              type="button"
              class="button"
              aria-label=${labelled(say('round-later'), title)}
              onClick=${() => onLater(item)}
            >
              ${say('round-later')}
            </button>
          `
        }
      </div>
    </article>
  `;
}

/**
 * A swipe to the right does what the button does; the button is always there too. These are the handlers for an element
 * that may be swiped by a finger; a mouse and a vertical scroll leave it alone.
 * @param {(() => void) | null} onSwipe null where there is nothing to do by a swipe
 */
function useSwipe(onSwipe) {
  const from = useRef(/** @type {number | null} */ (null));
  /** How far the finger is from where it came down. @param {Swipe} event */
  const moved = ({ clientX }) => (from.current === null ? 0 : clientX - from.current);
  /** @param {Swipe} event @param {number} px */
  const shift = ({ currentTarget }, px) => {
    currentTarget.style.transform = px ? `translateX(${px}px)` : '';
  };
  if (!onSwipe) return {};
  /** @param {Swipe} event */
  const onPointerCancel = (event) => {
    from.current = null;
    shift(event, 0);
  };
  return {
    onPointerCancel,
    onPointerDown: (/** @type {Swipe} */ event) => {
      from.current = event.pointerType === 'touch' ? event.clientX : null;
    },
    onPointerMove: (/** @type {Swipe} */ event) => {
      if (from.current !== null) shift(event, moved(event) > SLIP_PX ? Math.min(moved(event), FAR_PX * 1.4) : 0);
    },
    onPointerUp: (/** @type {Swipe} */ event) => {
      const far = moved(event) >= FAR_PX;
      onPointerCancel(event);
      if (far) onSwipe();
    },
  };
}
