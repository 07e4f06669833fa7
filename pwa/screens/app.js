// The frame: what is saved, where we are, and the screen itself.
import { html, Icon } from '../components/html.js';
import { Toast } from '../components/states.js';
import { route } from '../signals/route.js';
import { unsent } from '../signals/rows.js';
import { saving } from '../signals/saving.js';
import { session } from '../signals/session.js';
import { t } from '../text/en.js';
import { Lazy } from './lazy.js';
import { RoundScreen } from './round.js';

export function App() {
  const me = session.value;
  const { name, id } = route.value;
  if (me === undefined) return null;
  if (me === null || ['claim', 'pass', 'join'].includes(name)) {
    return html`
      <${Lazy} from="start" name="StartScreen" />
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

/** @param {string} name @param {string} id @param {boolean} stand_in */
function screen(name, id, stand_in) {
  if (stand_in) {
    return name === 'attention'
      ? html`
          <${Lazy} from="attention" name="AttentionScreen" />
        `
      : html`
          <${Lazy} from="standin" name="StandInScreen" />
        `;
  }
  switch (name) {
    case 'shelf':
      return html`
        <${Lazy} from="shelf" name="ShelfScreen" />
      `;
    case 'colony':
      return html`
        <${Lazy} from="colony" name="ColonyScreen" props=${{ id }} key=${id} />
      `;
    case 'larder':
      return html`
        <${Lazy} from="larder" name="LarderScreen" />
      `;
    case 'reckon':
      return html`
        <${Lazy} from="reckon" name="ReckonScreen" props=${{ code: id }} />
      `;
    case 'handover':
      return html`
        <${Lazy} from="handover" name="HandOverScreen" />
      `;
    case 'settings':
    case 'approve':
      return html`
        <${Lazy} from="settings" name="SettingsScreen" props=${{ code: name === 'approve' ? id : '' }} />
      `;
    case 'labels':
      return html`
        <${Lazy} from="labels" name="LabelsScreen" />
      `;
    case 'at':
      return html`
        <${Lazy} from="at" name="AtScreen" props=${{ code: id }} key=${id} />
      `;
    case 'paper':
      return html`
        <${Lazy} from="paper" name="PaperScreen" props=${{ id }} key=${id} />
      `;
    case 'welcome':
      return html`
        <${Lazy} from="welcome" name="WelcomeScreen" props=${{ id }} />
      `;
    case 'places':
      return html`
        <${Lazy} from="places" name="PlacesScreen" />
      `;
    case 'gone':
      return html`
        <${Lazy} from="past" name="GoneScreen" />
      `;
    case 'look':
      return html`
        <${Lazy} from="look" name="LookScreen" />
      `;
    case 'attention':
      return html`
        <${Lazy} from="attention" name="AttentionScreen" />
      `;
    default:
      return html`
        <${RoundScreen} />
      `;
  }
}

function Top() {
  const { waiting, attention } = unsent.value;
  const { online, syncing } = saving.value;
  const words = [
    attention ? t.saving.attention(attention) : '',
    waiting ? t.saving.waiting(waiting) : '',
    !online ? t.saving.offline : syncing && waiting ? t.saving.syncing : !waiting && !attention ? t.saving.synced : '',
  ]
    .filter(Boolean)
    .join(' · ');
  return html`
    <header class="top">
      <span class="mark">${t.name}</span>
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

function Banners() {
  const { problem, update_ready, clock_off_min } = saving.value;
  const ended = session.value?.ended;
  return html`
    ${
      ended &&
      html`
        <div class="banner" role="alert">
          <span>${t.banner.ended[ended] ?? t.banner.signed_out}</span>
          <a class="button" href="#/attention">${t.banner.unsent}</a>
        </div>
      `
    }
    ${
      problem &&
      !ended &&
      html`
        <div class="banner" role="alert"><span>${t.saving.problem[problem.code] ?? problem.detail}</span></div>
      `
    }
    ${
      Math.abs(clock_off_min) >= 5 &&
      html`
        <div class="banner calm"><span>${t.banner.clock(clock_off_min)}</span></div>
      `
    }
    ${
      update_ready &&
      html`
        <div class="banner calm">
          <span>${t.banner.update}</span>
          <button type="button" class="button" onClick=${update}>${t.banner.use_it}</button>
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
  setTimeout(() => location.reload(), TAKES_OVER_MS); // mostly it has taken over by then, which reloads too
}

/** @param {{here: string}} props */
const Navigation = ({ here }) => html`
  <nav class="bottom" aria-label=${t.screens}>
    <ul>
      ${Object.entries(t.nav).map(
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
