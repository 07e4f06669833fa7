// At a tube: a label scanned or typed inside the app opens that colony's log, without a connection too.
import { useEffect, useRef, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { textsOf } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { readCode, shortCode } from '../care/short-code.js';
import { watchForCodes } from '../signals/camera.js';
import { go } from '../signals/route.js';
import { rows } from '../signals/rows.js';
import { LogSheet } from './log.js';
import { coloniesInOrder } from '../components/colonies.js';
import { say } from '../words/say.js';

/** Here and not in the style sheet, which every phone downloads. */
const FINDER = {
  width: '100%',
  aspectRatio: '1',
  objectFit: 'cover',
  borderRadius: 'var(--round)',
  background: '#000',
};

/** @param {{code: string}} props */
export function AtScreen({ code }) {
  const wanted = readCode(code);
  const found = wanted ? coloniesInOrder().filter((colony) => shortCode(colony.id) === wanted) : [];
  const only = found.length === 1 ? found[0] : undefined;
  const [closed, setClosed] = useState(false);
  if (only && !closed) {
    const done = () => {
      setClosed(true);
      go(`#/colony/${only.id}`);
    };
    return html`
      <h1>${rows.value.get(only.id)?.set.name}</h1>
      <${LogSheet} colonyId=${only.id} onClose=${done} />
    `;
  }
  return html`
    <h1>${say('label-scan-title')}</h1>
    ${
      found.length > 1 &&
      html`
        <p>${say('label-several')}</p>
        <div class="wrap">
          ${found.map(
            (colony) => html`
              <a class="button" href=${`#/colony/${colony.id}`}>${colony.set.name}</a>
            `,
          )}
        </div>
      `
    }
    ${
      code &&
      !found.length &&
      html`
        <p role="alert" class="caution">${say('label-unknown')}</p>
      `
    }
    <${Finder} />
    <${Typed} />
  `;
}

function Finder() {
  const video = useRef(/** @type {HTMLVideoElement | null} */ (null));
  const [watching] = useState(() => new AbortController());
  const [open, setOpen] = useState(false);
  const { attempt, busy, said, refuse } = useAttempt();
  useEffect(() => () => watching.abort(), []);
  /** @param {string} text */
  function seen(text) {
    const code = readCode(text);
    if (!code) return refuse(say('label-foreign'));
    watching.abort();
    return go(`#/at/${code}`);
  }
  const start = () =>
    attempt(async () => {
      try {
        await watchForCodes(/** @type {HTMLVideoElement} */ (video.current), seen, watching.signal);
        setOpen(true);
      } catch {
        throw new Error(say('label-no-camera'));
      }
    });
  return html`
    <div class="stack">
      <video ref=${video} style=${FINDER} hidden=${!open} playsinline muted aria-label=${say('label-camera')}></video>
      ${
        open
          ? html`
              <p class="soft">${say('label-camera')}</p>
            `
          : html`
              <button type="button" class="button main wide" disabled=${busy} onClick=${start}>
                <${Icon} name="scan" />
                ${say('label-start')}
              </button>
            `
      }${said}
    </div>
  `;
}

function Typed() {
  const { said, refuse } = useAttempt();
  /** @param {Event} event */
  function open(event) {
    event.preventDefault();
    const code = readCode(textsOf(event)('code'));
    if (code) go(`#/at/${code}`);
    else refuse(say('label-unknown'));
  }
  return html`
    <form class="card" onSubmit=${open}>
      <label>
        ${say('label-typed')}
        <input name="code" required autocomplete="off" autocapitalize="characters" spellcheck=${false} />
      </label>
      ${said}
      <button class="button">${say('label-open')}</button>
    </form>
  `;
}
