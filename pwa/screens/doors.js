// Who comes in: phones, mail, and what happened at the doors. All of it is asked of the server.
// Longer than 300 lines because each door is asked for, shown and shut in the same few words.
import { useState } from 'preact/hooks';
import { useAnswer, whyNot } from '../components/answer.js';
import { useAttempt } from '../components/attempt.js';
import { textsOf } from '../components/forms.js';
import { html } from '../components/html.js';
import { tell } from '../signals/actions.js';
import { post, put, takeAway } from '../signals/people.js';
import { today } from '../signals/clock.js';
import { rowsOf } from '../signals/rows.js';
import { syncNow } from '../signals/sync.js';
import { isSaid, labelled, say, sayOf } from '../words/say.js';
import { moment } from '../words/shown.js';

/** @param {{code: string}} props of a phone that asks to be let in */
export const Doors = ({ code }) => html`
  <${Mail} />
  <${Phones} code=${code} />
  <${Journal} />
`;

/** @param {{code: string}} props */
function Phones({ code }) {
  const { answer, problem, ask } = useAnswer('/api/devices');
  const [found, setFound] = useState(/** @type {{code: string, device_name: string} | null} */ (null));
  const { attempt, busy, said } = useAttempt();
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
      await post('/api/pairings/approve', { code: found?.code, ...who });
      setFound(null);
      tell(say('house-let-in'));
      await syncNow();
      await ask();
    });
  /** @param {import('../answers.d.ts').Phone} phone */
  const signOut = (phone) =>
    confirm(say('house-sign-out-other', { name: phone.name })) &&
    attempt(async () => {
      await post(`/api/devices/${phone.id}/revoke`);
      await ask();
    });
  return html`
    <section class="card">
      <h2>${say('house-phones')}</h2>
      <ul class="done-list">
        ${answer?.devices.map(
          (phone) => html`
            <li key=${phone.id}>
              <div class="grow">
                <strong>${phone.here ? say('house-this-one', { phone: phone.name }) : phone.name}</strong>
                <p class="soft">${say('house-last-seen', { when: moment(phone.last_seen_ms) })}</p>
              </div>
              ${
                !phone.here &&
                html`
                  <button type="button" class="button warn" disabled=${busy} onClick=${() => signOut(phone)}>
                    ${say('house-sign-out')}
                  </button>
                `
              }
            </li>
          `,
        )}
      </ul>
      <form class="stack" onSubmit=${look}>
        <label>
          ${say('house-new-phone')}${' '}
          <small>${say('house-new-phone-hint')}</small>
          <input name="code" required defaultValue=${code} autocapitalize="characters" autocomplete="off" />
        </label>
        <button class="button" disabled=${busy}>${say('house-look-up')}</button>
      </form>
      ${
        found &&
        html`
          <p>
            <strong>${say('house-asks', { phone: found.device_name })}</strong>
          </p>
          <div class="wrap">
            ${people.map(
              (person) => html`
                <button
                  type="button"
                  class="button"
                  disabled=${busy}
                  onClick=${() => approve({ person_id: person.id })}
                >
                  ${person.set.name}
                </button>
              `,
            )}
            <button
              type="button"
              class="button"
              disabled=${busy}
              onClick=${() => {
                const name = prompt(say('house-new-keeper'));
                if (name) void approve({ person_name: name });
              }}
            >
              ${say('house-somebody-new')}
            </button>
          </div>
        `
      }
      ${
        problem &&
        html`
          <p role="alert" class="caution">${whyNot(problem)}</p>
        `
      }
      ${said}
    </section>
  `;
}

const FEW = 5;

/** What happened. @param {{what: string, args: Record<string, unknown>}} entry @param {string} who if that is known */
function atTheDoors({ what, args }, who) {
  const unnamed = `${what}_by_nobody`;
  return sayOf('house-door', !who && isSaid('house-door', unnamed) ? unnamed : what, { ...args, who });
}

/** The journal of the house's doors; the newest few, and all of it on a tap. */
function Journal() {
  const { answer, problem } = useAnswer('/api/journal', today.value);
  const [all, setAll] = useState(false);
  const entries = answer?.entries ?? [];
  const who = (/** @type {string | null} */ id) => rowsOf('person').find((person) => person.id === id)?.set.name ?? '';
  return html`
    <section class="card" aria-label=${say('house-doors-title')}>
      <h2>${say('house-doors-title')}</h2>
      <p class="soft">${say('house-doors-about')}</p>
      ${
        !answer &&
        problem &&
        html`
          <p class="soft">${say('house-doors-offline')}</p>
        `
      }
      <ul class="done-list">
        ${(all ? entries : entries.slice(0, FEW)).map(
          (entry) => html`
            <li key=${entry.id}>
              <div class="grow">
                <p>${atTheDoors(entry, who(entry.by))}</p>
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
            ${say('house-doors-all', { count: entries.length })}
          </button>
        `
      }
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
    <section class="card" aria-label=${say('house-mail-title')}>
      <h2>${say('house-mail-title')}</h2>
      <p class="soft">${say('house-mail-about')}</p>
      ${people.map(
        (person) => html`
          <${Mailbox}
            key=${person.id}
            id=${person.id}
            name=${person.set.name}
            had=${answer.people.find((each) => each.person_id === person.id)}
            onChange=${ask}
          />
        `,
      )}
    </section>
  `;
}

/** @typedef {{address: string, confirmed: boolean}} Had */
/** @param {{id: string, name: string, had?: Had, onChange: () => Promise<void>}} props */
function Mailbox({ id, name, had, onChange }) {
  const { attempt, busy, said } = useAttempt();
  const path = /** @type {const} */ (`/api/mail/${id}`);
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
      const { outcome } = await put(path, { address });
      if (outcome !== 'sent') throw new Error(say('house-mail-not-sent', { why: outcome }));
    });
  /** @param {Event} event */
  function submit(event) {
    event.preventDefault();
    const text = textsOf(event);
    if (!had) return void send(text('address'));
    return void change(async () => {
      await post(`${path}/confirm`, { code: text('code') });
      tell(say('house-mail-on'));
    });
  }
  const remove = () =>
    change(async () => {
      await takeAway(path);
      tell(say('house-mail-removed'));
    });
  return html`
    <form class="stack" aria-label=${name} onSubmit=${submit}>
      <h3>${name}</h3>
      ${
        had &&
        html`
          <p class="address">${had.address}</p>
          <p class="soft">${had.confirmed ? say('house-mail-comes') : say('house-mail-asked')}</p>
        `
      }
      ${
        !had &&
        html`
          <label>
            ${say('house-mail-address')}
            <input name="address" type="email" required maxlength="254" autocomplete="off" />
          </label>
        `
      }
      ${
        had &&
        !had.confirmed &&
        html`
          <label>
            ${say('house-mail-code')}
            <input name="code" required autocomplete="one-time-code" autocapitalize="characters" spellcheck=${false} />
          </label>
        `
      }
      ${said}
      <div class="wrap">
        ${
          !had?.confirmed &&
          html`
            <button class="button main" disabled=${busy}>
              ${had ? say('house-mail-confirm') : say('house-mail-send')}
            </button>
          `
        }
        ${
          had &&
          !had.confirmed &&
          html`
            <button type="button" class="button" disabled=${busy} onClick=${() => send(had.address)}>
              ${say('house-mail-anew')}
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
              aria-label=${labelled(say('house-mail-remove'), name)}
            >
              ${say('house-mail-remove')}
            </button>
          `
        }
      </div>
    </form>
  `;
}
