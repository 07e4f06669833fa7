// What was. A record's history: who changed what when, what stood there before, what lost; each value can be brought
// back. And what went: records that were deleted or voided, newest first, each with its way back.
// Longer than 300 lines because both are told in the same words.
import { useEffect, useState } from 'preact/hooks';
import { useAnswer } from '../components/answer.js';
import { useAttempt } from '../components/attempt.js';
import { eventInWords } from '../components/event-in-words.js';
import { html, Icon } from '../components/html.js';
import { Empty, Skeleton } from '../components/states.js';
import { same } from '../care/changes.js';
import { keep, tell } from '../signals/actions.js';
import { get } from '../signals/people.js';
import { rows } from '../signals/rows.js';
import { openStore } from '../signals/session.js';
import { syncNow } from '../signals/sync.js';
import { fieldName, isUntold, kindName, nameInWords, valueInWords } from './field-words.js';
import { labelled, say } from '../words/say.js';
import { capital, fullDay, moment } from '../words/shown.js';

/** @param {string | null | undefined} id @returns {string} who did it, by name */
const writerOf = (id) => rows.value.get(id ?? '')?.set.name ?? say('history-somebody');

/** @typedef {import('../care/overlay.js').ShownRow} ShownRow */
/** @typedef {import('../answers.d.ts').Revision} Revision */
/** @typedef {import('../answers.d.ts').Gone} Gone */
/** @typedef {import('../answers.d.ts').Problem} Problem */
/** @typedef {{rev: number, field: string, value: unknown}} Offer a value to bring back, shown at a revision */

/** The order in which fields are told: what belongs together stands together. */
const FIELDS = [
  'resting_since',
  'condition_until',
  'came_from',
  'went_to',
  'died_of',
  'host_species_code',
  'name',
  'stage',
  'condition',
  'number',
  'species_code',
  'species_name',
  'queens',
  'gone',
  'worker_length_mm',
  'guild',
  'founding_mode',
  'stings',
  'vessel_id',
  'place_id',
  'interval_days',
  'amount',
  'unit',
  'text',
  'zone',
  'care_hours',
  'remark',
  'happened_at',
  'need',
  'food_code',
  'lot_id',
  'origin',
  'size_class',
  'feeding_id',
  'outcome',
  'leftovers_removed',
  'level',
  'colour_seen',
  'tint',
  'action',
  'reading',
  'level_mm',
  'workers',
  'workers_coarse',
  'fault',
  'resolved_at',
  'colony_ids',
  'food_codes',
  'started_on',
  'ended_on',
  'use_by',
  'got_on',
  'tasting_id',
  'despite',
  'until',
  'why',
  'day_temp_c',
  'night_temp_c',
  'temperature_c',
  'humidity_pct',
  'place_type',
  'vessel_code',
  'has_outworld',
  'founded_on',
  'acquired_on',
  'finished_on',
  'starts_on',
  'ends_on',
];
/** What is told in other words: whose past it is, and that it went. */
const TOLD_ELSEWHERE = ['colony_id', 'gone'];

/**
 * Fields in the order of their names, so that an amount and its unit stay together.
 * @param {object} set
 */
const told = (set) =>
  [...FIELDS, ...Object.keys(set).filter((field) => !FIELDS.includes(field))].filter(
    (field) => field in set && !isUntold(field) && !TOLD_ELSEWHERE.includes(field),
  );

/** Only the server keeps the past. @param {Problem} problem */
const inWords = ({ code, message }) => (code === 'offline' ? say('history-offline') : message);

/** What was deleted last and can be taken back, newest first. @returns {Promise<Gone[]>} */
async function whatWent() {
  const { gone } = await get('/api/records/gone').catch((problem) => {
    throw new Error(inWords(problem));
  });
  return gone;
}

/**
 * Let a field have an earlier value again.
 * @param {ShownRow} row
 * @param {string} field
 * @param {unknown} value
 */
const bringBack = (row, field, value) => keep(row.kind, { [field]: value }, row.id);

/** Take a deletion back; it is seen again once it has synced. @param {Gone} gone */
async function takeBack(gone) {
  const back = /** @type {import('../care/overlay.js').Change} */ ({ kind: gone.kind, set: { gone: false } });
  await openStore().enqueue([{ ...back, id: gone.id, rev: gone.rev }]);
  await syncNow();
}

/** @param {{row: ShownRow}} props */
export const Past = ({ row }) =>
  row.rev
    ? html`
        <${Revisions} row=${row} key=${row.id} />
      `
    : html`
        <p>${say('history-unsent')}</p>
      `;

/** @param {{row: ShownRow}} props */
function Revisions({ row }) {
  // a value that was brought back is a revision, too
  const { answer, problem, ask: load } = useAnswer(`/api/records/${row.id}/history`, row.rev);
  const revisions = answer?.revisions ?? [];
  const offers = offersOf(revisions, /** @type {Record<string, unknown>} */ (row.set));
  return html`
    ${
      problem &&
      html`
        <p role="alert" class="caution">${inWords(problem)}</p>
        <button type="button" class="button" onClick=${load}>${say('history-again')}</button>
      `
    }
    <ol class="diary" aria-busy=${answer || problem ? null : 'true'}>
      ${revisions.map(
        (each, i) => html`
          <${Line}
            key=${each.rev}
            row=${row}
            revision=${each}
            first=${i === revisions.length - 1}
            offers=${offers.filter((offer) => offer.rev === each.rev)}
          />
        `,
      )}
    </ol>
  `;
}

