// A colony over the months: growth, the water with its days left, and the food. Fetched only when it is opened.
import { useRef, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { LineChart, WeekBars } from '../components/chart.js';
import { Choice } from '../components/choices.js';
import { Figures } from '../components/figures.js';
import { html, Icon } from '../components/html.js';
import { sharePicture } from '../components/picture.js';
import { Skeleton } from '../components/states.js';
import { dueAtMs, levelAt, waterShare } from '../care/gauges.js';
import { DAY_MS } from '../care/rules.js';
import { warmthBehind } from '../care/place-climate.js';
import { useHistory, useKind } from '../signals/history.js';
import { now } from '../signals/clock.js';
import { unplanned } from '../care/round.js';
import { eventsOf, gaugesOf, planOf } from '../signals/rows.js';
import { temperature } from '../words/measures.js';
import { say, sayIf, sayOf } from '../words/say.js';
import { fullDay, numeral } from '../words/shown.js';

/** @typedef {import('../care/overlay.js').EventRow} EventRow */

const WEEK_MS = 7 * DAY_MS;
const WEEKS = 26;
const LONGEST_AHEAD_DAYS = 120;

/** A point of a line. @param {EventRow} row @param {number} value @returns {[number, number]} */
const at = (row, value) => [row.happened_ms ?? 0, value];

/** Whether a chart draws it. @param {import('../care/overlay.js').ShownRow} row */
const isCharted = ({ kind, happened_ms }) =>
  ['count', 'water', 'move'].includes(kind) ||
  (kind === 'feeding' && (happened_ms ?? 0) > now.peek() - WEEKS * WEEK_MS);

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'>}} props */
export function Charts({ colony }) {
  const [which, setWhich] = useState('growth');
  const box = useRef(/** @type {HTMLDivElement | null} */ (null));
  const { attempt, said } = useAttempt();
  const log = useHistory(colony.id, { fits: isCharted });
  const measured = useKind('place_day').filter((row) => row.set.place_id === colony.set.place_id);
  const Chart = { growth: Growth, water: Water, feeding: Food }[which] ?? Growth;
  const share = () =>
    attempt(() =>
      sharePicture(
        /** @type {SVGSVGElement} */ (box.current?.querySelector('svg.chart')),
        `${colony.set.name}: ${sayOf('chart', which)}`,
      ),
    );
  return html`
    <div class="stack" ref=${box}>
      <${Choice}
        label=${say('chart-which')}
        hideLabel
        value=${which}
        onPick=${setWhich}
        options=${[
          ['growth', say('chart-growth')],
          ['water', say('chart-water')],
          ['feeding', say('chart-feeding')],
        ]}
      />
      ${
        log
          ? html`
              <${Chart}
                log=${log}
                colonyId=${colony.id}
                measured=${measured.map((row) => row.set)}
                onShare=${html`
                  <button type="button" class="button screen-only" onClick=${share}>
                    <${Icon} name="share" />
                    ${say('chart-share')}
                  </button>
                `}
              />
            `
          : html`
              <${Skeleton} words=${say('frame-loading')} />
            `
      }${said}
    </div>
  `;
}

/**
 * @param {{log: EventRow[], colonyId: string, onShare: unknown,
 *   measured: import('../care/place-climate.js').DayFields[]}} props
 */
function Growth({ log, colonyId, onShare, measured }) {
  const counts = log.filter((row) => row.kind === 'count');
  const points = counts.flatMap((row) => (typeof row.set.workers === 'number' ? [at(row, row.set.workers)] : []));
  const rows = counts
    .map((row) => [
      fullDay(row.happened_ms ?? 0),
      row.set.workers == null ? sayIf('event-coarse', row.set.workers_coarse) || '–' : numeral(row.set.workers),
    ])
    .reverse();
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last || points.length < 2) {
    return html`
      <p class="soft">${say('chart-few')}</p>
      ${
        rows.length > 0 &&
        html`
          <${Figures} heads=${[say('chart-day'), say('chart-workers')]} rows=${rows} />
        `
      }
    `;
  }
  const ahead = growthAhead(colonyId);
  const warmth = warmthBehind(measured, first[0], ahead ? now.value : last[0]);
  const words = [
    say('chart-growth-words', { first: first[1], last: last[1] }),
    ahead?.words,
    warmth && say('chart-behind', { low: temperature(warmth.low), high: temperature(warmth.high) }),
  ]
    .filter(Boolean)
    .join(' ');
  return html`
    <p class="soft">${words}${ahead ? ` ${say('chart-estimate')}` : ''}</p>
    <${LineChart}
      title=${say('chart-growth')}
      words=${words}
      unit=""
      need="protein"
      points=${points}
      guess=${ahead?.line}
      band=${ahead?.band}
      behind=${warmth?.shape}
    />
    ${onShare}
    <${Figures} heads=${[say('chart-day'), say('chart-workers')]} rows=${rows} />
  `;
}

/**
 * Workers in the coming weeks as the plan reckons them; null where it says nothing, or was made before the last count.
 * @param {string} colonyId
 */
