// How it looks: every token and part on one page, in the light that is chosen.
import { useState } from 'preact/hooks';
import { Choice, ManyChoice } from '../components/choices.js';
import { html, Icon } from '../components/html.js';
import { wordFor } from '../components/in-words.js';
import { LookChoice } from '../components/preferences.js';
import { Sheet } from '../components/sheet.js';
import { Empty, SaveState, Skeleton } from '../components/states.js';
import { Stepper } from '../components/stepper.js';
import { TubeInput } from '../components/tube-input.js';
import { LyingTube, needClass, TubeDrawing } from '../components/tube.js';
import { say } from '../signals/actions.js';
import { eventText } from '../text/en/events.js';
import { foodText } from '../text/en/food.js';
import { frameText } from '../text/en/frame.js';
import { logText } from '../text/en/log.js';
import { lookText } from '../text/en/look.js';
import { roundText } from '../text/en/round.js';
import { savingText } from '../text/en/saving.js';
import { severalText } from '../text/en/several.js';

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
    <h1>${lookText.title}</h1>
    <p class="soft">${lookText.about}</p>
    <${LookChoice} />
    <section class="card">
      <h2>${lookText.gauge}</h2>
      <div class="tube-set">
        ${NEEDS.map(
          ([need, level]) => html`
            <figure>
              <svg
                class=${`tube ${needClass(need)} ${level < 0.2 ? 'low' : ''}`}
                viewBox="0 0 48 124"
                role="img"
                aria-label=${`${wordFor('need', need)} ${Math.round(level * 100)} %`}
              >
                <${TubeDrawing} need=${need} share=${level} due=${0.2} />
              </svg>
              <figcaption aria-hidden="true">${wordFor('need', need)}</figcaption>
            </figure>
          `,
        )}
      </div>
      <${LyingTube} part=${3} whole=${7} words=${roundText.progress(3, 7)} />
      <div class="drag">
        <${TubeInput}
          label=${logText.level}
          share=${share}
          step=${0.25}
          words=${`${share * 100} %`}
          onChange=${setShare}
        />
        <output>${share * 100} %</output>
      </div>
    </section>
    <section class="card">
      <h2>${lookText.colour}</h2>
      <ul class="swatches">
        ${COLOURS.map(
          (name) => html`
            <li style=${{ '--swatch': `var(--${name})` }}>${name}</li>
          `,
        )}
      </ul>
    </section>
    <section class="card">
      <h2>${lookText.type}</h2>
      ${STEPS.map(
        (step) => html`
          <p style=${{ fontSize: `var(--${step})`, fontFamily: step > 'step-1' ? 'var(--serif)' : 'inherit' }}>
            ${step}: ${frameText.name}
          </p>
        `,
      )}
    </section>
    <section class="card">
      <h2>${lookText.buttons}</h2>
      <div class="wrap">
        <button type="button" class="button main">
          <${Icon} name="done" />
          ${roundText.done_short}
        </button>
        <button type="button" class="button">${roundText.other}</button>
        <button type="button" class="button warn">${eventText.kinds.fault}</button>
        <button type="button" class="button quiet">${roundText.undo}</button>
        <button type="button" class="button" disabled>${roundText.later}</button>
      </div>
    </section>
    <section class="card">
      <h2>${lookText.chips}</h2>
      <${Choice} label=${logText.level} value=${one} onPick=${setOne} options=${Object.entries(eventText.readings)} />
      <${ManyChoice}
        label=${severalText.who}
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
      <h2>${lookText.stepper}</h2>
      <${Stepper}
        label=${logText.amount}
        value=${amount}
        step=${1}
        most=${60}
        unit=${foodText.units.drop?.(amount) ?? ''}
        onChange=${setAmount}
      />
    </section>
    <section class="card">
      <h2>${lookText.states}</h2>
      <p class="wrap">
        <${SaveState} state="saved" />
        <${SaveState} state="synced" />
        <${SaveState} state="attention" />
      </p>
      <p class="caution">${wordFor('caution', 'blade')}</p>
      <p class="caution calm">${wordFor('notice', 'settling')}</p>
    </section>
    <section class="card">
      <h2>${lookText.sheet} · ${lookText.toast}</h2>
      <div class="wrap">
        <button type="button" class="button" onClick=${() => setOpen(true)}>${lookText.open_sheet}</button>
        <button
          type="button"
          class="button"
          onClick=${() => say(savingText.saved, async () => say(savingText.taken_back))}
        >
          ${lookText.show_toast}
        </button>
      </div>
    </section>
    <section class="card">
      <h2>${lookText.icons}</h2>
      <ul class="swatches plain-icons">
        ${ICONS.map(
          (name) => html`
            <li>
              <${Icon} name=${name} />
              ${' '}${name}
            </li>
          `,
        )}
      </ul>
    </section>
    <section class="card">
      <h2>${lookText.empty}</h2>
      <${Empty} title=${roundText.quiet} />
    </section>
    <section class="card">
      <h2>${lookText.skeleton}</h2>
      <${Skeleton} words=${frameText.loading} />
    </section>
    ${
      open &&
      html`
        <${Sheet} title=${lookText.sheet} onClose=${() => setOpen(false)}><p>${lookText.about}</p></${Sheet}>
      `
    }
  `;
}
