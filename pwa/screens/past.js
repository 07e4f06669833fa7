// A record's history: who changed what when, what stood there before, what lost; each value can be brought back.
import { useEffect, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { moment } from '../components/days.js';
import { html } from '../components/html.js';
import { say } from '../signals/actions.js';
import { bringBack, revisionsOf } from '../signals/past.js';
import { rows } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { fieldName, valueInWords } from './field-words.js';

/** @typedef {import('../care/overlay.js').ShownRow} ShownRow */
/** @typedef {import('../signals/past.js').Revision} Revision */
/** @typedef {{rev: number, field: string, value: unknown}} Offer a value to bring back, shown at a revision */

/** Fields that tell a person nothing. */
const UNTOLD = ['colony_id', 'sha256', 'width_px', 'height_px', 'task_key', 'suggested', 'gone'];

/** @param {unknown} one @param {unknown} other */
const same = (one, other) => JSON.stringify(one ?? null) === JSON.stringify(other ?? null);

/** Fields in the order of their names, so that an amount and its unit stay together. @param {Record<string, any>} set */
const told = (set) => [...Object.keys(m.fields), ...Object.keys(set).filter((field) => !(field in m.fields))].filter((field) => field in set && !UNTOLD.includes(field));

/** @param {{row: ShownRow}} props */
export function Past({ row }) {
  const [revisions, setRevisions] = useState(/** @type {Revision[]} */ ([]));
  const { attempt, busy, said } = useAttempt();
  const load = () => attempt(async () => setRevisions(await revisionsOf(row.id)));
  useEffect(() => { if (row.rev) void load(); }, [row.id, row.rev]); // a value that was brought back is a revision, too
  if (!row.rev) return html`<p>${m.past.unsent}</p>`;
  const offers = offersOf(revisions, row.set);
  return html`${said}${said && html`<button type="button" class="button" onClick=${load}>${m.past.again}</button>`}
    <ol class="diary" aria-busy=${busy && !revisions.length ? 'true' : null}>${revisions.map((each, i) => html`<${Line} key=${each.rev} row=${row} revision=${each} first=${i === revisions.length - 1} offers=${offers.filter((offer) => offer.rev === each.rev)} />`)}</ol>`;
}

/** @param {{row: ShownRow, revision: Revision, first: boolean, offers: Offer[]}} props */
function Line({ row, revision, first, offers }) {
  const { asked, before, lost } = revision;
  const done = asked.gone === true ? m.past.out : asked.gone === false ? m.past.back : first ? m.past.made : m.past.changed;
  /** @param {Offer} offer */
  async function bring({ field, value }) {
    await bringBack(row, field, value);
    say(m.past.brought);
  }
  return html`<li class="stack"><p class="eyebrow"><strong>${rows.value.get(revision.by ?? '')?.set.name ?? m.past.somebody} ${done}</strong>${moment(revision.at_ms)}</p>
    ${told(asked).map((field) => html`${(first || field in before) && html`<p>${fieldName(field)}: <strong>${valueInWords(field, asked[field])}</strong>${!first && html` <span class="soft">${m.past.was(valueInWords(field, before[field]))}</span>`}</p>`}
      ${field in lost && html`<p class="caution">${fieldName(field)}: ${m.past.not_stood(valueInWords(field, lost[field]))}</p>`}
      ${offers.filter((offer) => offer.field === field).map((offer) => html`<button type="button" class="button start" onClick=${() => bring(offer)}>${offer.value === null ? m.past.clear : m.past.bring(valueInWords(field, offer.value))}</button>`)}`)}</li>`;
}

/** Values that stood before or that lost, and do not stand now: each once, where it was seen last. @param {Revision[]} revisions newest first @param {Record<string, any>} set as it is now @returns {Offer[]} */
function offersOf(revisions, set) {
  /** @type {Map<string, Offer>} */
  const found = new Map();
  revisions.forEach(({ rev, asked, before, lost }, i) => {
    for (const field of told(asked)) {
      const earlier = i < revisions.length - 1 && field in before ? [before[field]] : []; // before the first there was nothing
      for (const value of field in lost ? [...earlier, lost[field]] : earlier) {
        const key = `${field} ${JSON.stringify(value ?? null)}`;
        if (!found.has(key) && !same(value, set[field])) found.set(key, { rev, field, value: value ?? null });
      }
    }
  });
  return [...found.values()];
}
