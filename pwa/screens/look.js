// How it looks: every token and part on one page, in the light that is chosen.
import { useState } from 'preact/hooks';
import { Choice, ManyChoice } from '../components/choices.js';
import { html, Icon } from '../components/html.js';
import { LookChoice } from '../components/preferences.js';
import { Sheet } from '../components/sheet.js';
import { Empty, SaveState, Skeleton } from '../components/states.js';
import { Stepper } from '../components/stepper.js';
import { TubeInput } from '../components/tube-input.js';
import { LyingTube, needClass, TubeDrawing } from '../components/tube.js';
import { tell } from '../signals/actions.js';
import { READINGS } from '../care/codes.js';
import { choicesOf, labelled, say, sayOf } from '../words/say.js';

const COLOURS = [
  'paper',
  'card',
  'sunk',
  'ink',
  'ink-soft',
  'line',
  'walnut',
  'on-walnut',
  'act',
  'on-act',
  'warn',
  'on-warn',
  'good',
  'sugar',
  'protein',
  'water',
  'seeds',
  'leaves',
  'other',
];
/** Here and not in the style sheet, which every phone downloads. */
const GRID = { display: 'grid', gridTemplateColumns: 'repeat(auto-fill, minmax(min(100%, 6rem), 1fr))', gap: '8px' };
const FRAMED = { border: '1px solid var(--line)', borderRadius: 'var(--round-small)', fontSize: 'var(--step-00)' };
/** @param {string} name of a colour */
const swatch = (name) => ({
  ...FRAMED,
  overflow: 'hidden',
  padding: '3.2rem 0.5rem 0.4rem',
  background: `linear-gradient(var(--${name}) 3rem, var(--card) 3rem)`,
});
const PLAIN = { ...FRAMED, padding: '0.6rem 0.5rem', display: 'grid', justifyItems: 'center', gap: '0.3rem' };
const STEPS = ['step-4', 'step-3', 'step-2', 'step-1', 'step-0'];
const NEEDS = /** @type {Array<[string, number]>} */ ([
  ['sugar', 0.85],
  ['protein', 0.5],
  ['water', 0.3],
  ['seeds', 0.65],
  ['leaves', 0.4],
  ['barrier', 0.1],
]);
const ICONS = [
  'round',
  'shelf',
  'larder',
  'handover',
  'settings',
  'sugar',
  'protein',
  'water',
  'seeds',
  'leaves',
  'leftovers',
  'check',
  'barrier',
  'room',
  'move',
  'rest',
  'fault',
  'count',
  'note',
  'later',
  'many',
  'scan',
  'print',
  'share',
  'done',
  'add',
  'less',
  'close',
];

export function LookScreen() {
  const [amount, setAmount] = useState(2);
  const [one, setOne] = useState('half');
  const [some, setSome] = useState(['a']);
  const [share, setShare] = useState(0.5);
  const [open, setOpen] = useState(false);
  return html`
    <h1>${say('look-title')}</h1>
    <p class="soft">${say('look-about')}</p>
    <${LookChoice} />
    <section class="card">
      <h2>${say('look-gauge')}</h2>
      <div class="tube-set">
        ${NEEDS.map(
          ([need, level]) => html`
            <figure>
              <svg
                class=${`tube ${needClass(need)} ${level < 0.2 ? 'low' : ''}`}
                viewBox="0 0 48 124"
                role="img"
                aria-label=${labelled(sayOf('need', need), say('part-percent', { percent: Math.round(level * 100) }))}
              >
                <${TubeDrawing} need=${need} share=${level} due=${0.2} />
              </svg>
              <figcaption aria-hidden="true">${sayOf('need', need)}</figcaption>
            </figure>
          `,
        )}
      </div>
      <${LyingTube} part=${3} whole=${7} words=${say('round-progress', { part: 3, whole: 7 })} />
      <div class="drag">
        <${TubeInput}
          label=${say('log-level')}
          share=${share}
          step=${0.25}
          words=${`${share * 100} %`}
          onChange=${setShare}
        />
        <output>${share * 100} %</output>
      </div>
    </section>
    <section class="card">
      <h2>${say('look-colour')}</h2>
      <ul style=${GRID}>
        ${COLOURS.map(
          (name) => html`
            <li style=${swatch(name)}>${name}</li>
          `,
        )}
      </ul>
    </section>
    <section class="card">
      <h2>${say('look-type')}</h2>
      ${STEPS.map(
        (step) => html`
          <p style=${{ fontSize: `var(--${step})`, fontFamily: step > 'step-1' ? 'var(--serif)' : 'inherit' }}>
            ${step}: ${say('frame-name')}
          </p>
        `,
      )}
    </section>
    <section class="card">
      <h2>${say('look-buttons')}</h2>
      <div class="wrap">
        <button type="button" class="button main">
          <${Icon} name="done" />
          ${say('round-done-short')}
        </button>
        <button type="button" class="button">${say('round-other')}</button>
        <button type="button" class="button warn">${say('event-kind-fault')}</button>
        <button type="button" class="button quiet">${say('round-undo')}</button>
        <button type="button" class="button" disabled>${say('round-later')}</button>
      </div>
    </section>
    <section class="card">
      <h2>${say('look-chips')}</h2>
      <${Choice}
        label=${say('log-level')}
        value=${one}
        onPick=${setOne}
        options=${choicesOf('event-reading', READINGS)}
      />
      <${ManyChoice}
        label=${say('several-who')}
        values=${some}
        onChange=${setSome}
        options=${[
          ['a', 'Amber'],
          ['b', 'Birch'],
          ['c', 'Cedar'],
        ]}
      />
    </section>
    <section class="card">
      <h2>${say('look-stepper')}</h2>
      <${Stepper}
        label=${say('log-amount')}
        value=${amount}
        step=${1}
        most=${60}
        unit=${say('measure-unit-drop', { count: amount })}
        onChange=${setAmount}
      />
    </section>
    <section class="card">
      <h2>${say('look-states')}</h2>
      <p class="wrap">
        <${SaveState} state="saved" />
        <${SaveState} state="synced" />
        <${SaveState} state="attention" />
      </p>
      <p class="caution">${sayOf('caution', 'blade')}</p>
      <p class="caution calm">${sayOf('notice', 'settling')}</p>
    </section>
    <section class="card">
      <h2>${say('look-sheet')} · ${say('look-toast')}</h2>
      <div class="wrap">
        <button type="button" class="button" onClick=${() => setOpen(true)}>${say('look-open-sheet')}</button>
        <button
          type="button"
          class="button"
          onClick=${() => tell(say('saving-saved'), async () => tell(say('saving-taken-back')))}
        >
          ${say('look-show-toast')}
        </button>
      </div>
    </section>
    <section class="card">
      <h2>${say('look-icons')}</h2>
      <ul style=${GRID}>
        ${ICONS.map(
          (name) => html`
            <li style=${PLAIN}>
              <${Icon} name=${name} />
              ${' '}${name}
            </li>
          `,
        )}
      </ul>
    </section>
    <section class="card">
      <h2>${say('look-empty')}</h2>
      <${Empty} title=${say('round-quiet')} />
    </section>
    <section class="card">
      <h2>${say('look-skeleton')}</h2>
      <${Skeleton} words=${say('frame-loading')} />
    </section>
    ${
      open &&
      html`
        <${Sheet} title=${say('look-sheet')} onClose=${() => setOpen(false)}>
          <p>${say('look-about')}</p>
        </${Sheet}>
      `
    }
  `;
}
