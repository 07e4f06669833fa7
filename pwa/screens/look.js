// How it looks: every token and part on one page, in the light that is chosen.
import { useState } from 'preact/hooks';
import { html, Icon } from '../components/html.js';
import { wordFor } from '../components/in-words.js';
import { Choice, LookChoice, ManyChoice, Sheet, Stepper, TubeInput } from '../components/parts.js';
import { Empty, SaveState, Skeleton } from '../components/states.js';
import { LyingTube, needClass, TubeDrawing } from '../components/tube.js';
import { say } from '../signals/actions.js';
import { m } from '../text/en-more.js';
import { t } from '../text/en.js';

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
    <h1>${m.look.title}</h1>
    <p class="soft">${m.look.about}</p>
    <${LookChoice} />
    <section class="card">
      <h2>${m.look.gauge}</h2>
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
      <${LyingTube} part=${3} whole=${7} words=${t.round.progress(3, 7)} />
      <div class="drag">
        <${TubeInput}
          label=${m.log.level}
          share=${share}
          step=${0.25}
          words=${`${share * 100} %`}
          onChange=${setShare}
        />
        <output>${share * 100} %</output>
      </div>
    </section>
    <section class="card">
      <h2>${m.look.colour}</h2>
      <ul class="swatches">
        ${COLOURS.map(
          (name) => html`
            <li style=${{ '--swatch': `var(--${name})` }}>${name}</li>
          `,
        )}
      </ul>
    </section>
    <section class="card">
      <h2>${m.look.type}</h2>
      ${STEPS.map(
        (step) => html`
          <p style=${{ fontSize: `var(--${step})`, fontFamily: step > 'step-1' ? 'var(--serif)' : 'inherit' }}>
            ${step}: ${t.name}
          </p>
        `,
      )}
    </section>
    <section class="card">
      <h2>${m.look.buttons}</h2>
      <div class="wrap">
        <button type="button" class="button main">
          <${Icon} name="done" />
          ${t.round.done_short}
        </button>
        <button type="button" class="button">${t.round.other}</button>
        <button type="button" class="button warn">${t.kinds.fault}</button>
        <button type="button" class="button quiet">${t.round.undo}</button>
        <button type="button" class="button" disabled>${t.round.later}</button>
      </div>
    </section>
    <section class="card">
      <h2>${m.look.chips}</h2>
      <${Choice} label=${m.log.level} value=${one} onPick=${setOne} options=${Object.entries(t.readings)} />
      <${ManyChoice}
        label=${t.many.who}
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
      <h2>${m.look.stepper}</h2>
      <${Stepper}
        label=${m.log.amount}
        value=${amount}
        step=${1}
        most=${60}
        unit=${t.units.drop?.(amount) ?? ''}
        onChange=${setAmount}
      />
    </section>
    <section class="card">
      <h2>${m.look.states}</h2>
      <p class="wrap">
        <${SaveState} state="saved" />
        <${SaveState} state="synced" />
        <${SaveState} state="attention" />
      </p>
      <p class="caution">${wordFor('caution', 'blade')}</p>
      <p class="caution calm">${wordFor('notice', 'settling')}</p>
    </section>
    <section class="card">
      <h2>${m.look.sheet} · ${m.look.toast}</h2>
      <div class="wrap">
        <button type="button" class="button" onClick=${() => setOpen(true)}>${m.look.open_sheet}</button>
        <button type="button" class="button" onClick=${() => say(t.saved, async () => say(t.taken_back))}>
          ${m.look.show_toast}
        </button>
      </div>
    </section>
    <section class="card">
      <h2>${m.look.icons}</h2>
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
      <h2>${m.look.empty}</h2>
      <${Empty} title=${t.round.quiet} />
    </section>
    <section class="card">
      <h2>${m.look.skeleton}</h2>
      <${Skeleton} words=${t.loading} />
    </section>
    ${
      open &&
      html`
        <${Sheet} title=${m.look.sheet} onClose=${() => setOpen(false)}><p>${m.look.about}</p></${Sheet}>
      `
    }
  `;
}
