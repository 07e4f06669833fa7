// The house: its nudges and hours, who comes in, how this app looks, and what this phone has stored.
import { useEffect, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { numberOf, textsOf } from '../components/forms.js';
import { html } from '../components/html.js';
import { LeftBehind } from '../components/left-behind.js';
import { Install } from '../components/install.js';
import { LanguageChoice, LookChoice, UnitChoices } from '../components/preferences.js';
import { changeFrom, tell, write } from '../signals/actions.js';
import { logout } from '../signals/people.js';
import { rowsOf, unsent } from '../signals/rows.js';
import { saving } from '../signals/saving.js';
import { session } from '../signals/session.js';
import { syncNow } from '../signals/sync.js';
import { exportUnsent } from '../signals/unsent.js';
import { Nudges } from './nudges.js';
import { lazy } from '../components/lazy.js';
import { say } from '../words/say.js';
import { moment } from '../words/shown.js';

const Doors = lazy(() => import('./doors.js'), 'Doors', 'online');

/** @param {{code: string}} props */
export const SettingsScreen = ({ code }) => html`
  <h1>${say('house-title')}</h1>
  <${Nudges} />
  <${House} />
  <section class="card">
    <h2>${say('place-title')}</h2>
    <p>${say('place-about')}</p>
    <a class="button" href="#/places">${say('place-open')}</a>
  </section>
  <${Doors} code=${code} />
  <section class="card">
    <h2>${say('house-look')}</h2>
    <${LookChoice} />
    <${LanguageChoice} />
    <${UnitChoices} />
    <a class="button" href="#/look">${say('look-all-parts')}</a>
  </section>
  <${Stored} />
  <${Install} />
  <section class="card">
    <h2>${say('house-good-to-know')}</h2>
    <p>${say('house-advice')}</p>
    <p>${say('house-never')}</p>
    <p class="soft">${say('house-build', { build: document.body.dataset.build ?? '' })}</p>
  </section>
`;

function House() {
  const house = rowsOf('household')[0];
  const [opened, setOpened] = useState(house);
  const { attempt, busy, said } = useAttempt();
  const was = opened ?? house;
  if (!was) return null;
  const v = was.set;
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    void attempt(async () => {
      await write([
        changeFrom('household', was, {
          name: text('name'),
          zone: text('zone'),
          care_hours: [text('first'), text('second')].filter(Boolean),
          quiet_from: text('quiet_from') || null,
          quiet_to: text('quiet_to') || null,
          backup_patience_days: numberOf(text('backup_patience_days')),
        }),
      ]);
      setOpened(rowsOf('household')[0]); // what is saved next differs from this
      tell(say('saving-saved'));
    });
  }
  return html`
    <form class="card" onSubmit=${save}>
      <h2>${say('house-hours')}</h2>
      <label>
        ${say('house-shelf-name')}
        <input name="name" required defaultValue=${v.name} />
      </label>
      <label>
        ${say('house-zone')}
        <input name="zone" required defaultValue=${v.zone} />
      </label>
      <div class="pair">
        <label>
          ${say('house-first')}
          <input name="first" type="time" defaultValue=${v.care_hours?.[0] ?? ''} />
        </label>
        <label>
          ${say('house-second')}
          <input name="second" type="time" defaultValue=${v.care_hours?.[1] ?? ''} />
        </label>
      </div>
      <div class="pair">
        <label>
          ${say('house-quiet-from')}
          <input name="quiet_from" type="time" defaultValue=${v.quiet_from ?? ''} />
        </label>
        <label>
          ${say('house-quiet-to')}
          <input name="quiet_to" type="time" defaultValue=${v.quiet_to ?? ''} />
        </label>
      </div>
      <label>
        ${say('house-backup-patience')}${' '}
        <small>${say('house-backup-patience-hint')}</small>
        <input
          name="backup_patience_days"
          type="number"
          min="0"
          max="400"
          placeholder="30"
          defaultValue=${v.backup_patience_days ?? ''}
        />
      </label>
      ${said}
      <button class="button main" disabled=${busy}>${say('house-save')}</button>
    </form>
  `;
}

function Stored() {
  const [kept, setKept] = useState(/** @type {boolean | null} */ (null));
  const { attempt, said } = useAttempt();
  useEffect(() => {
    navigator.storage?.persisted?.().then(setKept);
  }, []);
  const { last_sync_ms } = saving.value;
  const { waiting, attention } = unsent.value;
  const synced = last_sync_ms ? say('house-last-synced', { when: moment(last_sync_ms) }) : say('house-not-synced');
  const count = waiting + attention;
  const kept_here = count ? say('house-not-sent', { count }) : say('house-nothing-waits');
  const leave = () =>
    confirm(
      count
        ? say('house-leave-unsent', { count })
        : say('house-leave', { who: session.value?.name ?? say('house-this-phone') }),
    ) && attempt(logout);
  return html`
    <section class="card">
      <h2>${say('house-on-this-phone')}</h2>
      <p>${synced}${' '}${kept_here}</p>
      <p class="soft">${kept ? say('house-kept') : say('house-not-kept')}</p>
      ${said}
      <div class="wrap even">
        <button type="button" class="button" onClick=${() => syncNow()}>${say('house-sync-now')}</button>
        ${
          count > 0 &&
          html`
            <button type="button" class="button" onClick=${() => exportUnsent()}>${say('house-export')}</button>
          `
        }
        <button type="button" class="button warn" onClick=${leave}>${say('house-sign-out')}</button>
      </div>
      <${LeftBehind} me=${session.value} />
    </section>
  `;
}
