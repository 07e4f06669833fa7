// What a signed-out phone shows: claim the shelf, join one, or open a pass.
import { useEffect, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { textsOf } from '../components/forms.js';
import { html } from '../components/html.js';
import { Install } from '../components/install.js';
import { lazy } from '../components/lazy.js';
import { Empty } from '../components/states.js';
import { askToPair, claim, collectPairing, lookAtCode, openPass } from '../signals/people.js';
import { go, hideFragment, route } from '../signals/route.js';
import { session } from '../signals/session.js';
import { LanguageChoice } from '../components/preferences.js';
import { say } from '../words/say.js';

const LeftBehind = lazy(() => import('../components/left-behind.js'), 'LeftBehind');

export function StartScreen() {
  const { name, id } = route.value;
  const { ended } = session.value ?? { ended: true }; // whoever is out comes in again by any of the ways
  const [way, setWay] = useState(name === 'claim' || name === 'pass' ? name : ended ? '' : 'leave');
  const [key] = useState(id);
  const [begin, setBegin] = useState(/** @type {string | null | undefined} */ (undefined));
  useEffect(() => {
    if (id) {
      hideFragment(); // the secret leaves the address bar at once
    } else {
      void lookAtCode('').then((seen) => setBegin(seen.begin));
    }
  }, []);
  if (way === 'leave') {
    go('#/round');
    return null;
  }
  return html`
    <div class="frame">
      <header class="top">
        <span class="mark">Broodshelf</span>
      </header>
      <main class="screen">
        ${
          way === '' &&
          html`
            <${Empty} title="">
              <h1>${say('start-welcome')}</h1>
              <p class="lead">${say('start-what')}</p>
            </${Empty}>
            <button type="button" class="button main wide" onClick=${() => setWay('claim')}>
              ${begin || say('start-have-code')}
            </button>
            <button type="button" class="button wide" onClick=${() => setWay('join')}>${say('start-join-one')}</button>
            <button type="button" class="button wide" onClick=${() => setWay('pass')}>${say('start-have-pass')}</button>
            ${
              localStorage.getItem('device') &&
              html`
                <${LeftBehind} me=${ended ? null : session.value} />
              `
            }
            <${LanguageChoice} label=${say('start-language')} />
            <${Install} />
          `
        }
        ${
          way === 'claim' &&
          html`
            <${Claim} code=${name === 'claim' ? key : ''} />
          `
        }
        ${
          way === 'join' &&
          html`
            <${Join} />
          `
        }
        ${
          way === 'pass' &&
          html`
            <${Pass} secret=${name === 'pass' ? key : ''} />
          `
        }
        ${
          (way || session.value) &&
          html`
            <button type="button" class="button" onClick=${() => (way ? setWay('') : go('#/round'))}>
              ${say('start-back')}
            </button>
          `
        }
      </main>
    </div>
  `;
}

/** @param {{code: string}} props without a code the server says whether it needs one */
function Claim({ code }) {
  const { attempt, busy, said } = useAttempt();
  const [known, setKnown] = useState('');
  const look = async (/** @type {string} */ text) => setKnown((text && (await lookAtCode(text)).person_name) || '');
  useEffect(() => {
    void look(code);
  }, []);
  /** @param {Event} event */
  function submit(event) {
    event.preventDefault();
    const text = textsOf(event);
    void attempt(async () => {
      await claim({
        code: text('code') || undefined,
        ...(known ? {} : { person_name: text('person'), household_name: text('household'), zone: text('zone') }),
      });
      go(known ? '#/round' : '#/colony/new');
    });
  }
  return html`
    <h1>${known ? say('start-known', { name: known }) : say('start-claim')}</h1>
    <form class="stack" onSubmit=${submit}>
      <label>
        ${say('start-code')}${' '}
        <small>${say('start-code-hint')}</small>
        <input
          name="code"
          defaultValue=${code}
          autocomplete="one-time-code"
          autocapitalize="characters"
          onChange=${(/** @type {Event & {target: HTMLInputElement}} */ e) => look(e.target.value.trim())}
        />
      </label>
      ${
        !known &&
        html`
          <label>
            ${say('start-your-name')}
            <input name="person" required maxlength="60" autocomplete="given-name" />
          </label>
          <details>
            <summary>${say('start-more')}</summary>
            <label>
              ${say('start-shelf-name')}
              <input name="household" required maxlength="80" defaultValue=${say('start-our-shelf')} />
            </label>
            <label>
              ${say('start-zone')}
              <input name="zone" required defaultValue=${Intl.DateTimeFormat().resolvedOptions().timeZone} />
            </label>
          </details>
        `
      }
      ${said}
      <button class="button main wide" disabled=${busy}>${known ? say('start-come-in') : say('start-claim-it')}</button>
    </form>
  `;
}

const ASK_EVERY_MS = 2_000;

function Join() {
  const [asked, setAsked] = useState(/** @type {import('../answers.d.ts').Pairing | null} */ (null));
  const { attempt, said } = useAttempt();
  useEffect(() => {
    void attempt(async () => setAsked(await askToPair()));
  }, []);
  useEffect(() => {
    if (!asked) return undefined;
    const timer = setInterval(
      () =>
        void attempt(async () => {
          if (await collectPairing(asked)) go('#/round');
        }),
      ASK_EVERY_MS,
    );
    return () => clearInterval(timer);
  }, [asked]);
  return html`
    <h1>${say('start-join')}</h1>
    ${
      asked &&
      html`
        <p>${say('start-join-how')}</p>
        <p class="code">${asked.code}</p>
        <div class="qr" role="img" aria-label=${asked.code} dangerouslySetInnerHTML=${{ __html: asked.qr_svg }} />
        <p class="soft" role="status">${say('start-waiting')}</p>
      `
    }
    ${said}
  `;
}

/** @param {{secret: string}} props */
function Pass({ secret }) {
  const { attempt, busy, said } = useAttempt();
  const [preview, setPreview] = useState(/** @type {import('../answers.d.ts').PassPreview | null} */ (null));
  /** @param {{secret: string} | {code: string}} by */
  const open = (by) =>
    attempt(async () => {
      const seen = await openPass(by);
      if (seen) setPreview(seen);
      else go('#/round');
    });
  /** @param {Event} event */
  function submit(event) {
    event.preventDefault();
    void open({ code: textsOf(event)('code') });
  }
  if (preview) {
    return html`
      <h1>${preview.name}</h1>
      <p>
        ${say('start-only-a-look', { count: preview.colony_ids.length, from: preview.starts_on, to: preview.ends_on })}
      </p>
      <p>${preview.instructions ?? ''}</p>
    `;
  }
  if (secret) {
    return html`
      <h1>${say('start-handed')}</h1>
      <p class="lead">${say('start-handed-what')}</p>
      ${said}
      <button type="button" class="button main wide" disabled=${busy} onClick=${() => open({ secret })}>
        ${say('start-open-pass')}
      </button>
    `;
  }
  return html`
    <h1>${say('start-pass')}</h1>
    <form class="stack" onSubmit=${submit}>
      <label>
        ${say('start-code')}${' '}
        <small>${say('start-pass-hint')}</small>
        <input name="code" required autocapitalize="characters" autocomplete="off" />
      </label>
      ${said}
      <button class="button main wide" disabled=${busy}>${say('start-open-pass')}</button>
    </form>
  `;
}
