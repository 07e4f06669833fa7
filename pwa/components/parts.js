// Parts of the screens that are fetched when they are first shown: sheet, chips, stepper, water level, figures; what
// may fail; what the server is asked.
import { useEffect, useRef, useState } from 'preact/hooks';
import { get } from '../signals/people.js';
import { saving } from '../signals/saving.js';
import { frameText } from '../text/en/frame.js';
import { lookText } from '../text/en/look.js';
import { partsText } from '../text/en/parts.js';
import { inDegrees } from './degrees.js';
import { html, Icon } from './html.js';
import { BOTTOM, TOP, TubeDrawing } from './tube.js';

const VIEW_HEIGHT = 124;
const KEY_STEPS = /** @type {Record<string, number>} */ ({
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 5,
  PageDown: -5,
});

/**
 * A sheet that rises from the lower edge, where the thumb is. The browser's own dialog keeps focus inside.
 * @param {{title: string, onClose: () => void, children: any}} props
 */
export function Sheet({ title, onClose, children }) {
  const ref = useRef(/** @type {any} */ (null));
  const left = useRef(false);
  useEffect(() => {
    const dialog = ref.current;
    const before = document.activeElement;
    if (!dialog.open) dialog.showModal();
    return () => {
      left.current = true;
      dialog.close(); // while it is open, nothing beneath it takes the focus
      if (before instanceof HTMLElement && before.isConnected) before.focus({ preventScroll: true });
    };
  }, []);
  // a dialog tells later that it closed: by then another sheet may be open, which that must not close
  const closed = () => {
    if (!left.current) onClose();
  };
  const onBackdrop = (/** @type {any} */ event) => {
    if (event.target === ref.current) ref.current.close();
  };
  return html`
    <dialog class="sheet" ref=${ref} aria-label=${title} onClose=${closed} onCancel=${closed} onClick=${onBackdrop}>
      <div class="sheet-head">
        <h2 class="grow">${title}</h2>
        <button type="button" class="button quiet" onClick=${() => ref.current.close()}>
          <${Icon} name="close" />
          ${frameText.close}
        </button>
      </div>
      <div class="body">${children}</div>
    </dialog>
  `;
}

/**
 * One of several: big chips that a thumb can hit.
 * @param {{label: string, options: Array<[string, string]>, value: string, onPick: (value: string) => void,
 *   hideLabel?: boolean}} props
 */
export const Choice = ({ label, options, value, onPick, hideLabel = false }) => html`
  <div role="group" aria-label=${label} class="choice">
    ${
      !hideLabel &&
      html`
        <span aria-hidden="true">${label}</span>
      `
    }
    <div class="wrap">
      ${options.map(
        ([code, words]) => html`
          <button type="button" class="chip" aria-pressed=${String(code === value)} onClick=${() => onPick(code)}>
            ${words}
          </button>
        `,
      )}
    </div>
  </div>
`;

/**
 * Several of several.
 * @param {{label: string, options: Array<[string, string]>, values: string[],
 *   onChange: (values: string[]) => void}} props
 */
export function ManyChoice({ label, options, values, onChange }) {
  const toggle = (/** @type {string} */ code) =>
    onChange(values.includes(code) ? values.filter((each) => each !== code) : [...values, code]);
  return html`
    <div role="group" aria-label=${label} class="choice">
      <span aria-hidden="true">${label}</span>
      <div class="wrap">
        ${options.map(
          ([code, words]) => html`
            <button
              type="button"
              class="chip"
              aria-pressed=${String(values.includes(code))}
              onClick=${() => toggle(code)}
            >
              ${words}
            </button>
          `,
        )}
      </div>
    </div>
  `;
}

/**
 * The step at an amount, so that 1, 2, 3 drops and 40, 45, 50 seeds both go by single taps.
 * @param {number} value
 * @param {number} least
 */
