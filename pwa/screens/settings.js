// The house: its nudges and hours, the phones that are signed in, how this app looks, and what this phone has stored.
// Longer than 300 lines because House is one page of short sections.
import { useEffect, useState } from 'preact/hooks';
import { useAnswer, whyNot } from '../components/answer.js';
import { useAttempt } from '../components/attempt.js';
import { textsOf } from '../components/forms.js';
import { html } from '../components/html.js';
import { moment } from '../components/in-words.js';
import { Install } from '../components/install.js';
import { DegreesChoice, LookChoice } from '../components/preferences.js';
import { exportUnsent, keep, say } from '../signals/actions.js';
import { call, get, logout, post } from '../signals/people.js';
import { today } from '../signals/clock.js';
import { rowsOf, unsent } from '../signals/rows.js';
import { saving } from '../signals/saving.js';
import { session } from '../signals/session.js';
import { syncNow } from '../signals/sync.js';
import { houseText } from '../text/en/house.js';
import { lookText } from '../text/en/look.js';
import { placesText } from '../text/en/places.js';
import { savingText } from '../text/en/saving.js';
import { Nudges } from './nudges.js';

/** @param {{code: string}} props */
export const SettingsScreen = ({ code }) => html`
  <h1>${houseText.title}</h1>
  <${Nudges} />
  <${Mail} />
  <${House} />
  <section class="card">
    <h2>${placesText.title}</h2>
    <p>${placesText.about}</p>
    <a class="button" href="#/places">${placesText.open}</a>
  </section>
  <${Phones} code=${code} />
  <${Doors} />
  <section class="card">
    <h2>${houseText.look}</h2>
    <${LookChoice} />
    <${DegreesChoice} />
    <a class="button" href="#/look">${lookText.all_parts}</a>
  </section>
  <${Stored} />
  <${Install} />
  <section class="card">
    <h2>${houseText.good_to_know}</h2>
    <p>${houseText.advice}</p>
    <p>${houseText.never}</p>
    <p class="soft">${houseText.build} ${document.body.dataset.build}</p>
  </section>
`;

function House() {
  const house = rowsOf('household')[0];
  const { attempt, busy, said } = useAttempt();
  if (!house) return null;
  const v = house.set;
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    void attempt(async () => {
      await keep(
        'household',
        {
          name: text('name'),
          zone: text('zone'),
          care_hours: [text('first'), text('second')].filter(Boolean),
          quiet_from: text('quiet_from') || null,
          quiet_to: text('quiet_to') || null,
          backup_patience_days: text('backup_patience_days') === '' ? null : Number(text('backup_patience_days')),
        },
        house?.id,
      );
      say(savingText.saved);
    });
  }
  return html`
    <form class="card" onSubmit=${save}>
      <h2>${houseText.hours}</h2>
      <label>
        ${houseText.shelf_name}
        <input name="name" required defaultValue=${v.name} />
      </label>
      <label>
        ${houseText.zone}
        <input name="zone" required defaultValue=${v.zone} />
      </label>
      <div class="pair">
        <label>
          ${houseText.first}
          <input name="first" type="time" defaultValue=${v.care_hours?.[0] ?? ''} />
        </label>
        <label>
          ${houseText.second}
          <input name="second" type="time" defaultValue=${v.care_hours?.[1] ?? ''} />
        </label>
      </div>
      <div class="pair">
        <label>
          ${houseText.quiet_from}
          <input name="quiet_from" type="time" defaultValue=${v.quiet_from ?? ''} />
        </label>
        <label>
          ${houseText.quiet_to}
          <input name="quiet_to" type="time" defaultValue=${v.quiet_to ?? ''} />
        </label>
      </div>
      <label>
        ${houseText.backup_patience}${' '}
        <small>${houseText.backup_patience_hint}</small>
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
      <button class="button main" disabled=${busy}>${houseText.save}</button>
    </form>
  `;
}

