// Counting on a picture: dots are proposed, a person puts them right, and number, range and dots are kept with it.
// Longer than 300 lines because frame, size, dots and number are one state of one picture.
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice } from '../components/choices.js';
import { ticked, typed } from '../components/forms.js';
import { html } from '../components/html.js';
import { startLooker } from '../counting/looker.js';
import {
  asKept,
  frameKept,
  frameOf,
  fromKept,
  keyOfDrawn,
  marksOf,
  moved,
  nearest,
  noMarks,
  plus,
  standing,
  without,
} from '../counting/marks.js';
import { rangeOf } from '../counting/range.js';
import { bodyByLength, LONGEST_PX, workerMm } from '../counting/scale.js';
import { HIGHEST, judgedBy, learntThreshold, LOWEST, USUAL_THRESHOLD } from '../counting/threshold.js';
import { uuid7 } from '../database/ids.js';
import { findPhoto } from '../database/photos.js';
import { keep } from '../signals/actions.js';
import { useKind } from '../signals/history.js';
import { catalogue, rows } from '../signals/rows.js';
import { openStore } from '../signals/session.js';
import { choicesOf, labelled, say } from '../words/say.js';
import { ARROWS, DotStage } from './dot-stage.js';

/** @typedef {import('../care/overlay.js').ShownRow<'photo'>} PhotoRow */
/** @typedef {import('../counting/looker.js').Looker} Looker */
/** @typedef {import('../counting/marks.js').Dot} Dot */
/** @typedef {import('./dot-stage.js').Point} Point */
/** @typedef {import('../counting/propose.js').Frame} Frame */

/** Nothing is asked anew before frame or size have been still for so long. */
const STILL_MS = 250;
const ZOOMS = [1, 1.6, 2.5, 4];
/** How far a proposal may lie from a dot that says the same, in bodies' lengths. */
const SAME = 0.45;

/**
 * @param {{row: PhotoRow, all: PhotoRow[], looker?: Looker | null}} props `all`: pictures of the colony, newest first;
 *   `looker`: one that runs already, whose end is the giver's
 */
