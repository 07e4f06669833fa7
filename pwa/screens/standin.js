// The stand-in's view: what to do today in half a minute, and whom to call.
import { useState } from 'preact/hooks';
import { html, Icon } from '../components/html.js';
import { nameOf } from '../components/in-words.js';
import { forStandIn } from '../care/round.js';
import { now } from '../signals/clock.js';
import { events, round, rowsOf } from '../signals/rows.js';
import { saving } from '../signals/saving.js';
import { session } from '../signals/session.js';
import { LogSheet } from './log.js';
import { Nudges } from './nudges.js';
import { HelperTask } from '../components/helping.js';
import { ReadAloud } from '../components/read-aloud.js';
import { NoColonies } from '../components/states.js';
import { taskTitle } from '../components/task.js';
import { useLanguageOfPass } from '../components/preferences.js';
import { CouldNot } from './could-not.js';
import { say } from '../words/say.js';
import { weekDay } from '../words/shown.js';

export function StandInScreen() {
  const me = session.value;
  const [wrong, setWrong] = useState('');
  const [failed, setFailed] = useState(/** @type {import('../care/round.js').Item | null} */ (null));
  const { joining } = saving.value;
  /** @type {Partial<import('../care/overlay.js').Fields<'pass'>>} */
  const given = rowsOf('pass').find((row) => row.id === me?.pass?.id)?.set ?? me?.pass ?? {};
  useLanguageOfPass(given);
  if (joining !== null) {
    return html`
      <${NoColonies} title=${say('round-title')} joining=${joining} />
    `;
  }
  return html`
    <${StandInView}
      given=${given}
      state=${me?.pass?.state ?? ''}
      colonies=${rowsOf('colony')}
      onCouldNot=${setFailed}
      onWrong=${setWrong}
    />
    <${Nudges} />
    ${
      wrong &&
      html`
        <${LogSheet} colonyId=${wrong} kind="fault" onClose=${() => setWrong('')} />
      `
    }
    ${
      failed &&
      html`
        <${CouldNot} item=${failed} onClose=${() => setFailed(null)} />
      `
    }
  `;
}

const nothing = () => undefined;

/**
 * The same page for the stand-in and for the keeper's preview of it.
 * @param {{given: Partial<import('../kinds.d.ts').Pass>, state: string,
 *   colonies: Array<import('../care/overlay.js').ShownRow<'colony'>>,
 *   onCouldNot?: (item: import('../care/round.js').Item) => void, onWrong?: (id: string) => void}} props
 */
export function StandInView({ given, state, colonies, onCouldNot = nothing, onWrong = nothing }) {
  const ids = new Set(colonies.map((colony) => colony.id));
  const due = round.value.items
    .filter((item) => item.group !== 'next' && ids.has(item.colony_id))
    .flatMap((item) => forStandIn([item], events.value.get(item.colony_id) ?? [], now.value));
  const today = due.length
    ? say('stand-in-today', { count: due.length, minutes: due.length * 2 })
    : say('stand-in-nothing');
  return html`
    <h1>${state === 'not_yet' ? say('stand-in-from', { day: weekDay(given.starts_on ?? '') }) : today}</h1>
    <p class="soft">${say('stand-in-calm')}</p>
    <${ReadAloud} sentences=${[today, ...due.map((item) => `${nameOf(item.colony_id)}: ${taskTitle(item)}`)]} />
    ${
      given.instructions &&
      html`
        <section class="card">
          <h2>${say('stand-in-from-keeper')}</h2>
          <p>${given.instructions}</p>
        </section>
      `
    }
    ${given.emergency_contact && whomToCall(given.emergency_contact)}
    ${due.map(
      (item) => html`
        <${HelperTask} key=${item.key} item=${item} onCouldNot=${onCouldNot} />
      `,
    )}
    ${
      due.length > 0 &&
      html`
        <p class="soft">${say('stand-in-practice')}</p>
      `
    }
    <section class="stack">
      <h2>${say('stand-in-yours')}</h2>
      ${colonies.map(
        (colony) => html`
          <article class="card" key=${colony.id}>
            <div class="row">
              ${
                colony.set.number &&
                html`
                  <span class="number">${colony.set.number}</span>
                `
              }
              <h3 class="grow">${colony.set.name}</h3>
            </div>
            <button type="button" class="button warn" onClick=${() => onWrong(colony.id)}>
              <${Icon} name="fault" />
              ${say('event-kind-fault')}
            </button>
          </article>
        `,
      )}
    </section>
  `;
}

/** A telephone number: five digits and more with what may stand between two of them, or three and more in a row. */
const NUMBER = /\+?\(?\d(?:[ )./-]{0,2}\d){4,}|\d{3,}/g;

/** Each number to dial. One says whom it calls; several stand below what the keeper wrote. @param {string} contact */
function whomToCall(contact) {
  const numbers = contact.match(NUMBER) ?? [];
  const alone = numbers.length === 1;
  return html`
    ${
      !alone &&
      html`
        <p>${say('stand-in-call', { who: contact })}</p>
      `
    }
    ${numbers.map(
      (number) => html`
        <a class="button wide" href=${`tel:${number.replace(/[^+0-9]/g, '')}`}>
          ${say('stand-in-call', { who: alone ? contact : number })}
        </a>
      `,
    )}
  `;
}
