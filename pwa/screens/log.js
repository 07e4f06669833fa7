// The log sheet: what happened at one colony, with a form for each kind of log.
// Longer than 300 lines because every kind of log shares one form, its draft and its save.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice, ManyChoice } from '../components/choices.js';
import { eventInWords } from '../components/event-in-words.js';
import { ticked, typed } from '../components/forms.js';
import { html } from '../components/html.js';
import { lazy } from '../components/lazy.js';
import { Sheet } from '../components/sheet.js';
import { TubeInput } from '../components/tube-input.js';
import { levelAt } from '../care/gauges.js';
import { asksForCount } from '../care/round.js';
import { logAll } from '../signals/actions.js';
import { now } from '../signals/clock.js';
import { catalogue, events, gaugesOf, rows, rowsOf } from '../signals/rows.js';
import { session } from '../signals/session.js';
import { FeedingForm } from './log-feeding.js';
import { COARSE, FAULTS, OUTCOMES } from '../care/codes.js';
import { inWords, nameOf } from '../components/in-words.js';
import { choicesOf, labelled, say, sayIf, sayOf } from '../words/say.js';
import { listed, nearDay } from '../words/shown.js';

const CountNow = lazy(() => import('./pictures.js'), 'CountNow', 'counting');

const MOST_WORKERS = 1_000_000;
const MOST_QUEENS = 1_000;

/** @typedef {import('../kinds.d.ts').Need} Need */

/** With which log a need is answered; what there is to say of a rest is a note. @param {Need} [need] */
const kindOfNeed = (need) => (need === 'rest' ? 'note' : need && catalogue.value.needs[need]?.answered_by);

/** @typedef {import('../care/overlay.js').Change} Change */
/** @typedef {import('../care/round.js').Item} Item */
/** @typedef {import('./log-feeding.js').Save} Save */
/** @typedef {import('./log-feeding.js').FormProps} FormProps */

/** @typedef {Exclude<import('../kinds.d.ts').EventKind, 'climate' | 'photo' | 'later'>} Logged by hand, in a form */

/** @param {{colonyId: string, kind?: Logged, need?: Need, item?: Item, onClose: () => void}} props */
export function LogSheet({ colonyId, kind, need, item, onClose }) {
  const chosen = kind ?? (asksForCount(item) ? 'count' : kindOfNeed(need)) ?? 'feeding';
  const { attempt, said } = useAttempt();
  /** @type {Save} */
  const save = (what, set) =>
    attempt(async () => {
      await logAll([/** @type {Change} */ ({ kind: what, set: { colony_id: colonyId, ...set } })]);
      onClose();
    });
  const form = {
    feeding: FeedingForm,
    check: CheckForm,
    water: WaterForm,
    fault: FaultForm,
    count: CountForm,
    boost: BoostForm,
    move: MoveForm,
    note: NoteForm,
  }[chosen];
  return html`
    <${Sheet} title=${labelled(sayIf('event-kind', chosen), nameOf(colonyId))} onClose=${onClose}>
      ${said}
      <${form} colonyId=${colonyId} need=${need} item=${item} save=${save} />
    </${Sheet}>
  `;
}

const LAST_FEEDINGS = 4;

