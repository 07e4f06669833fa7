// The drawing of the brood on one line of time, with its summary, its marks and its table. Fetched when it is opened.
import { useState } from 'preact/hooks';
import { Choice } from '../components/choices.js';
import { Figures } from '../components/figures.js';
import { html } from '../components/html.js';
import { TimeLine, told } from '../components/time-line.js';
import { DAY_MS } from '../care/rules.js';
import { nestAt, SERIES } from '../care/time-line.js';
import { now } from '../signals/clock.js';
import { useHistory } from '../signals/history.js';
import { choicesOf, say, sayOf } from '../words/say.js';
import { fullDay, together } from '../words/shown.js';

/** @typedef {import('../care/time-line.js').Column} Column */

/**
 * @param {{colony: import('../care/overlay.js').ShownRow<'colony'>,
 *   census: import('../kinds.d.ts').LivingCensus}} props
 */
export function BroodLine({ colony, census }) {
  const [ahead, setAhead] = useState('56');
  const columns = /** @type {Column[]} */ (census.stages);
  const counts = useHistory(colony.id, { from_ms: Math.max(1, columns[0]?.[0] ?? 1), fits: isCount });
  if (columns.length < 2) return null;
  const toMs = now.value + Number(ahead) * DAY_MS;
  const words = summary(columns, now.value, Math.min(toMs, columns.at(-1)?.[0] ?? toMs));
  return html`
    <div class="stack">
      <p>${words}</p>
      <${Choice}
        label=${say('brood-line-ahead')}
        hideLabel
        value=${ahead}
        onPick=${setAhead}
        options=${choicesOf('brood-line-reach', ['56', '182'])}
      />
      <${TimeLine} census=${census} counts=${counts ?? []} nowMs=${now.value} toMs=${toMs} words=${words} />
      <ul class="wrap soft marks">
        ${choicesOf('brood-line-mark', ['line', 'band', 'dot', 'hollow', 'due']).map(
          ([look, meaning]) => html`
            <li class="need-protein">
              <svg class="chart" viewBox="0 0 22 12" aria-hidden="true">
                <path class=${`mark ${look}`} d=${look === 'dot' || look === 'hollow' ? DOT : DASH} />
              </svg>
              ${' '}${meaning}
            </li>
          `,
        )}
      </ul>
      <p class="soft">${say('brood-line-scale')}</p>
      <${Figures}
        wide
        heads=${[say('brood-line-day'), ...SERIES.map((stage) => sayOf('brood-line-stage', stage))]}
        rows=${columns.map(([ms, ...ranges]) => [fullDay(ms), ...ranges.map(told)])}
      />
    </div>
  `;
}

const DASH = 'M1 6H21';
const DOT = 'M11 3a3 3 0 1 0 .01 0z';

/** @param {import('../care/overlay.js').EventRow} row */
const isCount = ({ kind }) => kind === 'count';

/** The drawing in a sentence or two. @param {Column[]} columns @param {number} nowMs @param {number} toMs */
function summary(columns, nowMs, toMs) {
  const best = nestAt(columns, nowMs).map(([, each]) => Math.round(each));
  const here = SERIES.map((stage, i) => sayOf('brood-line-count', stage, { count: best[i] ?? 0 }));
  const [low = 0, middle = 0, high = 0] = nestAt(columns, toMs).at(-1)?.map(Math.round) ?? [];
  return say('brood-line-summary', { counts: together(here), day: fullDay(toMs), best: middle, low, high });
}