export function CountPicture({ row, all, looker = null }) {
  const size = useMemo(
    () => ({ width_px: row.set.width_px ?? 1600, height_px: row.set.height_px ?? 1200 }),
    [row.set.width_px, row.set.height_px],
  );
  const before = all.find(
    (each) => each.id !== row.id && each.set.dots && (each.happened_ms ?? 0) < (row.happened_ms ?? 0),
  );
  const [threshold, setThreshold] = useState(row.set.dots_threshold ?? before?.set.dots_learnt ?? USUAL_THRESHOLD);
  const [frame, setFrame] = useState(() => frameOf(row.set.dots_frame ?? before?.set.dots_frame, size));
  const [body, setBody] = useState(/** @type {number | null} */ (row.set.dots_worker_px ?? null));
  const [pale, setPale] = useState(row.set.dots_pale ?? before?.set.dots_pale ?? false);
  const how = useMemo(() => ({ body_px: body, frame, pale }), [body, frame, pale]);
  // until it was looked at, and where it cannot be, the dots that were kept stand as they were
  const [marks, setMarks] = useState(() => marksOf([], fromKept(row.set.dots, size), 0));
  const [chosen, setChosen] = useState('');
  const [mode, setMode] = useState('worker');
  const [zoom, setZoom] = useState(0);
  const [part, setPart] = useState(false);
  const { attempt, busy, said } = useAttempt();
  const opened = useRef(row.set.dots);
  const { address, looked, failed } = useLooked(row, how, looker, (found) => {
    // proposals are others now: what the person said of the last ones is said of these, by place
    const kept = opened.current ? fromKept(opened.current, size) : null;
    opened.current = null;
    setMarks((was) => (kept ? marksOf(found.dots, kept, SAME * found.body_px) : { ...noMarks(), drawn: was.drawn }));
  });
  const proposed = looked?.dots ?? NOTHING;
  const body_px = body ?? looked?.body_px ?? size.width_px / 40;
  const dots = useMemo(
    () => standing(proposed, marks, threshold, frame, 2 * body_px),
    [proposed, marks, threshold, frame, body_px],
  );
  const workers = dots.filter((dot) => dot.what === 'worker');
  const range = useMemo(
    () =>
      rangeOf(
        workers,
        proposed.filter((dot) => dot.what === 'worker'),
        threshold,
        body_px,
        correctedIn(all, row.id),
      ),
    [dots, threshold, body_px, all],
  );
  const at = dots.findIndex((dot) => dot.key === chosen);
  const step = (/** @type {number} */ by) => setChosen(dots[(at + by + dots.length) % dots.length]?.key ?? '');
  const take = (/** @type {import('../counting/marks.js').Dot} */ dot) => {
    setMarks(without(marks, dot));
    const i = dots.indexOf(dot);
    setChosen(dots[i + 1]?.key ?? dots[i - 1]?.key ?? '');
  };
  const what = mode === 'brood' ? 'brood' : 'worker';
  const add = (/** @type {Point} */ place) => setMarks(plus(marks, proposed, place, what, SAME * body_px));
  const onTap = (/** @type {Point} */ place, /** @type {number} */ reach_px) => {
    const hit = nearest(dots, place, Math.max(SAME * body_px, Math.min(reach_px, body_px)));
    if (hit) take(hit);
    else add(place);
  };
  /** @param {KeyboardEvent} event */
  const onKey = (event) => {
    const dot = dots[at];
    const arrow = ARROWS[event.key];
    if (event.key === 'PageDown') step(1);
    else if (event.key === 'PageUp') step(at < 0 ? 0 : -1);
    else if ((event.key === 'Delete' || event.key === 'Backspace') && dot) take(dot);
    else if (arrow && dot) {
      const [u, v] = arrow;
      const now = moved(marks, dot, (u * body_px) / 4, (v * body_px) / 4);
      setMarks(now.marks);
      setChosen(now.key);
    } else if (event.key === 'Enter') {
      const middle = { x: (frame.left + frame.right) / 2, y: (frame.top + frame.bottom) / 2 };
      setMarks({ ...marks, drawn: [...marks.drawn, { ...middle, what }] });
      setChosen(keyOfDrawn(marks.drawn.length));
    } else return;
    event.preventDefault();
  };
  const ruler = useRuler(mode === 'size', size, row.set.colony_id, setBody);
  const sheet = useKind('count').find((each) => each.set.photo_id === row.id);
  const save = () =>
    attempt(async () => {
      const judged = judgedBy(proposed.filter(isWorker), workers, SAME * body_px);
      const added = workers.filter((dot) => dot.score === null || dot.score < threshold).length;
      const removed = judged.filter(({ score, real }) => !real && score >= threshold).length;
      await keep(
        'photo',
        {
          dots: asKept(dots, size),
          dots_frame: frameKept(frame, size),
          dots_worker_px: Math.round(body_px * 10) / 10,
          dots_pale: pale,
          dots_threshold: threshold,
          dots_learnt: learntThreshold(judged, before?.set.dots_learnt ?? USUAL_THRESHOLD),
          dots_corrected: [workers.length - added, added, removed],
          dots_number: range.number,
          dots_low: range.low,
          dots_high: range.high,
          dots_at_least: range.at_least,
        },
        row.id,
      );
      const counted = part
        ? { workers: null, workers_low: null, workers_high: null }
        : { workers: range.number, workers_low: range.low, workers_high: range.high };
      await keep(
        'count',
        {
          colony_id: row.set.colony_id,
          happened_at: row.set.happened_at,
          photo_id: row.id,
          workers_at_least: range.at_least,
          ...counted,
        },
        sheet?.id ?? uuid7(),
      );
      return say('counting-kept');
    });
  const ends = { low: range.low, high: range.high, least: range.at_least };
  const brood = dots.length - workers.length;
  return html`
    <div class="stack">
      <${DotStage}
        address=${address}
        ...${size}
        dots=${dots}
        chosen=${chosen}
        threshold=${threshold}
        body_px=${body_px}
        zoom=${ZOOMS[zoom] ?? 1}
        frame=${frame}
        onFrame=${mode === 'frame' ? setFrame : null}
        ruler=${ruler.ends}
        onRuler=${ruler.move}
        onTap=${onTap}
        onKey=${onKey}
      />
      <div role="status" aria-live="polite">
        ${
          looked || failed
            ? html`
                <p class="dot-sum">
                  <strong>${say('event-workers', { count: range.number })}</strong>
                </p>
                <p class="soft">
                  ${say(range.crowded ? 'counting-crowded' : 'counting-range', ends)}${brood > 0 && ' · '}
                  ${brood > 0 && say('counting-brood', { count: brood })}
                </p>
              `
            : html`
                <p class="dot-sum">${say('counting-looking')}</p>
              `
        }
      </div>
      ${
        failed &&
        html`
          <p role="alert" class="caution">${failed}</p>
        `
      }
      <label class="dot-slide">
        ${say('counting-plain')}
        <input
          type="range"
          min=${LOWEST}
          max=${HIGHEST}
          step="0.01"
          value=${threshold}
          onInput=${typed((text) => setThreshold(Number(text)))}
        />
      </label>
      <${Choice}
        label=${say('counting-tap')}
        value=${mode}
        onPick=${setMode}
        options=${choicesOf('counting-sets', ['worker', 'brood', 'frame', 'size'])}
      />
      <p class="soft">${HINTS[mode]?.()}</p>
      ${
        mode === 'frame' &&
        html`
          <button type="button" class="button" onClick=${() => setFrame(frameOf(null, size))}>
            ${say('counting-whole')}
          </button>
        `
      }
      ${ruler.form}
      <div class="wrap even">
        <button type="button" class="button" disabled=${!dots.length} onClick=${() => step(at < 0 ? 0 : -1)}>
          ${say('counting-previous')}
        </button>
        <button type="button" class="button" disabled=${!dots.length} onClick=${() => step(1)}>
          ${say('counting-next')}
        </button>
        <button type="button" class="button" disabled=${!dots[at]} onClick=${() => dots[at] && take(dots[at])}>
          ${say('counting-take-away')}
        </button>
        <button type="button" class="button" disabled=${zoom >= ZOOMS.length - 1} onClick=${() => setZoom(zoom + 1)}>
          ${say('counting-nearer')}
        </button>
        <button type="button" class="button" disabled=${zoom === 0} onClick=${() => setZoom(zoom - 1)}>
          ${say('counting-farther')}
        </button>
      </div>
      <p class="soft" aria-live="polite">${at >= 0 && dotInWords(dots, at, threshold)}</p>
      <label class="chip">
        <input type="checkbox" checked=${pale} onChange=${ticked(setPale)} />
        ${' '}${say('counting-pale')}
      </label>
      <label class="chip">
        <input type="checkbox" checked=${part} onChange=${ticked(setPart)} />
        ${' '}${say('counting-part')}
      </label>
      ${said}
      <button
        type="button"
        class="button main wide"
        disabled=${busy || !(looked || (failed && address))}
        onClick=${save}
      >
        ${say('counting-keep')}
      </button>
    </div>
  `;
}