/** @param {{code: string}} props */
function Phones({ code }) {
  const [list, setList] = useState(/** @type {any[]} */ ([]));
  const [found, setFound] = useState(/** @type {any} */ (null));
  const { attempt, said } = useAttempt();
  const load = () => attempt(async () => setList((await get('/api/devices')).devices));
  useEffect(() => {
    void load();
  }, []);
  const people = rowsOf('person').filter((person) => person.set.role === 'keeper');
  /** @param {Event} event */
  function look(event) {
    event.preventDefault();
    const shown = textsOf(event)('code');
    void attempt(async () => setFound({ code: shown, ...(await post('/api/pairings/look', { code: shown })) }));
  }
  /** @param {Record<string, string>} who */
  const approve = (who) =>
    attempt(async () => {
      await post('/api/pairings/approve', { code: found.code, ...who });
      setFound(null);
      say(houseText.let_in);
      await syncNow();
      setList((await get('/api/devices')).devices);
    });
  /** @param {any} phone */
  const signOut = (phone) =>
    confirm(houseText.sign_out_other(phone.name)) &&
    attempt(async () => {
      await post(`/api/devices/${phone.id}/revoke`);
      setList((await get('/api/devices')).devices);
    });
  return html`
    <section class="card">
      <h2>${houseText.phones}</h2>
      <ul class="done-list">
        ${list.map(
          (phone) => html`
            <li key=${phone.id}>
              <div class="grow">
                <strong>${phone.name}</strong>
                ${phone.here ? ` ${houseText.this_one}` : ''}
                <p class="soft">${houseText.last_seen} ${moment(phone.last_seen_ms)}</p>
              </div>
              ${
                !phone.here &&
                html`
                  <button type="button" class="button warn" onClick=${() => signOut(phone)}>
                    ${houseText.sign_out}
                  </button>
                `
              }
            </li>
          `,
        )}
      </ul>
      <form class="stack" onSubmit=${look}>
        <label>
          ${houseText.new_phone}${' '}
          <small>${houseText.new_phone_hint}</small>
          <input name="code" required defaultValue=${code} autocapitalize="characters" autocomplete="off" />
        </label>
        <button class="button">${houseText.look_up}</button>
      </form>
      ${
        found &&
        html`
          <p>
            <strong>${found.device_name}</strong>
            ${' '}${houseText.asks}
          </p>
          <div class="wrap">
            ${people.map(
              (person) => html`
                <button type="button" class="button" onClick=${() => approve({ person_id: person.id })}>
                  ${person.set.name}
                </button>
              `,
            )}
            <button
              type="button"
              class="button"
              onClick=${() => {
                const name = prompt(houseText.new_keeper);
                if (name) void approve({ person_name: name });
              }}
            >
              ${houseText.somebody_new}
            </button>
          </div>
        `
      }
      ${said}
    </section>
  `;
}

const FEW = 5;