function stepAt(value, least) {
  if (value >= 100) return Math.max(least, 10);
  return value >= 20 ? Math.max(least, 5) : least;
}

/**
 * An amount in real units, changed by two big buttons; the steps grow with the amount.
 * @param {{label: string, value: number, step: number, most: number, unit: string,
 *   onChange: (value: number) => void}} props
 */
export function Stepper({ label, value, step, most, unit, onChange }) {
  const set = (/** @type {number} */ next) => onChange(Math.min(most, Math.max(step, Math.round(next * 100) / 100)));
  return html`
    <div role="group" aria-label=${label} class="stepper">
      <button
        type="button"
        class="button"
        aria-label=${`${label}: less`}
        disabled=${value <= step}
        onClick=${() => set(value - stepAt(value - step, step))}
      >
        <${Icon} name="less" />
      </button>
      <p>
        <output>${Math.round(value * 100) / 100}</output>
        <small>${unit}</small>
      </p>
      <button
        type="button"
        class="button"
        aria-label=${`${label}: more`}
        onClick=${() => set(value + stepAt(value, step))}
      >
        <${Icon} name="add" />
      </button>
    </div>
  `;
}

/**
 * The water level as a tube whose level is dragged until it matches the real one; a slider for keys and screen readers.
 * @param {{label: string, share: number, step: number, words: string, onChange: (share: number) => void}} props
 *   `share` 0 to 1, snapped to multiples of `step`
 */
export function TubeInput({ label, share, step, words, onChange }) {
  const ref = useRef(/** @type {any} */ (null));
  const set = (/** @type {number} */ next) => onChange(Math.min(1, Math.max(0, Math.round(next / step) * step)));
  /** @param {PointerEvent} event */
  function follow(event) {
    const box = ref.current.getBoundingClientRect();
    const y = ((event.clientY - box.top) / box.height) * VIEW_HEIGHT;
    set((BOTTOM - y) / (BOTTOM - TOP));
  }
  /** @param {PointerEvent} event */
  function grasp(event) {
    ref.current.setPointerCapture?.(event.pointerId);
    follow(event);
  }
  /** @param {KeyboardEvent} event */
  function key(event) {
    const steps = KEY_STEPS[event.key];
    if (steps === undefined && event.key !== 'Home' && event.key !== 'End') return;
    event.preventDefault();
    set(event.key === 'Home' ? 0 : event.key === 'End' ? 1 : share + (steps ?? 0) * step);
  }
  return html`
    <svg
      ref=${ref}
      class="tube need-water"
      viewBox="0 0 48 124"
      role="slider"
      tabindex="0"
      aria-label=${label}
      aria-orientation="vertical"
      aria-valuemin="0"
      aria-valuemax="100"
      aria-valuenow=${Math.round(share * 100)}
      aria-valuetext=${words}
      onPointerDown=${grasp}
      onPointerMove=${(/** @type {PointerEvent} */ e) => {
        if (e.buttons) follow(e);
      }}
      onKeyDown=${key}
    >
      <${TubeDrawing} need="water" share=${share} due=${null} />
    </svg>
  `;
}

/** What a drawing shows, as a table behind it. @param {{heads: string[], rows: string[][]}} props */
export const Figures = ({ heads, rows }) => html`
  <details>
    <summary>${partsText.table}</summary>
    <table>
      <thead>
        <tr>
          ${heads.map(
            (head) => html`
              <th scope="col">${head}</th>
            `,
          )}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (cells) => html`
            <tr>
              ${cells.map(
                (cell) => html`
                  <td>${cell}</td>
                `,
              )}
            </tr>
          `,
        )}
      </tbody>
    </table>
  </details>
`;

/** Keep a choice on this phone; an empty one is as the phone itself. @param {string} name @param {string} next */
const keepHere = (name, next) => (next ? localStorage.setItem(name, next) : localStorage.removeItem(name));

