// One colony: its gauges, logging, what the plan says, its charts, its pictures and its diary.
import { useState } from 'preact/hooks';
import { unfolded } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { fullDay, wordFor, wordOf } from '../components/in-words.js';
import { Photo } from '../components/photo.js';
import { Sheet } from '../components/sheet.js';
import { useSlices } from '../components/slices.js';
import { SaveState } from '../components/states.js';
import { dueInWords, percentOf, Tube } from '../components/tube.js';
import { dueAtMs } from '../care/gauges.js';
import { say, voidLog } from '../signals/actions.js';
import { useKind } from '../signals/history.js';
import { takePhoto } from '../signals/photos.js';
import { gaugesOf, planOf, rowOf } from '../signals/rows.js';
import { runningTasting } from '../signals/tastings.js';
import { colonyText } from '../text/en/colony.js';
import { colonyFormText } from '../text/en/colony-form.js';
import { eventText } from '../text/en/events.js';
import { historyText } from '../text/en/history.js';
import { photosText } from '../text/en/photos.js';
import { tastingText } from '../text/en/tasting.js';
import { ColonyForm } from './colony-form.js';
import { Diary } from './diary.js';
import { lazy } from '../components/lazy.js';
import { LogSheet } from './log.js';
import { Plan } from './plan.js';
import { speciesOf } from '../components/colonies.js';

const Charts = lazy(() => import('./charts.js'), 'Charts');
const Past = lazy(() => import('./past.js'), 'Past');
const Tasting = lazy(() => import('./tasting.js'), 'Tasting');

/** @typedef {import('../care/overlay.js').ShownRow} ShownRow */

const PICTURES_SHOWN = 24;
/** Its parts: what it is, its gauges and what to log are there at once; the plan, what unfolds and the diary follow. */
const PARTS = 6;
const KINDS = /** @type {const} */ (['feeding', 'water', 'check', 'count', 'note', 'move', 'boost', 'fault']);

/** @param {{id: string}} props */
export function ColonyScreen({ id }) {
  const [sheet, setSheet] = useState('');
  const made = useSlices(PARTS, 1);
  if (id === 'new') {
    return html`
      <h1>${colonyText.new}</h1>
      <${ColonyForm} colony=${null} />
    `;
  }
  const colony = /** @type {import('../care/overlay.js').ShownRow<'colony'> | undefined} */ (rowOf(id));
  if (!colony) {
    return html`
      <h1>${colonyText.gone}</h1>
      <p>${colonyText.gone_why}</p>
    `;
  }
  const v = colony.set;
  if (sheet === 'edit') {
    return html`
      <h1>${colonyFormText.change(v.name)}</h1>
      <${ColonyForm} colony=${colony} onDone=${() => setSheet('')} />
    `;
  }
  const stage = wordOf(colonyText.stages, v.stage);
  return html`
    <div class="title">
      ${
        v.number &&
        html`
          <span class="number">${v.number}</span>
        `
      }
      <h1>${v.name}</h1>
      <button type="button" class="button" onClick=${() => setSheet('edit')}>${colonyText.change}</button>
    </div>
    <p class="soft">
      <em>${speciesOf(v)}</em>
      ${' · '}${stage}${' · '}
      <${SaveState} state=${colony.state} />
    </p>
    <div class="tube-set wide">
      ${gaugesOf(id).map(
        (gauge) => html`
          <figure key=${gauge.need}>
            <${Tube} gauge=${gauge} />
            <figcaption aria-hidden="true">
              <strong>${wordFor('need', gauge.need)} ${percentOf(gauge)} %</strong>
              ${dueInWords(dueAtMs(gauge))}
            </figcaption>
          </figure>
        `,
      )}
    </div>
    <section class="stack" aria-label=${colonyText.log}>
      <h2>${colonyText.log}</h2>
      <div class="log-bar">
        ${KINDS.map(
          (kind) => html`
            <button
              type="button"
              class=${`button ${kind === 'fault' ? 'warn' : kind === 'feeding' ? 'main' : ''}`}
              onClick=${() => setSheet(kind)}
            >
              <${Icon} name=${kind} />
              ${eventText.kinds[kind]}
            </button>
          `,
        )}
      </div>
    </section>
    ${
      made > 3 &&
      (planOf(id)
        ? html`
            <${Plan} colony=${colony} />
          `
        : html`
            <p class="soft">${colonyText.no_plan}</p>
          `)
    }
    ${
      made > 4 &&
      html`
        <${Unfolding} colony=${colony} onPast=${() => setSheet('past')} />
      `
    }
    ${
      made > 5 &&
      html`
        <${Diary} colonyId=${id} />
      `
    }
    ${
      sheet === 'past'
        ? html`
            <${Sheet} title=${`${historyText.title}: ${v.name}`} onClose=${() => setSheet('')}>
              <${Past} row=${colony} />
            </${Sheet}>
          `
        : sheet &&
          html`
            <${LogSheet} colonyId=${id} kind=${sheet} onClose=${() => setSheet('')} />
          `
    }
  `;
}

