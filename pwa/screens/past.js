// A record's history: who changed what when, what stood there before, what lost; each value can be brought back.
import { useEffect, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { html } from '../components/html.js';
import { say } from '../signals/actions.js';
import { bringBack, revisionsOf } from '../signals/past.js';
import { rows } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { fieldName, valueInWords } from './field-words.js';

/** Fields that tell a person nothing. */
const UNTOLD = ['colony_id', 'sha256', 'width_px', 'height_px', 'task_key', 'suggested', 'gone'];

/** @param {unknown} one @param {unknown} other */
const same = (one, other) => JSON.stringify(one ?? null) === JSON.stringify(other ?? null);

/** @param {{row: import('../care/overlay.js').ShownRow}} props */
export function Past({ row }) {
  const [revisions, setRevisions] = useState(/** @type {import('../signals/past.js').Revision[]} */ ([]));
  const { attempt, busy, said } = useAttempt();
  const load = () => attempt(async () => setRevisions(await revisionsOf(row.id)));
  useEffect(() => { if (row.rev) void load(); }, [row.id, row.rev]); // a value that was brought back is a revision, too
  if (!row.rev) return html`<p>${m.past.unsent}</p>`;
  return html`${said}${said && html`<button type="button" class="button" onClick=${load}>${m.past.again}</button>`}
    <ol class="diary" aria-busy=${busy && !revisions.length ? 'true' : null}>${revisions.map((each, i) => html`<${Line} key=${each.rev} row=${row} revision=${each} first=${i === revisions.length - 1} />`)}</ol>`;
}

/** @param {{row: import('../care/overlay.js').ShownRow, revision: import('../signals/past.js').Revision, first: boolean}} props */
function Line({ row, revision, first }) {
  const { asked, before, lost } = revision;
  const done = asked.gone === true ? m.past.out : asked.gone === false ? m.past.back : first ? m.past.made : m.past.changed;
  return html`<li class="stack"><p class="eyebrow"><strong>${rows.value.get(revision.by ?? '')?.set.name ?? m.past.somebody} ${done}</strong>${new Date(revision.at_ms).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' })}</p>
    ${Object.keys(asked).filter((field) => !UNTOLD.includes(field)).map((field) => html`<div class="stack">
      <p>${fieldName(field)}: ${field in before || first ? html`<strong>${valueInWords(field, asked[field])}</strong>${!first && html` <span class="soft">${m.past.was} ${valueInWords(field, before[field])}</span>`}` : ''}</p>
      ${field in lost && html`<p class="caution">${m.past.not_stood(valueInWords(field, lost[field]))}</p>`}
      ${[...new Map(earlier(field, revision, first).map((value) => [JSON.stringify(value), value])).values()].filter((value) => !same(value, row.set[field]))
        .map((value) => html`<button type="button" class="button start" onClick=${() => bring(field, value)}>${m.past.bring(valueInWords(field, value))}</button>`)}</div>`)}</li>`;
  /** @param {string} field @param {unknown} value */
  async function bring(field, value) {
    await bringBack(row, field, value);
    say(m.past.brought);
  }
}

/** What a field was before this revision, and what lost in it. @param {string} field @param {import('../signals/past.js').Revision} revision @param {boolean} first @returns {unknown[]} */
function earlier(field, { before, lost }, first) {
  return [...(!first && field in before ? [before[field] ?? null] : []), ...(field in lost ? [lost[field]] : [])];
}