/** In which light the app is shown. */
export function LookChoice() {
  const [look, setLook] = useState(document.documentElement.dataset.look ?? '');
  /** @param {string} next */
  function pick(next) {
    setLook(next);
    if (next) document.documentElement.dataset.look = next;
    else delete document.documentElement.dataset.look;
    keepHere('look', next);
  }
  return html`
    <${Choice}
      label=${lookText.light}
      value=${look}
      onPick=${pick}
      options=${[
        ['', lookText.as_phone],
        ['light', lookText.day],
        ['dark', lookText.dark],
        ['red', lookText.red],
      ]}
    />
    <p class="soft">${lookText.red_why}</p>
  `;
}

/** In which degrees it shows temperatures. */
export function DegreesChoice() {
  const [degrees, setDegrees] = useState(localStorage.getItem('degrees') ?? '');
  /** @param {string} next */
  function pick(next) {
    setDegrees(next);
    keepHere('degrees', next);
  }
  return html`
    <${Choice}
      label=${lookText.degrees}
      value=${degrees}
      onPick=${pick}
      options=${[
        ['', lookText.as_phone],
        ['c', '°C'],
        ['f', '°F'],
      ]}
    />
  `;
}

/**
 * Attempt and say: run what may fail, keep its button quiet meanwhile, and show the words of the failure beside it.
 * @returns {{attempt: (work: () => any) => Promise<boolean>, busy: boolean, said: any, say: (words: string) => void}}
 *   `attempt` resolves to whether it went well; put `said` where the words belong
 */
export function useAttempt() {
  const [words, setWords] = useState('');
  const [good, setGood] = useState(true);
  const [busy, setBusy] = useState(false);
  const alive = useRef(0);
  /** @param {() => any} work a text that it returns is shown as good news */
  async function attempt(work) {
    const mine = (alive.current += 1);
    setBusy(true);
    setWords('');
    try {
      const told = await work();
      if (typeof told === 'string' && mine === alive.current) {
        setGood(true);
        setWords(told);
      }
      return true;
    } catch (problem) {
      if (mine === alive.current) {
        setGood(false);
        setWords(/** @type {Error} */ (problem).message);
      }
      return false;
    } finally {
      if (mine === alive.current) setBusy(false);
    }
  }
  /** @param {string} text what is wrong with a form before anything is tried */
  const say = (text) => {
    setGood(false);
    setWords(text);
  };
  const said =
    words &&
    (good
      ? html`
          <p role="status">${words}</p>
        `
      : html`
          <p role="alert" class="caution">${words}</p>
        `);
  return { attempt, busy, said, say };
}

/** A number as people type it; null for nothing, NaN where it is none. @param {string} text */
export const numberOf = (text) => (text === '' ? null : Number(text.replace(',', '.')));

/** @param {any} form a form element @returns {(name: string) => string} its fields, trimmed */
export function textsOf(form) {
  const data = new FormData(form);
  return (name) => String(data.get(name) ?? '').trim();
}

/** Why there is no answer. @param {any} problem @returns {string} */
export const whyNot = (problem) => (problem.code === 'offline' ? partsText.needs_server : inDegrees(problem.message));

/**
 * Ask when first shown, when the connection comes back, and whenever `when` changes. An answer that is there stays
 * when a later question fails, so that a form does not go from under the hand.
 * @param {string} path @param {unknown} [when]
 * @returns {{answer: any, problem: any, ask: () => Promise<void>}} both null while the first question is under way;
 *   `problem` is that of the last question
 */
export function useAnswer(path, when = null) {
  const [found, setFound] = useState(/** @type {{answer: any, problem: any}} */ ({ answer: null, problem: null }));
  const { online } = saving.value;
  const ask = async () =>
    get(path).then(
      (answer) => setFound({ answer, problem: null }),
      (problem) => setFound(({ answer }) => ({ answer, problem })),
    );
  useEffect(() => {
    void ask();
  }, [path, when, online]);
  return { ...found, ask };
}