/** @param {Offer} offer */
const offerInWords = ({ field, value }) =>
  value === null ? say('history-clear') : say('history-bring', { value: valueInWords(field, value) });

/** @param {{row: ShownRow, revision: Revision, first: boolean, offers: Offer[]}} props */
function Line({ row, revision, first, offers }) {
  const { asked, before, lost } = revision;
  const who = writerOf(revision.by);
  const done =
    asked.gone === true
      ? say('history-out', { who })
      : asked.gone === false
        ? say('history-back', { who })
        : first
          ? say('history-made', { who })
          : say('history-changed', { who });
  /** @param {Offer} offer */
  async function bring({ field, value }) {
    await bringBack(row, field, value);
    tell(say('history-brought'));
  }
  return html`
    <li class="stack">
      <p class="eyebrow">
        <strong>${done}</strong>
        ${moment(revision.at_ms)}
      </p>
      ${told(asked).map(
        (field) => html`
          ${
            (first || field in before) &&
            html`
              <p>
                ${fieldName(field)}${': '}
                <strong>${valueInWords(field, asked[field])}</strong>
                ${
                  !first &&
                  html`
                    ${' '}
                    <span class="soft">${say('history-was', { value: valueInWords(field, before[field]) })}</span>
                  `
                }
              </p>
            `
          }
          ${
            field in lost &&
            html`
              <p class="caution">
                ${say('history-not-stood', { field: fieldName(field), value: valueInWords(field, lost[field]) })}
              </p>
            `
          }
          ${offers
            .filter((offer) => offer.field === field)
            .map(
              (offer) => html`
                <button type="button" class="button start" onClick=${() => bring(offer)}>${offerInWords(offer)}</button>
              `,
            )}
        `,
      )}
    </li>
  `;
}

/**
 * Values that stood before or that lost, and do not stand now: each once, where it was seen last.
 * @param {Revision[]} revisions newest first
 * @param {Record<string, unknown>} set as it is now
 * @returns {Offer[]}
 */
function offersOf(revisions, set) {
  /** @type {Map<string, Offer>} */
  const found = new Map();
  revisions.forEach(({ rev, asked, before, lost }, i) => {
    for (const field of told(asked)) {
      // before the first there was nothing
      const earlier = i < revisions.length - 1 && field in before ? [before[field]] : [];
      for (const value of field in lost ? [...earlier, lost[field]] : earlier) {
        const key = `${field} ${JSON.stringify(value ?? null)}`;
        if (!found.has(key) && !same(value, set[field])) found.set(key, { rev, field, value: value ?? null });
      }
    }
  });
  return [...found.values()];
}

export function GoneScreen() {
  const [list, setList] = useState(/** @type {Gone[] | null} */ (null));
  const { attempt, busy, said } = useAttempt();
  const load = () => attempt(async () => setList(await whatWent()));
  useEffect(() => {
    void load();
  }, []);
  /** @param {Gone} each */
  const back = (each) =>
    attempt(async () => {
      await takeBack(each);
      tell(say('history-gone-back', { what: titleOf(each) }));
      setList((list ?? []).filter((other) => other.id !== each.id));
    });
  return html`
    <h1>${say('history-gone-title')}</h1>
    <p class="soft">${say('history-gone-about')}</p>
    ${said}
    ${
      said &&
      !list &&
      html`
        <button type="button" class="button" onClick=${load}>${say('history-again')}</button>
      `
    }
    ${
      !list &&
      busy &&
      html`
        <${Skeleton} words=${say('frame-loading')} />
      `
    }${
      list?.length === 0 &&
      html`
        <${Empty} title=${say('history-gone-none')} />
      `
    }
    <ul class="diary">
      ${list?.map(
        (each) => html`
          <li key=${each.id} class="row" style=${{ flexWrap: 'wrap' }}>
            <span class="badge">
              <${Icon} name=${(each.kind === 'feeding' && each.set.need) || each.kind} />
            </span>
            <div class="grow" style=${{ flexBasis: '60%' }}>
              <p>${titleOf(each)}</p>
              <p class="soft">${whereOf(each)}</p>
              <p class="soft">${say('history-gone-by', { who: writerOf(each.by), when: moment(each.at_ms) })}</p>
            </div>
            <button
              type="button"
              class="button"
              style=${{ marginInlineStart: 'auto' }}
              disabled=${busy}
              aria-label=${labelled(say('history-gone-take-back'), titleOf(each))}
              onClick=${() => back(each)}
            >
              ${say('history-gone-take-back')}
            </button>
          </li>
        `,
      )}
    </ul>
  `;
}

/** @param {Gone} each */
const isEvent = (each) => typeof each.set.happened_at === 'string';

/** @param {Gone} each */
const titleOf = (each) => (isEvent(each) ? capital(eventInWords(each)) : nameInWords(each));

/** Which colony a log was of and when, or what kind of thing it is. @param {Gone} each */
function whereOf(each) {
  if (!isEvent(each)) return kindName(each.kind);
  const name = rows.value.get(each.set.colony_id ?? each.set.place_id ?? '')?.set.name;
  return [name, fullDay(each.set.happened_at ?? '')].filter(Boolean).join(', ');
}