/** @param {FormProps} props */
function CheckForm({ colonyId, need, save }) {
  const feedings = (events.value.get(colonyId) ?? [])
    .filter((row) => row.kind === 'feeding')
    .slice(-LAST_FEEDINGS)
    .reverse();
  const [about, setAbout] = useState(feedings[0]?.id ?? '');
  const [seen, setSeen] = useState(/** @type {import('../kinds.d.ts').ColourSeen[] | null} */ (null));
  const fed = /** @type {Partial<import('../kinds.d.ts').Feeding>} */ (
    feedings.find((row) => row.id === about)?.set ?? {}
  );
  const tinted = rows.value.get(fed.lot_id ?? '')?.set.tint;
  const set = { ...(about ? { feeding_id: about } : {}), ...(tinted && seen ? { colour_seen: seen } : {}) };
  return html`
    ${
      need === 'barrier' &&
      html`
        <button type="button" class="button main wide" onClick=${() => save('check', { need: 'barrier' })}>
          ${say('log-barrier-good')}
        </button>
      `
    }
    ${
      feedings.length > 0 &&
      html`
        <${Choice}
          label=${say('log-which-feeding')}
          value=${about}
          onPick=${setAbout}
          options=${feedings.map((row) => [row.id, listed([eventInWords(row), nearDay(row.happened_ms ?? 0)])])}
        />
        ${
          tinted &&
          html`
            <${ManyChoice}
              label=${say('log-colour-seen')}
              values=${seen ?? []}
              onChange=${setSeen}
              options=${choicesOf('event-colour-seen', /** @type {const} */ (['gasters', 'brood']))}
            />
            <p class="soft">${say('log-colour-when')}</p>
            <button
              type="button"
              class="button wide"
              onClick=${() => save('check', { ...set, need: 'sugar', colour_seen: seen ?? [] })}
            >
              ${say('log-colour-only')}
            </button>
          `
        }
        ${
          fed.form === 'feeder' &&
          html`
            <div role="group" aria-label=${say('log-feeder-level')} class="choice">
              <span aria-hidden="true">${say('log-feeder-level')}</span>
              <div class="wrap even">
                ${LEVELS.map(
                  ([level]) => html`
                    <button
                      type="button"
                      class="button main"
                      onClick=${() => save('check', { ...set, need: 'sugar', level, ...outcomeAt(level) })}
                    >
                      ${sayOf('event-reading', level)}
                    </button>
                  `,
                )}
              </div>
            </div>
          `
        }
        ${
          fed.form !== 'feeder' &&
          html`
            <div role="group" aria-label=${say('log-what-became')} class="choice">
              <span aria-hidden="true">${say('log-what-became')}</span>
              <div class="wrap even">
                ${choicesOf('event-outcome', OUTCOMES).map(
                  ([code, words]) => html`
                    <button type="button" class="button main" onClick=${() => save('check', { ...set, outcome: code })}>
                      ${words}
                    </button>
                  `,
                )}
              </div>
            </div>
          `
        }
        <button
          type="button"
          class="button wide"
          onClick=${() => save('check', { ...set, need: 'leftovers', leftovers_removed: true })}
        >
          ${say('log-leftovers')}
        </button>
      `
    }
    <button type="button" class="button wide" onClick=${() => save('check', { need: 'glance' })}>
      ${say('log-calm')}
    </button>
  `;
}

/**
 * A feeder that is not empty yet was drunk from, however little; a full one says nothing.
 * @param {import('../kinds.d.ts').WaterReading} level
 */
const outcomeAt = (level) =>
  /** @type {{outcome?: import('../kinds.d.ts').Outcome}} */ (
    level === 'empty' ? { outcome: 'all' } : level === 'full' ? {} : { outcome: 'some' }
  );

/** @type {Array<[import('../kinds.d.ts').WaterReading, number]>} */
const LEVELS = [
  ['full', 1],
  ['three_quarters', 0.75],
  ['half', 0.5],
  ['quarter', 0.25],
  ['empty', 0],
];

