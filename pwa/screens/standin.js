// The stand-in's view: what to do today in half a minute, and whom to call.
import { useState } from 'preact/hooks';
import { html, Icon } from '../components/html.js';
import { weekDay } from '../components/in-words.js';
import { forStandIn } from '../care/round.js';
import { now } from '../signals/clock.js';
import { events, round, rowsOf } from '../signals/rows.js';
import { saving } from '../signals/saving.js';
import { session } from '../signals/session.js';
import { eventText } from '../text/en/events.js';
import { roundText } from '../text/en/round.js';
import { standInText } from '../text/en/stand-in.js';
import { LogSheet } from './log.js';
import { Nudges } from './nudges.js';
import { Joining } from '../components/states.js';
import { Task } from '../components/task.js';

export function StandInScreen() {
  const me = session.value;
  const [wrong, setWrong] = useState('');
  const [other, setOther] = useState(/** @type {import('../care/round.js').Item | null} */ (null));
  const { joining } = saving.value;
  if (joining !== null) {
    return html`
      <h1>${roundText.title}</h1>
      <${Joining} entries=${joining} />
    `;
  }
  const given = rowsOf('pass').find((row) => row.id === me.pass?.id)?.set ?? me.pass ?? {};
  return html`
    <${StandInView}
      given=${given}
      state=${me.pass?.state ?? ''}
      colonies=${rowsOf('colony')}
      onOther=${setOther}
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
      other &&
      html`
        <${LogSheet} colonyId=${other.colony_id} need=${other.need} item=${other} onClose=${() => setOther(null)} />
      `
    }
  `;
}

const nothing = () => undefined;

/**
 * The same page for the stand-in and for the keeper's preview of it.
 * @param {{given: Partial<import('../kinds.d.ts').Pass>, state: string,
 *   colonies: Array<import('../care/overlay.js').ShownRow<'colony'>>,
 *   onOther?: (item: import('../care/round.js').Item) => void, onWrong?: (id: string) => void}} props
 */
export function StandInView({ given, state, colonies, onOther = nothing, onWrong = nothing }) {
  const ids = new Set(colonies.map((colony) => colony.id));
  const due = round.value.items
    .filter((item) => item.group !== 'next' && ids.has(item.colony_id))
    .flatMap((item) => forStandIn([item], events.value.get(item.colony_id) ?? [], now.value));
  const today = due.length ? standInText.today(due.length) : standInText.nothing;
  return html`
    <h1>${state === 'not_yet' ? standInText.from(weekDay(given.starts_on ?? '')) : today}</h1>
    <p class="soft">${standInText.calm}</p>
    ${
      given.instructions &&
      html`
        <section class="card">
          <h2>${standInText.from_keeper}</h2>
          <p>${given.instructions}</p>
        </section>
      `
    }
    ${
      given.emergency_contact &&
      html`
        <a class="button wide" href=${`tel:${given.emergency_contact.replace(/[^+0-9]/g, '')}`}>
          ${standInText.call(given.emergency_contact)}
        </a>
      `
    }
    ${due.map(
      (item) => html`
        <${Task} key=${item.key} item=${item} steps onOther=${onOther} />
      `,
    )}
    <section class="stack">
      <h2>${standInText.yours}</h2>
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
              ${eventText.kinds.fault}
            </button>
          </article>
        `,
      )}
    </section>
  `;
}