/**
 * What unfolds when it is wanted: charts and tasting; its pictures; what becomes of it on paper and over time.
 * @param {{colony: import('../care/overlay.js').ShownRow<'colony'>, onPast: () => void}} props
 */
function Unfolding({ colony, onPast }) {
  const [charts, setCharts] = useState(false);
  const [tasting, setTasting] = useState(Boolean(runningTasting(colony.id)));
  return html`
    <details onToggle=${unfolded(setCharts)}>
      <summary><h2>${colonyText.charts}</h2></summary>
      ${
        charts &&
        html`
          <${Charts} colony=${colony} />
        `
      }
    </details>
    <details open=${tasting} onToggle=${unfolded(setTasting)}>
      <summary><h2>${tastingText.title}</h2></summary>
      ${
        tasting &&
        html`
          <${Tasting} colony=${colony} />
        `
      }
    </details>
    <${Photos} colonyId=${colony.id} name=${colony.set.name} />
    <div class="wrap even">
      <a class="button" href=${`#/paper/${colony.id}`}>
        <${Icon} name="print" />
        ${colonyText.paper}
      </a>
      <button type="button" class="button" onClick=${onPast}>${colonyText.past}</button>
    </div>
  `;
}

/**
 * Its pictures: take one, how it grew side by side, and each of them large.
 * @param {{colonyId: string, name: string}} props
 */
function Photos({ colonyId, name }) {
  const [busy, setBusy] = useState(false);
  const [large, setLarge] = useState('');
  const all = useKind('photo')
    .filter((row) => row.set.colony_id === colonyId)
    .slice(0, PICTURES_SHOWN);
  /** @param {Event} event */
  const take = async (event) => {
    const field = /** @type {HTMLInputElement} */ (event.target);
    const [file] = field.files ?? [];
    field.value = '';
    if (!file) return;
    setBusy(true);
    try {
      await takePhoto(colonyId, file);
    } catch (error) {
      if (/** @type {any} */ (error).name === 'NotSaved') throw error;
      say(photosText.unreadable);
    } finally {
      setBusy(false);
    }
  };
  const at = all.findIndex((row) => row.id === large);
  return html`
    <section class="stack" aria-label=${photosText.title}>
      <h2>${photosText.title}</h2>
      ${
        all.length > 0 &&
        html`
          <ol class="photo-strip">
            ${all.map(
              (row) => html`
                <li key=${row.id}>
                  <button
                    type="button"
                    class="photo-button"
                    aria-haspopup="dialog"
                    aria-label=${photosText.large(day(row))}
                    onClick=${() => setLarge(row.id)}
                  >
                    <${Photo} row=${row} words="" />
                  </button>
                  <p>${day(row)}</p>
                  ${
                    row.state !== 'synced' &&
                    html`
                      <p><${SaveState} state=${row.state} /></p>
                    `
                  }
                </li>
              `,
            )}
          </ol>
        `
      }
      ${
        at >= 0 &&
        html`
          <${Large} all=${all} at=${at} name=${name} onTurn=${setLarge} />
        `
      }
      <label class="button wide file">
        <${Icon} name="photo" />
        ${busy ? photosText.busy : photosText.take}
        <input type="file" accept="image/*" capture="environment" disabled=${busy} onChange=${take} />
      </label>
    </section>
  `;
}

/**
 * One picture as large as the phone, and the way to its neighbours.
 * @param {{all: ShownRow[], at: number, name: string, onTurn: (id: string) => void}} props
 */
function Large({ all, at, name, onTurn }) {
  const row = /** @type {ShownRow} */ (all[at]);
  const turn = (/** @type {ShownRow | undefined} */ to, /** @type {string} */ words) => html`
    <button type="button" class="button" disabled=${!to} onClick=${() => onTurn(to?.id ?? '')}>${words}</button>
  `;
  return html`
    <${Sheet} title=${day(row)} onClose=${() => onTurn('')}>
      <${Photo} key=${row.id} row=${row} words=${photosText.of(name, day(row))} />
      ${
        all.length > 1 &&
        html`
          <div class="wrap even">${turn(all[at + 1], photosText.older)}${turn(all[at - 1], photosText.newer)}</div>
        `
      }
      <button
        type="button"
        class="button warn"
        onClick=${() => {
          onTurn('');
          void voidLog(row);
        }}
      >
        ${photosText.remove}
      </button>
    </${Sheet}>
  `;
}

/** @param {ShownRow} row */
const day = (row) => fullDay(row.happened_ms ?? 0);
