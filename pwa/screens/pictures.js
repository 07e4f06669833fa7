// The pictures of a colony: take one, each of them large, counted with its dots, and how it grew from one to the next.
import { useEffect, useRef, useState } from 'preact/hooks';
import { html, Icon } from '../components/html.js';
import { Photo } from '../components/photo.js';
import { Sheet } from '../components/sheet.js';
import { SaveState } from '../components/states.js';
import { startLooker } from '../counting/looker.js';
import { tell, voidLog } from '../signals/actions.js';
import { useKind } from '../signals/history.js';
import { session } from '../signals/session.js';
import { say } from '../words/say.js';
import { fullDay } from '../words/shown.js';
import { CountPicture } from './count-picture.js';
import { Growth } from './growth.js';
import { keepPicture, smallOf } from './taking.js';

/** @typedef {import('../care/overlay.js').ShownRow<'photo'>} PhotoRow */

const PICTURES_SHOWN = 24;

/** The pictures of a colony, newest first. @param {string} colonyId @returns {PhotoRow[]} */
const usePictures = (colonyId) => useKind('photo').filter((row) => row.set.colony_id === colonyId);

/**
 * The button that takes a picture.
 * @param {{colonyId: string, words: string, onTaken?: (id: string) => void, onOpen?: () => void,
 *   looker?: {current: import('../counting/looker.js').Looker | null}}} props
 *   `onOpen`: the camera opens; `looker`: makes the picture small, and looks at it from then on
 */
function Take({ colonyId, words, onTaken, onOpen, looker }) {
  const [busy, setBusy] = useState(false);
  /** @param {Event} event */
  const take = async (event) => {
    const field = /** @type {HTMLInputElement} */ (event.target);
    const [file] = field.files ?? [];
    field.value = '';
    if (!file) return;
    setBusy(true);
    try {
      const id = await keepPicture(colonyId, await smallOf(file, looker?.current ?? undefined));
      onTaken?.(id);
    } catch (error) {
      if (/** @type {Error} */ (error).name === 'NotSaved') throw error;
      tell(/** @type {Error} */ (error).message);
    } finally {
      setBusy(false);
    }
  };
  return html`
    <label class="button wide file">
      <${Icon} name="photo" />
      ${busy ? say('photo-busy') : words}
      <input type="file" accept="image/*" capture="environment" disabled=${busy} onClick=${onOpen} onChange=${take} />
    </label>
  `;
}

/** Take a picture and count on it, in the form of a count. @param {{colonyId: string}} props */
export function CountNow({ colonyId }) {
  const [taken, setTaken] = useState('');
  const looker = useRef(/** @type {ReturnType<typeof startLooker> | null} */ (null));
  const all = usePictures(colonyId);
  const row = all.find((each) => each.id === taken);
  useEffect(() => () => looker.current?.end(), []);
  // while the person takes the picture there is time: a worker starts, and becomes quick
  const onOpen = () => {
    looker.current ??= startLooker();
    void looker.current.practise();
  };
  return row
    ? html`
        <${CountPicture} key=${row.id} row=${row} all=${all} looker=${looker.current} />
      `
    : html`
        <${Take}
          colonyId=${colonyId}
          words=${say('counting-open')}
          onTaken=${setTaken}
          onOpen=${onOpen}
          looker=${looker}
        />
      `;
}

/**
 * Its pictures: take one, how it grew side by side, and each of them large.
 * @param {{colonyId: string, name: string}} props
 */
export function Photos({ colonyId, name }) {
  const [large, setLarge] = useState('');
  const every = usePictures(colonyId);
  const all = every.slice(0, PICTURES_SHOWN);
  const at = all.findIndex((row) => row.id === large);
  return html`
    <section class="stack" aria-label=${say('photo-title')}>
      <h2>${say('photo-title')}</h2>
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
                    aria-label=${say('photo-large', { day: day(row) })}
                    onClick=${() => setLarge(row.id)}
                  >
                    <${Photo} id=${row.id} size=${row.set} words="" />
                  </button>
                  <p>${day(row)}</p>
                  ${
                    typeof row.set.dots_number === 'number' &&
                    html`
                      <p>${say('event-workers', { count: row.set.dots_number })}</p>
                    `
                  }
                  ${
                    row.state !== 'synced' &&
                    html`
                      <p>
                        <${SaveState} state=${row.state} />
                      </p>
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
      <${Take} colonyId=${colonyId} words=${say('photo-take')} />
      <${Growth} all=${every} name=${name} />
    </section>
  `;
}

/**
 * One picture as large as the phone, and the way to its neighbours.
 * @param {{all: PhotoRow[], at: number, name: string, onTurn: (id: string) => void}} props
 */
function Large({ all, at, name, onTurn }) {
  const row = /** @type {PhotoRow} */ (all[at]);
  const [counts, setCounts] = useState('');
  const turn = (/** @type {PhotoRow | undefined} */ to, /** @type {string} */ words) => html`
    <button type="button" class="button" disabled=${!to} onClick=${() => onTurn(to?.id ?? '')}>${words}</button>
  `;
  if (counts === row.id) {
    return html`
      <${Sheet} title=${day(row)} onClose=${() => onTurn('')}>
        <${CountPicture} key=${row.id} row=${row} all=${all} />
      </${Sheet}>
    `;
  }
  return html`
    <${Sheet} title=${day(row)} onClose=${() => onTurn('')}>
      <${Photo} key=${row.id} id=${row.id} size=${row.set} words=${say('photo-of', { name, day: day(row) })} />
      ${
        session.value?.role !== 'stand_in' &&
        html`
          <button type="button" class="button main wide" onClick=${() => setCounts(row.id)}>
            <${Icon} name="count" />
            ${say(row.set.dots ? 'counting-again' : 'counting-open')}
          </button>
        `
      }
      ${
        all.length > 1 &&
        html`
          <div class="wrap even">${turn(all[at + 1], say('photo-older'))}${turn(all[at - 1], say('photo-newer'))}</div>
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
        ${say('photo-remove')}
      </button>
    </${Sheet}>
  `;
}

/** @param {PhotoRow} row */
const day = (row) => fullDay(row.happened_ms ?? 0);
