// Reasons, cautions and first steps in words, from the one word table.
import { fill } from '../care/words.js';
import { catalogue, now } from '../signals/shelf.js';
import { html } from './html.js';

/** @param {string} section @param {{code: string, args: Record<string, any>}} item */
export function inWords(section, item) {
  const template = catalogue.value?.words?.[section]?.[item.code];
  if (!template) return item.code.replaceAll('_', ' ');
  const args = { ...item.args };
  if (typeof args.at_ms === 'number') {
    const hours = Math.max(0, (now.value - args.at_ms) / 3_600_000);
    args.hours = Math.round(hours);
    args.days ??= Math.round(hours / 24);
    if (item.code === 'glance') args.days = Math.round(hours / 24);
  }
  for (const name of ['low', 'high', 'days']) if (typeof args[name] === 'number') args[name] = Math.round(args[name] * 10) / 10;
  return fill(template, args);
}

/** @param {{items: any[]}} props */
export const Reasons = ({ items }) => html`<div class="why">${items.map((item) => html`<p>${inWords('reason', item)}</p>`)}</div>`;

/** @param {{items: any[]}} props */
export const Cautions = ({ items }) => html`${items.map((item) => html`<p class="caution">${inWords('caution', item)}</p>`)}`;

/** @param {{items: any[]}} props */
export const Notices = ({ items }) => html`${items.map((item) => html`<p class="caution calm">${inWords('notice', item)}</p>`)}`;