function growthAhead(colonyId) {
  const plan = planOf(colonyId);
  /** @type {Array<[number, number, number, number]> | undefined} */
  const curve = plan?.set.growth?.curve;
  const end = curve?.at(-1);
  if (!plan || !curve || !end) return null;
  if (unplanned(plan, eventsOf(colonyId)).some(({ kind }) => kind === 'count')) return null; // it does not know of it
  /** @param {1 | 2 | 3} column @returns {Array<[number, number]>} */
  const line = (column) => curve.map((row) => [row[0], row[column]]);
  const [low = 0, best = 0, high = 0] = end.slice(1).map(Math.round);
  return {
    line: line(2),
    band: { low: line(1), high: line(3) },
    words: say('chart-growth-ahead', { day: fullDay(end[0]), best, low, high }),
  };
}

/** @param {{log: EventRow[], colonyId: string, onShare: unknown}} props */
function Water({ log, colonyId, onShare }) {
  const gauge = gaugesOf(colonyId).find((each) => each.need === 'water');
  const points = log.flatMap((row) => {
    const share = waterShare(gauge, row.kind, row.set);
    return share === undefined ? [] : [at(row, share * 100)];
  });
  if (!points.length && !gauge) {
    return html`
      <p class="soft">${say('chart-few-water')}</p>
    `;
  }
  const ahead = gauge && gauge.rate_per_day > 0 ? forecast(gauge) : null;
  const due = gauge ? dueAtMs(gauge) : null;
  const words =
    due === null
      ? say('chart-never')
      : due <= now.value
        ? say('chart-due-now')
        : say('chart-water-words', { days: Math.max(0, Math.round((due - now.value) / DAY_MS)) });
  const rows = points
    .map(([ms, value]) => [fullDay(ms), say('part-percent', { percent: Math.round(value) })])
    .reverse();
  return html`
    <p>
      ${words}${
        ahead
          ? html`
              ${' '}
              <span class="soft">${say('chart-estimate')}</span>
            `
          : ''
      }
    </p>
    <${LineChart}
      title=${say('chart-water')}
      words=${words}
      unit=" %"
      need="water"
      points=${points}
      guess=${ahead?.line}
      band=${ahead?.band}
      due=${gauge ? (gauge.due_level / gauge.capacity) * 100 : null}
    />
    ${onShare}
    <${Figures} heads=${[say('chart-day'), say('chart-level')]} rows=${rows} />
  `;
}

/**
 * The gauge's line from now until it is empty, with the band of its low and high rates.
 * @param {import('../care/gauges.js').Gauge} gauge
 */
function forecast(gauge) {
  const start = (levelAt(gauge, now.value) / gauge.capacity) * 100;
  const days = Math.min(
    LONGEST_AHEAD_DAYS,
    ((start / 100) * gauge.capacity) / Math.max(gauge.rate_low, gauge.rate_per_day / 4),
  );
  /** @param {number} rate @returns {Array<[number, number]>} */
  const line = (rate) =>
    Array.from({ length: 13 }, (_, i) => [
      now.value + (i / 12) * days * DAY_MS,
      Math.max(0, start - (rate / gauge.capacity) * 100 * (i / 12) * days),
    ]);
  return { line: line(gauge.rate_per_day), band: { low: line(gauge.rate_low), high: line(gauge.rate_high) } };
}

/** @param {{log: EventRow[], onShare: unknown}} props */
function Food({ log, onShare }) {
  const start = now.value - WEEKS * WEEK_MS;
  const feedings = log.filter((row) => row.kind === 'feeding' && (row.happened_ms ?? 0) > start);
  if (!feedings.length) {
    return html`
      <p class="soft">${say('chart-few-food')}</p>
    `;
  }
  const weeks = Array.from({ length: WEEKS }, (_, i) => ({ ms: start + i * WEEK_MS, sugar: 0, other: 0 }));
  for (const row of feedings) {
    const week = weeks[Math.min(WEEKS - 1, Math.floor(((row.happened_ms ?? 0) - start) / WEEK_MS))];
    if (week) week[row.set.need === 'sugar' ? 'sugar' : 'other'] += 1;
  }
  const words = say('chart-food-words', { count: feedings.length });
  return html`
    <p class="soft">${words}</p>
    <${WeekBars} title=${say('chart-feeding')} words=${words} weeks=${weeks} />
    <ul class="wrap soft">
      <li class="need-sugar">
        <span class="key" aria-hidden="true"></span>
        ${' '}${say('chart-sugar')}
      </li>
      <li class="need-protein">
        <span class="key" aria-hidden="true"></span>
        ${' '}${say('chart-protein')}
      </li>
    </ul>
    ${onShare}
    <${Figures}
      heads=${[say('chart-week'), say('chart-sugar'), say('chart-protein')]}
      rows=${weeks
        .filter((week) => week.sugar + week.other)
        .map((week) => [fullDay(week.ms), numeral(week.sugar), numeral(week.other)])
        .reverse()}
    />
  `;
}