/** @param {FormProps} props */
function WaterForm({ colonyId, save }) {
  const stand_in = session.value?.role === 'stand_in'; // who offers no nest
  const gauge = gaugesOf(colonyId).find((each) => each.need === 'water');
  const [share, setShare] = useState(gauge ? Math.round((levelAt(gauge, now.peek()) / gauge.capacity) * 4) / 4 : 0.5);
  const [mm, setMm] = useState('');
  const vessel = rows.value.get(rows.value.get(colonyId)?.set.vessel_id ?? '')?.set ?? {};
  const is_tube = (catalogue.value?.vessels?.[vessel.vessel_code ?? '']?.kind ?? 'tube') === 'tube';
  const reading = LEVELS.find(([, level]) => level === share)?.[0] ?? 'half';
  const words = sayOf('event-reading', reading);
  const level_mm = Number(mm.replace(',', '.'));
  const by_ruler = mm.trim() !== '';
  const bad = by_ruler && !(level_mm >= 0 && level_mm <= 1000);
  return html`
    <div class="drag">
      <${TubeInput}
        label=${say('log-level')}
        share=${share}
        step=${0.25}
        words=${words}
        onChange=${(/** @type {number} */ next) => {
          setShare(next);
          setMm('');
        }}
      />
      <div class="stack">
        <output>${by_ruler ? say('measure-mm', { mm }) : words}</output>
        <p class="soft">${say('log-drag')} ${say('log-bubble')}</p>
        <label>
          ${say('log-mm')}
          <input inputmode="decimal" value=${mm} onInput=${typed(setMm)} />
        </label>
      </div>
    </div>
    <button
      type="button"
      class="button main wide"
      disabled=${bad}
      onClick=${() => save('water', by_ruler ? { action: 'read', level_mm } : { action: 'read', reading })}
    >
      ${say('log-read')}
    </button>
    <div class="wrap even">
      ${
        !(is_tube && stand_in) &&
        html`
          <button type="button" class="button" onClick=${() => save('water', { action: 'refill' })}>
            ${say('log-filled')}
          </button>
        `
      }
      ${
        is_tube && stand_in
          ? null
          : is_tube
            ? html`
                <button type="button" class="button" onClick=${() => save('move', { how: 'offered' })}>
                  ${say('log-new-tube')}
                </button>
                <button
                  type="button"
                  class="button"
                  onClick=${() => save('move', { how: 'finished', fresh_reservoir: true })}
                >
                  ${say('log-moved')}
                </button>
              `
            : html`
                <button type="button" class="button" onClick=${() => save('water', { action: 'hydrate' })}>
                  ${say('log-hydrate')}
                </button>
              `
      }
    </div>
  `;
}

/** What is wrong, with its first steps. @param {FormProps} props */
function FaultForm({ save }) {
  const stand_in = session.value?.role === 'stand_in'; // first steps are the keeper's
  const [fault, setFault] = useState(/** @type {import('../kinds.d.ts').FieldsOf['fault']['fault']} */ ('leak'));
  const [near, setNear] = useState(false);
  const mould = fault === 'mould' ? { mould_near_brood: near } : {};
  return html`
    <${Choice} label=${say('log-wrong')} value=${fault} onPick=${setFault} options=${choicesOf('fault', FAULTS)} />
    <p class="caution">${inWords('reason', { code: stand_in ? 'helper_call' : fault, args: {} })}</p>
    ${
      fault === 'mould' &&
      html`
        <${Choice}
          label=${say('log-mould-where')}
          value=${near ? 'near' : 'far'}
          onPick=${(/** @type {string} */ where) => setNear(where === 'near')}
          options=${choicesOf('log-mould', ['far', 'near'])}
        />
      `
    }
    <button type="button" class="button main warn wide" onClick=${() => save('fault', { fault, ...mould })}>
      ${say('log-report')}
    </button>
  `;
}

/** @param {FormProps} props */
function CountForm({ colonyId, save }) {
  const [workers, setWorkers] = useState('');
  const [brood, setBrood] = useState(/** @type {Record<string, import('../kinds.d.ts').Coarse>} */ ({}));
  const [more, setMore] = useState(false);
  const [males, setMales] = useState(false);
  const [queens, setQueens] = useState('');
  const exact = Number(workers);
  const whole = (/** @type {string} */ text, /** @type {number} */ most) =>
    text === '' || (Number.isInteger(Number(text)) && Number(text) >= 0 && Number(text) <= most);
  const nothing = workers === '' && queens === '' && !males && !Object.keys(brood).length;
  const bad = nothing || !whole(workers, MOST_WORKERS) || !whole(queens, MOST_QUEENS);
  const of = (/** @type {'larvae' | 'eggs' | 'pupae'} */ name) => html`
    <${Choice}
      label=${sayOf('event-stage', name)}
      value=${brood[name] ?? ''}
      onPick=${(/** @type {import('../kinds.d.ts').Coarse} */ code) => setBrood({ ...brood, [name]: code })}
      options=${choicesOf('event-coarse', COARSE)}
    />
  `;
  return html`
    <label>
      ${say('log-workers')}${' '}
      <small>${say('log-guess')}</small>
      <input inputmode="numeric" value=${workers} onInput=${typed(setWorkers)} />
    </label>
    <${CountNow} colonyId=${colonyId} />
    ${of('larvae')}${
      more
        ? html`
            ${of('eggs')}${of('pupae')}
            <label>
              ${say('log-queens')}${' '}
              <small>${say('log-queens-hint')}</small>
              <input inputmode="numeric" value=${queens} onInput=${typed(setQueens)} />
            </label>
            <label class="chip">
              <input type="checkbox" checked=${males} onChange=${ticked(setMales)} />
              ${' '}${say('log-males-only')}
            </label>
          `
        : html`
            <button type="button" class="button" onClick=${() => setMore(true)}>${say('log-more-brood')}</button>
          `
    }
    <button
      type="button"
      class="button main wide"
      disabled=${bad}
      onClick=${() =>
        save('count', {
          ...brood,
          ...(males ? { males_only: true } : {}),
          ...(workers === '' ? {} : { workers: exact }),
          ...(queens === '' ? {} : { queens: Number(queens) }),
        })}
    >
      ${say('log-count')}
    </button>
  `;
}

