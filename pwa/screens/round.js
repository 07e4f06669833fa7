// The round: what is due now, later today and next, how far it has come, and what was done. Each task has its tube,
// what to do in real units, why, and one tap to log it as suggested.
import { useRef, useState } from 'preact/hooks';
import { asksForCount } from '../care/round.js';
import { html, Icon } from '../components/html.js';
import {
  capital,
  Cautions,
  eventInWords,
  nameOf,
  portionInWords,
  timeOfDay,
  Why,
  todoInWords,
  wordFor,
} from '../components/in-words.js';
import { Empty, SaveState } from '../components/states.js';
import { dueInWords, LyingTube, Tube } from '../components/tube.js';
import { logAsSuggested, resolve, voidLog } from '../signals/actions.js';
import { route } from '../signals/route.js';
import { round, rows, rowsOf } from '../signals/rows.js';
import { t } from '../text/en.js';
import { Lazy } from './lazy.js';

const PART_OF_A_ROUND = ['feeding', 'check', 'water'];
/** How far a swipe goes, and what is only a slip of the finger. */
const FAR_PX = 110;
const SLIP_PX = 12;

export function RoundScreen() {
  const { items, done } = round.value;
  const [sheet, setSheet] = useState(/** @type {{what: string, item?: any} | null} */ (null));
  if (!rowsOf('colony').length) {
    return html`
      <h1>${t.round.title}</h1>
      <${Empty} bare title=${t.round.empty_shelf}>
        <a class="button main" href="#/colony/new">
          <${Icon} name="add" />
          ${t.round.add}
        </a>
      </${Empty}>
    `;
  }
  const due = items.filter((item) => item.group === 'now');
  const easy = due.filter((item) => item.suggested && !item.urgent);
  const all = html`
    <button type="button" class="button main wide" onClick=${() => logAsSuggested(easy)}>
      <${Icon} name="many" />
      ${t.round.all(easy.length)}${easy.length === 1 ? `: ${nameOf(easy[0]?.colony_id ?? '')}` : ''}
    </button>
  `;
  // some systems show a nudge without buttons: then its one tap is the first thing on the page that it opens
  const nudged = route.value.nudge && easy.length > 0;
  const close = () => setSheet(null);
  return html`
    <h1>${t.round.title}</h1>
    ${nudged && all}
    <${Progress}
      left=${due.length}
      done=${done.filter((row) => PART_OF_A_ROUND.includes(row.kind)).length}
      next=${items[0]}
    />
    ${
      /** @type {const} */ (['now', 'today', 'next']).map((group) => {
        const part = items.filter((item) => item.group === group);
        return (
          part.length > 0 &&
          html`
            <section class="stack" aria-label=${t.round[group]}>
              <h2>${t.round[group]}</h2>
              ${part.map((item) =>
                group === 'next'
                  ? html`
                      <${CompactTask} key=${item.key} item=${item} />
                    `
                  : html`
                      <${Task}
                        key=${item.key}
                        item=${item}
                        onOther=${() => setSheet({ what: 'log', item })}
                        onLater=${() => setSheet({ what: 'later', item })}
                      />
                    `,
              )}
              ${group === 'now' && !nudged && easy.length > 1 && all}
            </section>
          `
        );
      })
    }
    <button type="button" class="button wide" onClick=${() => setSheet({ what: 'many' })}>
      <${Icon} name="many" />
      ${t.round.many}
    </button>
    ${
      done.length > 0 &&
      html`
        <section class="stack" aria-label=${t.round.done}>
          <h2>${t.round.done}</h2>
          <ul class="done-list">
            ${done.map(
              (row) => html`
                <${Done} key=${row.id} row=${row} />
              `,
            )}
          </ul>
        </section>
      `
    }
    ${
      sheet?.what === 'log' &&
      html`
        <${Lazy}
          from="log"
          name="LogSheet"
          props=${{ colonyId: sheet.item.colony_id, need: sheet.item.need, item: sheet.item, onClose: close }}
        />
      `
    }
    ${
      sheet?.what === 'later' &&
      html`
        <${Lazy} from="round_sheets" name="LaterSheet" props=${{ item: sheet.item, onClose: close }} />
      `
    }
    ${
      sheet?.what === 'many' &&
      html`
        <${Lazy} from="round_sheets" name="ManySheet" props=${{ onClose: close }} />
      `
    }
  `;
}

/** @param {{left: number, done: number, next: import('../care/round.js').Item | undefined}} props */
function Progress({ left, done, next }) {
  if (!left) {
    return html`
      <${Empty} title=${next ? t.round.next_at(dayInWords(next.due_at_ms)) : t.round.quiet}>
        <p class="soft">${done ? t.round.finished : ''} ${t.round.calm}</p>
      </${Empty}>
    `;
  }
  const words = t.round.progress(done, done + left);
  return html`
    <div class="progress">
      <${LyingTube} part=${done} whole=${done + left} words=${words} />
      <p class="soft" aria-hidden="true">${words}</p>
    </div>
  `;
}

/** @param {number} ms @returns {string} a weekday, and the hour if it is today */
function dayInWords(ms) {
  const when = new Date(ms);
  const same = when.toDateString() === new Date().toDateString();
  return same ? timeOfDay(ms) : when.toLocaleDateString([], { weekday: 'long' });
}

