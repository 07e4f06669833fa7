// The frame: what is saved, where we are, and the screen itself.
import { html, Icon } from '../components/html.js';
import { goOver } from '../components/new-version.js';
import { Toast } from '../components/states.js';
import { route } from '../signals/route.js';
import { unsent } from '../signals/rows.js';
import { saving } from '../signals/saving.js';
import { session } from '../signals/session.js';
import { know } from '../signals/sync.js';
import { lazy } from '../components/lazy.js';
import { RoundScreen } from './round.js';
import { choicesOf, say, sayIf, sayOf } from '../words/say.js';
import { fullDay } from '../words/shown.js';

const AtScreen = lazy(() => import('./at.js'), 'AtScreen', 'charts');
const AttentionScreen = lazy(() => import('./attention.js'), 'AttentionScreen');
const ColonyScreen = lazy(() => import('./colony.js'), 'ColonyScreen');
const GoneScreen = lazy(() => import('./past.js'), 'GoneScreen', 'online');
const HandOverScreen = lazy(() => import('./handover.js'), 'HandOverScreen');
const LabelsScreen = lazy(() => import('./labels.js'), 'LabelsScreen', 'charts');
const LarderScreen = lazy(() => import('./larder.js'), 'LarderScreen');
const LookScreen = lazy(() => import('./look.js'), 'LookScreen', 'online');
const PaperScreen = lazy(() => import('./paper.js'), 'PaperScreen');
const PlacesScreen = lazy(() => import('./places.js'), 'PlacesScreen');
const ReckonScreen = lazy(() => import('./reckon.js'), 'ReckonScreen', 'online');
const SettingsScreen = lazy(() => import('./settings.js'), 'SettingsScreen');
const ShelfScreen = lazy(() => import('./shelf.js'), 'ShelfScreen');
const StandInScreen = lazy(() => import('./standin.js'), 'StandInScreen');
const StartScreen = lazy(() => import('./start.js'), 'StartScreen', 'once');
const WelcomeScreen = lazy(() => import('./welcome.js'), 'WelcomeScreen');

export function App() {
  const me = session.value;
  const { name, id } = route.value;
  if (me === undefined) return null;
  if (me === null || ['claim', 'pass', 'join'].includes(name)) {
    return html`
      <${StartScreen} />
    `;
  }
  const stand_in = me.role === 'stand_in';
  return html`
    <div class="frame">
      <${Top} />
      <${Banners} />
      <main class="screen" id="screen">${screen(name, id, stand_in)}</main>
      ${
        !stand_in &&
        html`
          <${Navigation} here=${name} />
        `
      }
      <${Toast} />
    </div>
  `;
}

/** What stands at each address of a keeper's. @type {Record<string, (id: string) => import('preact').VNode>} */
const KEEPERS = {
  approve: (code) => html`
    <${SettingsScreen} code=${code} />
  `,
  at: (code) => html`
    <${AtScreen} code=${code} key=${code} />
  `,
  attention: () => html`
    <${AttentionScreen} />
  `,
  colony: (id) => html`
    <${ColonyScreen} id=${id} key=${id} />
  `,
  gone: () => html`
    <${GoneScreen} />
  `,
  handover: () => html`
    <${HandOverScreen} />
  `,
  labels: () => html`
    <${LabelsScreen} />
  `,
  larder: () => html`
    <${LarderScreen} />
  `,
  look: () => html`
    <${LookScreen} />
  `,
  paper: (id) => html`
    <${PaperScreen} id=${id} key=${id} />
  `,
  places: () => html`
    <${PlacesScreen} />
  `,
  reckon: (code) => html`
    <${ReckonScreen} code=${code} />
  `,
  round: () => html`
    <${RoundScreen} />
  `,
  settings: () => html`
    <${SettingsScreen} code="" />
  `,
  shelf: () => html`
    <${ShelfScreen} />
  `,
  welcome: (id) => html`
    <${WelcomeScreen} id=${id} />
  `,
};
/** And of a stand-in's. @type {Record<string, () => import('preact').VNode>} */
const STAND_INS = {
  attention: () => html`
    <${AttentionScreen} />
  `,
  round: () => html`
    <${StandInScreen} />
  `,
};