/** @type {import('../counting/propose.js').Proposed[]} */
const NOTHING = [];
const isWorker = (/** @type {{what: string}} */ dot) => dot.what === 'worker';

/** What a tap does. @type {Record<string, () => string>} */
const HINTS = {
  worker: () => say('counting-hint-worker'),
  brood: () => say('counting-hint-brood'),
  frame: () => say('counting-hint-frame'),
  size: () => say('counting-hint-size'),
};

/** @param {Dot[]} dots @param {number} at @param {number} threshold */
function dotInWords(dots, at, threshold) {
  const { what, score } = /** @type {Dot} */ (dots[at]);
  const sure = score === null || score >= threshold + 0.1 ? 'yes' : 'no';
  return say('counting-dot', { at: at + 1, count: dots.length, what, sure });
}

/** What was corrected in the colony's other pictures. @param {PhotoRow[]} all @param {string} but */
function correctedIn(all, but) {
  const sum = { stood: 0, added: 0, removed: 0 };
  for (const { id, set } of all) {
    const [stood = 0, added = 0, removed = 0] = (id !== but && set.dots_corrected) || [];
    sum.stood += stood;
    sum.added += added;
    sum.removed += removed;
  }
  return sum;
}

/**
 * A picture's own bytes, from this phone or the server.
 * @param {string} id @returns {Promise<Blob>} rejects with words for the keeper
 */
async function pictureOf(id) {
  const here = await findPhoto(openStore().deviceId, id).catch(() => undefined);
  if (here) return here.blob;
  const response = await fetch(`/api/photos/${id}`).catch(() => {
    throw new Error(say('part-needs-server'));
  });
  if (!response.ok) throw new Error(say('photo-elsewhere'));
  return response.blob();
}