/** @param {{row: import('../care/overlay.js').ShownRow}} props */
function Done({ row }) {
  const who = row.by ? rows.value.get(row.by)?.set.name : null;
  return html`
    <li>
      <${Icon} name="done" />
      <div class="grow">
        <p>
          <strong>${nameOf(row.set.colony_id)}</strong>
          ${' '}${eventInWords(row)}
        </p>
        <p class="soft">
          ${timeOfDay(row.happened_ms ?? 0)}${' '}${who ? t.round.by(who) : ''}${' · '}
          <${SaveState} state=${row.state} />
        </p>
      </div>
      <button
        type="button"
        class="button quiet"
        onClick=${() => voidLog(row)}
        aria-label=${`${t.round.undo}: ${eventInWords(row)}`}
      >
        ${t.round.undo}
      </button>
    </li>
  `;
}

/** @param {import('../care/round.js').Item} item @returns {string} what to do */
export function taskTitle(item) {
  if (isFault(item)) return capital(wordFor('fault', item.reasons[0]?.args.fault ?? item.reasons[0]?.code));
  return item.portion ? portionInWords(item.portion) : todoInWords(item);
}

/** What the first button says: what one does, where that is not simply 'done'. @param {any} suggested */
function doneInWords(suggested) {
  if (suggested.kind === 'check' && suggested.set.need === 'room') return t.round.not_moved;
  if (suggested.kind !== 'move') return t.round.done_short;
  return suggested.set.how === 'offered' ? t.round.offered : t.round.moved;
}

/** @param {import('../care/round.js').Item} item */
const isFault = (item) => item.key.includes('/fault:');

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
            aria-label=${`${t.round.as_suggested}: ${nameOf(item.colony_id)}, ${title}`}
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
const Side = ({ item }) => html`
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
function Head({ item, title }) {
  const number = rows.value.get(item.colony_id)?.set.number;
  return html`
    <a class="open" href=${`#/colony/${item.colony_id}`}>
      <span class="eyebrow">
        <strong>${number ? `${number} · ` : ''}${nameOf(item.colony_id)}</strong>
        ${' '}
        <span>${wordFor('need', item.need)}</span>
        <span class=${item.group === 'now' ? 'due-now' : ''}>
          ${item.urgent ? t.round.urgent : dueInWords(item.due_at_ms)}
        </span>
      </span>
      <span class="lead">${title}</span>
    </a>
  `;
}

/**
 * @param {{item: import('../care/round.js').Item, onOther: (item: any) => void, onLater?: (item: any) => void}} props
 */
export function Task({ item, onOther, onLater }) {
  const fault = isFault(item);
  const title = taskTitle(item);
  const done = item.suggested && doneInWords(item.suggested);
  const done_aloud = done === t.round.done_short ? t.round.as_suggested : done;
  const swipe = useSwipe(item.suggested ? () => void logAsSuggested([item]) : null);
  const asks = asksForCount(item);
  const other = asks ? t.round.count : t.round.other;
  const changes = item.need === 'rest' && !item.suggested; // a rest is put right in the colony itself
  return html`
    <article class=${`task ${item.urgent ? 'urgent' : ''}`} ...${swipe}>
      <${Side} item=${item} />
      <${Head} item=${item} title=${title} />
      <div class="more">
        ${
          fault
            ? html`
                <div class="steps"><${Why} items=${item.reasons} open /></div>
              `
            : html`
                <${Why} items=${item.reasons} />
              `
        }
        <${Cautions} items=${item.cautions} />
      </div>
      <div class="actions">
        ${
          item.suggested &&
          html`
            <button
              type="button"
              class="button main"
              aria-label=${`${done_aloud}: ${nameOf(item.colony_id)}, ${title}`}
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
            <button type="button" class="button main" onClick=${() => resolve(item.key.split('fault:')[1] ?? '')}>
              ${t.round.resolved}
            </button>
          `
        }
        ${
          changes &&
          html`
            <a
              class="button main"
              aria-label=${`${t.round.change}: ${nameOf(item.colony_id)}, ${title}`}
              href=${`#/colony/${item.colony_id}`}
            >
              ${t.round.change}
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
              aria-label=${`${other}: ${title}`}
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
              aria-label=${`${t.round.later}: ${title}`}
              onClick=${() => onLater(item)}
            >
              ${t.round.later}
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
  const from = useRef(/** @type {null | {x: number, y: number}} */ (null));
  /** @param {any} event @param {number} px */
  const shift = (event, px) => {
    event.currentTarget.style.transform = px ? `translateX(${px}px)` : '';
  };
  /** @param {any} event */
  const moved = (event) => (from.current ? event.clientX - from.current.x : 0);
  if (!onSwipe) return {};
  return {
    onPointerDown: (/** @type {any} */ event) => {
      from.current = event.pointerType === 'touch' ? { x: event.clientX, y: event.clientY } : null;
    },
    onPointerMove: (/** @type {any} */ event) => {
      if (from.current) shift(event, moved(event) > SLIP_PX ? Math.min(moved(event), FAR_PX * 1.4) : 0);
    },
    onPointerUp: (/** @type {any} */ event) => {
      const far = moved(event) >= FAR_PX;
      from.current = null;
      shift(event, 0);
      if (far) onSwipe();
    },
    onPointerCancel: (/** @type {any} */ event) => {
      from.current = null;
      shift(event, 0);
    },
  };
}