/** @param {string} name @param {string} id @param {boolean} stand_in */
function screen(name, id, stand_in) {
  const screens = stand_in ? STAND_INS : KEEPERS;
  return (screens[name] ?? screens.round)?.(id);
}

function Top() {
  const { waiting, attention } = unsent.value;
  const { online, syncing, joining } = saving.value;
  const standing = () => {
    if (!online) return say('saving-offline');
    if (joining !== null) return say('saving-joining');
    if (syncing && waiting) return say('saving-syncing');
    return waiting || attention ? '' : say('saving-synced');
  };
  const words = [
    attention ? say('saving-attention', { count: attention }) : '',
    waiting ? say('saving-waiting', { count: waiting }) : '',
    standing(),
  ]
    .filter(Boolean)
    .join(' · ');
  return html`
    <header class="top">
      <span class="mark">${say('frame-name')}</span>
      <span class="state" role="status">
        ${
          attention
            ? html`
                <a href="#/attention">${words}</a>
              `
            : words
        }
      </span>
    </header>
  `;
}

/** How far off the phone's clock is, in the largest unit that fits. @param {number} min */
function clockInWords(min) {
  const off = Math.abs(min);
  /** @type {[number, string]} */
  const [length, unit] = off < 120 ? [1, 'minutes'] : off < 2880 ? [60, 'hours'] : [1440, 'days'];
  return sayOf('frame-clock', min > 0 ? 'ahead' : 'behind', { count: Math.round(off / length), unit });
}

function Banners() {
  const { problem, update_ready, update_waits, clock_off_min, told, emptied } = saving.value;
  const ended = session.value?.ended;
  return html`
    ${
      ended &&
      html`
        <div class="banner" role="alert">
          <span>${sayIf('frame-banner-ended', ended) || say('frame-banner-signed-out')}</span>
          <a class="button" href="#/join">${say('frame-banner-sign-in')}</a>
          <a class="button" href="#/attention">${say('frame-banner-unsent')}</a>
        </div>
      `
    }
    ${
      problem &&
      !ended &&
      html`
        <div class="banner" role="alert">
          <span>${sayIf('saving-problem', problem.code) || problem.detail}</span>
        </div>
      `
    }
    ${
      emptied &&
      html`
        <div class="banner" role="alert">
          <span>${say('frame-banner-emptied')}</span>
          <button type="button" class="button" onClick=${() => know({ emptied: false })}>
            ${say('frame-banner-understood')}
          </button>
        </div>
      `
    }
    ${
      told &&
      html`
        <div class="banner" role="alert">
          <span>${told.words ?? sayOf('saving-told', told.code, { day: fullDay(told.backup_ms ?? 0) })}</span>
        </div>
      `
    }
    ${
      Math.abs(clock_off_min) >= 5 &&
      html`
        <div class="banner calm">
          <span>${clockInWords(clock_off_min)}</span>
        </div>
      `
    }
    ${
      update_waits &&
      html`
        <div class="banner calm" role="status">
          <span>${say('frame-banner-update-waits')}</span>
        </div>
      `
    }
    ${
      update_ready &&
      html`
        <div class="banner calm">
          <span>${say('frame-banner-update')}</span>
          <button type="button" class="button" onClick=${update}>${say('frame-banner-use-it')}</button>
        </div>
      `
    }
  `;
}

/**
 * How long the new worker may take before a reload makes room for it: Chromium can leave it behind one that is idle.
 */
const TAKES_OVER_MS = 2000;

async function update() {
  const registration = await navigator.serviceWorker.getRegistration();
  registration?.waiting?.postMessage('skip-waiting');
  setTimeout(goOver, TAKES_OVER_MS); // mostly it has taken over by then, which reloads too
}

/** @param {{here: string}} props */
const Navigation = ({ here }) => html`
  <nav class="bottom" aria-label=${say('frame-screens')}>
    <ul>
      ${choicesOf('frame-nav', ['round', 'shelf', 'larder', 'handover', 'settings']).map(
        ([name, words]) => html`
          <li>
            <a
              href=${`#/${name}`}
              aria-current=${name === here || (name === 'shelf' && here === 'colony') ? 'page' : null}
            >
              <${Icon} name=${name} />
              ${words}
            </a>
          </li>
        `,
      )}
    </ul>
  </nav>
`;
