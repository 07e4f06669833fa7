// In words: what the one word table says of codes, reasons and cautions; days and times.
import { fill, sayCode, sayPortion } from '../care/words.js';
import { minute } from '../signals/clock.js';
import { catalogue, rowOf } from '../signals/rows.js';
import { eventText } from '../text/en/events.js';
import { inDegrees } from './degrees.js';
import { html } from './html.js';

/** @typedef {import('../kinds.d.ts').Reason} Reason */

/** The one word table's words for a code. @param {string} section @param {string} code */
export const wordFor = (section, code) => sayCode(catalogue.value?.words ?? {}, section, code);

/** A section's own word for a code; what the phone does not know says nothing.
 * @param {Record<string, string>} section @param {string | null | undefined} code
 */
export const wordOf = (section, code) => section[code ?? ''] ?? '';

/**
 * What a task asks for in words: its own, else those of its need.
 * @param {{what: string, need: string}} task
 */
export const todoInWords = ({ what, need }) =>
  wordFor('todo', what in (catalogue.value?.words?.todo ?? {}) ? what : need);

/** @param {import('../care/words.js').Portion} portion */
export const portionInWords = (portion) => sayPortion(catalogue.value?.words ?? {}, portion);

/** @param {string} text */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** @param {string} section @param {Reason} item */
export function inWords(section, item) {
  const template = catalogue.value?.words?.[section]?.[item.code];
  if (!template) return item.code.replaceAll('_', ' ');
  const args = { ...item.args };
  if (typeof args.at_ms === 'number') {
    const hours = Math.max(0, (minute.value - args.at_ms) / 3_600_000);
    args.hours = Math.round(hours);
    args.days ??= Math.round(hours / 24);
    if (item.code === 'glance') args.days = Math.round(hours / 24);
  }
  for (const [name, value] of Object.entries(args)) {
    if (typeof value === 'string' && /^\d{4}-\d\d-\d\d$/.test(value)) args[name] = weekDay(value);
  }
  for (const name of ['low', 'high', 'days']) {
    const value = args[name];
    if (typeof value === 'number') args[name] = Math.round(value * 10) / 10;
  }
  return inDegrees(fill(template, args));
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

/** What can hurt someone: the first sentence always, the rest behind it. @param {{items: Reason[]}} props */
export const Cautions = ({ items }) => html`
  ${items.map((item) => {
    const words = inWords('caution', item);
    const end = words.indexOf('. ') + 1;
    if (end === 0) {
      return html`
        <p class="caution">${words}</p>
      `;
    }
    return html`
      <details class="caution">
        <summary>${words.slice(0, end)}</summary>
        <p>${words.slice(end)}</p>
      </details>
    `;
  })}
`;

/** @param {{items: Reason[]}} props */
export const Notices = ({ items }) => html`
  ${items.map(
    (item) => html`
      <p class="caution calm">
        ${inWords(item.code in (catalogue.value?.words?.notice ?? {}) ? 'notice' : 'reason', item)}
      </p>
    `,
  )}
`;

/**
 * Days and times as this phone writes them. A formatter is kept, because making one takes longer than its use.
 * @param {Intl.DateTimeFormatOptions} options @returns {(when: number | string) => string} of ms,
 *   an ISO day or an ISO instant
 */
function writer(options) {
  /** @type {Intl.DateTimeFormat | undefined} */
  let format;
  let zone_min = 0; // of the formatter: the phone may travel while the app is open
  return (when) => {
    const date = new Date(typeof when === 'string' && when.length === 10 ? `${when}T12:00:00` : when);
    if (Number.isNaN(date.getTime())) return String(when);
    const here_min = new Date().getTimezoneOffset();
    if (!format || zone_min !== here_min) format = new Intl.DateTimeFormat([], options);
    zone_min = here_min;
    return format.format(date);
  };
}

export const timeOfDay = writer({ hour: '2-digit', minute: '2-digit' });
/** The day with its year. */
export const fullDay = writer({ dateStyle: 'medium' });
/** The day with its year, and the time. */
export const moment = writer({ dateStyle: 'medium', timeStyle: 'short' });
export const shortDay = writer({ day: 'numeric', month: 'short' });
/** A day near today, by its weekday. */
export const nearDay = writer({ weekday: 'short', day: 'numeric' });
/** The day and the time, without the year. */
export const dayAndTime = writer({
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
});
/** The day with its weekday. */
export const weekDay = writer({ weekday: 'short', day: 'numeric', month: 'short' });

/** The day by its whole name, in this year. */
export const namedDay = writer({ weekday: 'long', day: 'numeric', month: 'long' });
export const namedDayOfYear = writer({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' });

/** @param {string | undefined} colonyId */
export const nameOf = (colonyId) => rowOf(colonyId ?? '')?.set.name ?? eventText.colony;
