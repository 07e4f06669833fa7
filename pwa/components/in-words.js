// In words: tasks, servings, reasons and cautions.
import { minute } from '../signals/clock.js';
import { rowOf } from '../signals/rows.js';
import { html } from './html.js';
import { HOUR_MS } from '../care/rules.js';
import { isSaid, say, sayIf, sayOf } from '../words/say.js';

/** @typedef {import('../kinds.d.ts').Reason} Reason */

/**
 * What a task asks for in words: its own, else those of its need.
 * @param {{what: string, need: string}} task
 */
export const todoInWords = ({ what, need }) => sayOf('todo', isSaid('todo', what) ? what : need);

/** @param {'reason' | 'caution' | 'notice' | 'travel'} section @param {Reason} item */
export function inWords(section, item) {
  const args = { ...item.args };
  if (typeof args.at_ms === 'number') {
    const hours = Math.max(0, (minute.value - args.at_ms) / HOUR_MS);
    args.hours = Math.round(hours);
    args.days ??= Math.round(hours / 24);
    if (item.code === 'glance') args.days = Math.round(hours / 24);
  }
  for (const name of ['low', 'high', 'days']) {
    const value = args[name];
    if (typeof value === 'number') args[name] = Math.round(value * 10) / 10;
  }
  return sayOf(section, item.code, args);
}

/** The first reason at once, the others behind it. @param {{items: Reason[], open?: boolean}} props */
export function Why({ items, open = false }) {
  const [first, ...others] = items.map((item) => inWords('reason', item));
  if (!first) return null;
  if (open || !others.length) {
    return html`
      <div class="why">
        <p>${first}</p>
        ${others.map(
          (words) => html`
            <p>${words}</p>
          `,
        )}
      </div>
    `;
  }
  return html`
    <details class="why">
      <summary>${first}</summary>
      <div>
        ${others.map(
          (words) => html`
            <p>${words}</p>
          `,
        )}
      </div>
    </details>
  `;
}

/** All reasons, one below the other. @param {{items: Reason[]}} props */
export const Reasons = ({ items }) => html`
  <${Why} items=${items} open />
`;

/** What can hurt someone: its beginning always, the rest behind it. @param {{items: Reason[]}} props */
export const Cautions = ({ items }) => html`
  ${items.map((item) => {
    const words = inWords('caution', item);
    const more = sayIf('caution', item.code, 'more');
    if (!more) {
      return html`
        <p class="caution">${words}</p>
      `;
    }
    return html`
      <details class="caution">
        <summary>${words}</summary>
        <p>${more}</p>
      </details>
    `;
  })}
`;

/** The notices that say what the card of the brood says with its dates. */
export const OF_BROOD = ['first_workers_in', 'next_workers_in', 'founding_stalled'];

/** @param {{items: Reason[]}} props */
export const Notices = ({ items }) => html`
  ${items.map(
    (item) => html`
      <p class="caution calm">${inWords(isSaid('notice', item.code) ? 'notice' : 'reason', item)}</p>
    `,
  )}
`;

/** @param {string | undefined} colonyId */
export const nameOf = (colonyId) => rowOf(colonyId ?? '')?.set.name ?? say('event-colony');