/**
 * What the worker proposes for a picture, anew when how it looks has changed and is still.
 * @param {PhotoRow} row @param {import('../counting/looking.js').How} how
 * @param {Looker | null} given one that runs already
 * @param {(found: import('../counting/looker.js').Looked) => void} onFound
 */
function useLooked(row, how, given, onFound) {
  const [address, setAddress] = useState('');
  const [looked, setLooked] = useState(/** @type {import('../counting/looker.js').Looked | null} */ (null));
  const [failed, setFailed] = useState('');
  const ask = useRef(() => {});
  const last = useRef(how);
  useEffect(() => {
    const looker = given ?? startLooker();
    let wanted = true;
    let made = '';
    /** @param {Blob} blob */
    const look = async (blob) => {
      const found = await looker.look(blob, row.set.sha256 ?? row.id, last.current);
      if (!found || !wanted) return;
      onFound(found);
      setLooked(found);
    };
    const fail = (/** @type {string} */ words) => wanted && setFailed(words);
    pictureOf(row.id).then(
      (blob) => {
        if (!wanted) return;
        made = URL.createObjectURL(blob);
        setAddress(made);
        ask.current = () => void look(blob).catch(() => fail(say('counting-failed')));
        ask.current();
      },
      (error) => fail(error.message),
    );
    return () => {
      wanted = false;
      if (!given) looker.end();
      if (made) URL.revokeObjectURL(made);
    };
  }, [row.id]);
  useEffect(() => {
    if (last.current === how) return undefined;
    last.current = how;
    const timer = setTimeout(ask.current, STILL_MS);
    return () => clearTimeout(timer);
  }, [how]);
  return { address, looked, failed };
}

/**
 * The two ends of a length that is known, and which it is.
 * @param {boolean} shown @param {{width_px: number, height_px: number}} size @param {string} colonyId
 * @param {(body_px: number) => void} setBody
 */
function useRuler(shown, { width_px, height_px }, colonyId, setBody) {
  const [ends, setEnds] = useState(
    /** @type {[Point, Point]} */ ([
      { x: width_px * 0.25, y: height_px / 2 },
      { x: width_px * 0.75, y: height_px / 2 },
    ]),
  );
  const colony = rows.value.get(colonyId)?.set ?? {};
  const vessel = rows.value.get(colony.vessel_id ?? '')?.set ?? {};
  const bore_mm = vessel.bore_mm ?? catalogue.value.vessels[vessel.vessel_code ?? '']?.bore_mm ?? null;
  const worker_mm = workerMm(colony, catalogue.value.species);
  const [spans, setSpans] = useState('worker');
  const [typed_mm, setTyped] = useState('');
  if (!shown) return { ends: null, move: setEnds, form: null };
  const known_mm = spans === 'bore' ? bore_mm : Number(typed_mm.replace(',', '.'));
  const measure = (/** @type {[Point, Point]} */ now, /** @type {string} */ by, /** @type {number | null} */ mm) => {
    const [one, other] = now;
    if (by === 'worker') setBody(Math.min(LONGEST_PX, Math.hypot(one.x - other.x, one.y - other.y)));
    else if (mm && mm > 0 && worker_mm) setBody(bodyByLength(one, other, mm, worker_mm));
  };
  const ways = ['worker', ...(worker_mm && bore_mm ? ['bore'] : []), ...(worker_mm ? ['length'] : [])];
  const form = html`
    <${Choice}
      label=${say('counting-spans')}
      value=${spans}
      onPick=${(/** @type {string} */ way) => {
        setSpans(way);
        measure(ends, way, way === 'bore' ? bore_mm : Number(typed_mm.replace(',', '.')));
      }}
      options=${choicesOf('counting-spans', ways).map(([code, words]) => [
        code,
        code === 'bore' ? labelled(words, say('measure-mm', { mm: String(bore_mm) })) : words,
      ])}
    />
    ${
      spans === 'length' &&
      html`
        <label>
          ${say('counting-length')}
          <input
            inputmode="decimal"
            value=${typed_mm}
            onInput=${typed((text) => {
              setTyped(text);
              measure(ends, 'length', Number(text.replace(',', '.')));
            })}
          />
        </label>
      `
    }
  `;
  return {
    ends,
    move: (/** @type {[Point, Point]} */ now) => {
      setEnds(now);
      measure(now, spans, known_mm);
    },
    form,
  };
}
