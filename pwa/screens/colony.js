// One colony: its gauges, logging, what the plan says, its charts, its pictures and its diary.
import { useState } from 'preact/hooks';
import { unfolded } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { Sheet } from '../components/sheet.js';
import { SaveState } from '../components/states.js';
import { dueInWords, percentOf, Tube } from '../components/tube.js';
import { dueAtMs } from '../care/gauges.js';
import { gaugesOf, planOf, rowOf } from '../signals/rows.js';
import { runningTasting } from '../signals/tastings.js';
import { ColonyForm } from './colony-form.js';
import { Diary } from './diary.js';
import { lazy } from '../components/lazy.js';
import { useParts } from '../components/slices.js';
import { LogSheet } from './log.js';
import { Plan } from './plan.js';
import { speciesOf } from '../components/colonies.js';
import { labelled, say, sayIf, sayOf } from '../words/say.js';

const Charts = lazy(() => import('./charts.js'), 'Charts', 'charts');
const Past = lazy(() => import('./past.js'), 'Past', 'online');
const Photos = lazy(() => import('./pictures.js'), 'Photos', 'counting');
const Tasting = lazy(() => import('./tasting.js'), 'Tasting');

const KINDS = /** @type {const} */ (['feeding', 'water', 'check', 'count', 'note', 'move', 'boost', 'fault']);

/** @param {{id: string}} props */
export function ColonyScreen({ id }) {
  const [sheet, setSheet] = useState(/** @type {'' | 'edit' | 'past' | import('./log.js').Logged} */ (''));
  const [charts, setCharts] = useState(false);
  const [tasting, setTasting] = useState(Boolean(runningTasting(id)));
  const parts = useParts(3);
  if (id === 'new') {
    return html`
      <h1>${say('colony-new')}</h1>
      <${ColonyForm} colony=${null} />
    `;
  }
  const colony = /** @type {import('../care/overlay.js').ShownRow<'colony'> | undefined} */ (rowOf(id));
  if (!colony) {
    return html`
      <h1>${say('colony-gone')}</h1>
      <p>${say('colony-gone-why')}</p>
    `;
  }
  const v = colony.set;
  if (sheet === 'edit') {
    return html`
      <h1>${say('colony-form-change', { name: v.name })}</h1>
      <${ColonyForm} colony=${colony} onDone=${() => setSheet('')} />
    `;
  }
  const stage = sayIf('colony-stage', v.stage);
  return html`
    <div class="title">
      ${
        v.number &&
        html`
          <span class="number">${v.number}</span>
        `
      }
      <h1>${v.name}</h1>
      <button type="button" class="button" onClick=${() => setSheet('edit')}>${say('colony-change')}</button>
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
              <strong>
                ${say('shelf-level', {
                  need: sayOf('need', gauge.need),
                  level: say('part-percent', { percent: percentOf(gauge) }),
                })}
              </strong>
              ${dueInWords(dueAtMs(gauge))}
            </figcaption>
          </figure>
        `,
      )}
    </div>
    ${
      parts > 1 &&
      html`
        <section class="stack" aria-label=${say('colony-log')}>
          <h2>${say('colony-log')}</h2>
          <div class="log-bar">
            ${KINDS.map(
              (kind) => html`
                <button
                  type="button"
                  class=${`button ${kind === 'fault' ? 'warn' : kind === 'feeding' ? 'main' : ''}`}
                  onClick=${() => setSheet(kind)}
                >
                  <${Icon} name=${kind} />
                  ${sayOf('event-kind', kind)}
                </button>
              `,
            )}
          </div>
        </section>
        ${
          planOf(id)
            ? html`
                <${Plan} colony=${colony} />
              `
            : html`
                <p class="soft">${say('colony-no-plan')}</p>
              `
        }
      `
    }
    ${
      parts > 2 &&
      html`
        <details onToggle=${unfolded(setCharts)}>
          <summary>
            <h2>${say('colony-charts')}</h2>
          </summary>
          ${
            charts &&
            html`
              <${Charts} colony=${colony} />
            `
          }
        </details>
        <details open=${tasting} onToggle=${unfolded(setTasting)}>
          <summary>
            <h2>${say('tasting-title')}</h2>
          </summary>
          ${
            tasting &&
            html`
              <${Tasting} colony=${colony} />
            `
          }
        </details>
        <${Photos} colonyId=${id} name=${v.name} />
        <div class="wrap even">
          <a class="button" href=${`#/paper/${id}`}>
            <${Icon} name="print" />
            ${say('colony-paper')}
          </a>
          <button type="button" class="button" onClick=${() => setSheet('past')}>${say('colony-past')}</button>
        </div>
        <${Diary} colonyId=${id} />
      `
    }
    ${
      sheet === 'past'
        ? html`
            <${Sheet} title=${labelled(say('history-title'), v.name)} onClose=${() => setSheet('')}>
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