/** The journal of the house's doors; the newest few, and all of it on a tap. */
function Doors() {
  const { answer, problem } = useAnswer('/api/journal', today.value);
  const [all, setAll] = useState(false);
  const entries = answer?.entries ?? [];
  const who = (/** @type {string | null} */ id) => rowsOf('person').find((person) => person.id === id)?.set.name ?? '';
  return html`
    <section class="card" aria-label=${houseText.doors.title}>
      <h2>${houseText.doors.title}</h2>
      <p class="soft">${houseText.doors.about}</p>
      ${
        !answer &&
        problem &&
        html`
          <p class="soft">${houseText.doors.offline}</p>
        `
      }
      <ul class="done-list">
        ${(all ? entries : entries.slice(0, FEW)).map(
          (/** @type {any} */ entry) => html`
            <li key=${entry.id}>
              <div class="grow">
                <p>${houseText.doors.what[entry.what]?.(entry.args, who(entry.by)) ?? entry.what}</p>
                <p class="soft">${moment(entry.at_ms)}</p>
              </div>
            </li>
          `,
        )}
      </ul>
      ${
        !all &&
        entries.length > FEW &&
        html`
          <button type="button" class="button" onClick=${() => setAll(true)}>
            ${houseText.doors.all(entries.length)}
          </button>
        `
      }
    </section>
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
  const synced = last_sync_ms ? houseText.last_synced(moment(last_sync_ms)) : houseText.not_synced;
  const kept_here = waiting + attention ? houseText.not_sent(waiting + attention) : houseText.nothing_waits;
  const leave = () =>
    confirm(waiting ? houseText.leave_unsent(waiting) : houseText.leave(session.value?.name ?? houseText.this_phone)) &&
    attempt(logout);
  return html`
    <section class="card">
      <h2>${houseText.on_this_phone}</h2>
      <p>${synced}${' '}${kept_here}</p>
      <p class="soft">${kept ? houseText.kept : houseText.not_kept}</p>
      ${said}
      <div class="wrap even">
        <button type="button" class="button" onClick=${() => syncNow()}>${houseText.sync_now}</button>
        ${
          waiting + attention > 0 &&
          html`
            <button type="button" class="button" onClick=${exportUnsent}>${houseText.export}</button>
          `
        }
        <button type="button" class="button warn" onClick=${leave}>${houseText.sign_out}</button>
      </div>
    </section>
  `;
}

/**
 * Nudges by mail: a keeper notes a person's address, and it counts once the code that was sent there is typed in.
 * Nothing at all where the server has no mail, or cannot be asked.
 */
function Mail() {
  const { answer, ask } = useAnswer('/api/mail');
  if (!answer?.available) return null;
  const passes = new Set(
    rowsOf('pass')
      .filter((pass) => !pass.set.revoked_at_ms && today.value <= pass.set.ends_on)
      .map((pass) => pass.id),
  );
  const people = rowsOf('person').filter(
    (person) => person.set.role === 'keeper' || passes.has(person.set.pass_id ?? ''),
  );
  return html`
    <section class="card" aria-label=${houseText.mail.title}>
      <h2>${houseText.mail.title}</h2>
      <p class="soft">${houseText.mail.about}</p>
      ${people.map(
        (person) => html`
          <${Mailbox}
            key=${person.id}
            id=${person.id}
            name=${person.set.name}
            had=${answer.people.find((/** @type {any} */ each) => each.person_id === person.id)}
            onChange=${ask}
          />
        `,
      )}
    </section>
  `;
}

/**
 * @param {{id: string, name: string, had?: {address: string, confirmed: boolean}, onChange: () => Promise<void>}} props
 */
function Mailbox({ id, name, had, onChange }) {
  const { attempt, busy, said } = useAttempt();
  const path = `/api/mail/${id}`;
  /** @param {() => Promise<void>} work */
  const change = (work) =>
    attempt(async () => {
      await work().catch((problem) => {
        throw new Error(whyNot(problem));
      });
      await onChange();
    });
  /** @param {string} address */
  const send = (address) =>
    change(async () => {
      const { outcome } = await call('PUT', path, { address });
      if (outcome !== 'sent') throw new Error(houseText.mail.not_sent(outcome));
    });
  /** @param {Event} event */
  function submit(event) {
    event.preventDefault();
    const text = textsOf(event);
    if (!had) return void send(text('address'));
    return void change(async () => {
      await post(`${path}/confirm`, { code: text('code') });
      say(houseText.mail.on);
    });
  }
  const remove = () =>
    change(async () => {
      await call('DELETE', path, {});
      say(houseText.mail.removed);
    });
  return html`
    <form class="stack" aria-label=${name} onSubmit=${submit}>
      <h3>${name}</h3>
      ${
        had &&
        html`
          <p class="address">${had.address}</p>
          <p class="soft">${had.confirmed ? houseText.mail.comes : houseText.mail.asked}</p>
        `
      }
      ${
        !had &&
        html`
          <label>
            ${houseText.mail.address}
            <input name="address" type="email" required maxlength="254" autocomplete="off" />
          </label>
        `
      }
      ${
        had &&
        !had.confirmed &&
        html`
          <label>
            ${houseText.mail.code}
            <input name="code" required autocomplete="one-time-code" autocapitalize="characters" spellcheck=${false} />
          </label>
        `
      }
      ${said}
      <div class="wrap">
        ${
          !had?.confirmed &&
          html`
            <button class="button main" disabled=${busy}>${had ? houseText.mail.confirm : houseText.mail.send}</button>
          `
        }
        ${
          had &&
          !had.confirmed &&
          html`
            <button type="button" class="button" disabled=${busy} onClick=${() => send(had.address)}>
              ${houseText.mail.anew}
            </button>
          `
        }
        ${
          had &&
          html`
            <button
              type="button"
              class="button warn"
              disabled=${busy}
              onClick=${remove}
              aria-label=${`${houseText.mail.remove}: ${name}`}
            >
              ${houseText.mail.remove}
            </button>
          `
        }
      </div>
    </form>
  `;
}