/**
 * Brood from another colony: of the same species, or of a host where the queen is parasitic.
 * @param {FormProps} props
 */
function BoostForm({ colonyId, save }) {
  const mine = rows.value.get(colonyId)?.set ?? {};
  const founds = mine.founding_mode ?? catalogue.value?.species?.[mine.species_code ?? '']?.founding;
  const same = (/** @type {import('../kinds.d.ts').Colony} */ other) =>
    founds === 'parasitic' ||
    (other.species_code ? other.species_code === mine.species_code : other.species_name === mine.species_name);
  const donors = rowsOf('colony').filter((row) => row.id !== colonyId && same(row.set));
  const [donor, setDonor] = useState('');
  const [brood, setBrood] = useState(/** @type {import('../kinds.d.ts').Brood} */ ('pupae'));
  const [number, setNumber] = useState('');
  const n = Number(number);
  const bad = number !== '' && !(Number.isInteger(n) && n >= 1 && n <= 10_000);
  return html`
    <p class="caution calm">${say('log-boost-words')}</p>
    <${Choice}
      label=${say('log-donor')}
      value=${donor}
      onPick=${setDonor}
      options=${[
        ...donors.map(/** @returns {[string, string]} */ (row) => [row.id, row.set.name]),
        ['', say('log-from-elsewhere')],
      ]}
    />
    <${Choice}
      label=${say('log-which-brood')}
      value=${brood}
      onPick=${setBrood}
      options=${choicesOf('log', /** @type {const} */ (['pupae', 'larvae', 'eggs']))}
    />
    <label>
      ${say('log-how-many')}${' '}
      <small>${say('colony-form-optional')}</small>
      <input inputmode="numeric" value=${number} onInput=${typed(setNumber)} />
    </label>
    <button
      type="button"
      class="button main wide"
      disabled=${bad}
      onClick=${() =>
        save('boost', {
          brood,
          ...(donor ? { donor_colony_id: donor } : {}),
          ...(number === '' ? {} : { number: n }),
        })}
    >
      ${say('log-boost')}
    </button>
  `;
}

/** @param {FormProps} props */
const MoveForm = ({ save }) => html`
  <p class="soft">${say('log-move-words')}</p>
  <div class="wrap even">
    <button type="button" class="button" onClick=${() => save('move', { how: 'offered' })}>
      ${say('log-offered')}
    </button>
    <button type="button" class="button main" onClick=${() => save('move', { how: 'finished', fresh_reservoir: true })}>
      ${say('log-moved')}
    </button>
  </div>
`;

/** @param {FormProps} props */
function NoteForm({ save }) {
  const [text, setText] = useState('');
  return html`
    <label>
      ${say('log-note')}
      <textarea value=${text} maxlength="4000" onInput=${typed(setText)}></textarea>
    </label>
    <button
      type="button"
      class="button main wide"
      disabled=${!text.trim()}
      onClick=${() => save('note', { text: text.trim() })}
    >
      ${say('log-keep-note')}
    </button>
  `;
}
