// Handing the shelf over: passes for stand-ins, with their link, their dates and what they did; who needs one while you
// are away; a new one; the calendar.
// Longer than 300 lines because making, showing and ending a pass share its draft.
import { useEffect, useRef, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { ManyChoice } from '../components/choices.js';
import { eventInWords } from '../components/event-in-words.js';
import { formOf, textsOf } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { Sheet } from '../components/sheet.js';
import { DAY_MS } from '../care/rules.js';
import { dayOf } from '../care/instants.js';
import { keep, tell } from '../signals/actions.js';
import { post } from '../signals/people.js';
import { now, today } from '../signals/clock.js';
import { catalogue, events, rowsOf } from '../signals/rows.js';
import { syncNow } from '../signals/sync.js';
import { coloniesInOrder } from '../components/colonies.js';
import { StandInView } from './standin.js';
import { languageChoices, unitChoices } from '../components/preferences.js';
import { nameOf } from '../components/in-words.js';
import { lazy } from '../components/lazy.js';
import { say } from '../words/say.js';
import { dayAndTime, listed, shortDay } from '../words/shown.js';

const Holiday = lazy(() => import('./holiday.js'), 'Holiday', 'online');

/** @typedef {import('./holiday.js').Trip} Trip */
/** @typedef {import('../care/overlay.js').ShownRow<'colony'>} ColonyRow */

export function HandOverScreen() {
  const [trip, setTrip] = useState(/** @type {Trip | null} */ (null));
  return html`
    <h1>${say('handover-title')}</h1>
    <p class="soft">${say('handover-about')}</p>
    ${rowsOf('pass')
      .reverse()
      .map(
        (row) => html`
          <${Pass} key=${row.id} row=${row} />
        `,
      )}
    <${Holiday} onPass=${setTrip} />
    <${PassForm} key=${JSON.stringify(trip)} trip=${trip} />
    <section class="card">
      <h2>${say('handover-calendar')}</h2>
      <${CalendarAddress} passId=${null} />
    </section>
  `;
}

/** What the guests of a pass logged, newest first. @param {string} passId @param {string[]} colonyIds */
export function doneUnder(passId, colonyIds) {
  const guests = new Set(
    rowsOf('person')
      .filter((person) => person.set.pass_id === passId)
      .map((person) => person.id),
  );
  return colonyIds
    .flatMap((id) => events.value.get(id) ?? [])
    .filter((row) => row.by && guests.has(row.by))
    .sort((a, b) => (b.happened_ms ?? 0) - (a.happened_ms ?? 0));
}

/** @param {{row: import('../care/overlay.js').ShownRow<'pass'>}} props */
function Pass({ row }) {
  const [link, setLink] = useState(/** @type {import('../answers.d.ts').PassLink | null} */ (null));
  const [preview, setPreview] = useState(false);
  const { attempt, busy, said } = useAttempt();
  const v = row.set;
  const over = v.revoked_at_ms || today.value > v.ends_on;
  const state = v.revoked_at_ms
    ? say('handover-state-back')
    : today.value < v.starts_on
      ? say('handover-state-from', { day: shortDay(v.starts_on) })
      : over
        ? say('handover-state-ended')
        : say('handover-state-now');
  const done = doneUnder(row.id, v.colony_ids);
  const makeLink = () =>
    attempt(async () => {
      await syncNow();
      setLink(await post(`/api/passes/${row.id}/link`));
    });
  const takeBack = () =>
    confirm(say('handover-sure', { who: v.name })) &&
    attempt(async () => {
      await post(`/api/passes/${row.id}/revoke`);
      await syncNow();
    });
  const share = () =>
    navigator.share({ title: say('handover-share-title', { who: v.name }), url: link?.link }).catch(() => undefined);
  return html`
    <article class="card">
      <h2>${v.name}</h2>
      <p class="soft">
        ${say('handover-days', { from: shortDay(v.starts_on), to: shortDay(v.ends_on) })}${' · '}
        <strong>${state}</strong>
        ${' · '}${listed(v.colony_ids.map(nameOf))}
      </p>
      ${
        (done.length > 0 || over) &&
        html`
          <section class="stack">
            <h3>${say('handover-done-by', { who: v.name })}</h3>
            ${
              done.length
                ? html`
                    <ul class="done-list">
                      ${done.map(
                        (each) => html`
                          <li key=${each.id}>
                            <${Icon} name="done" />
                            <div class="grow">
                              <p>
                                <strong>${nameOf(each.set.colony_id)}</strong>
                                ${' '}${eventInWords(each)}
                              </p>
                              <p class="soft">${dayAndTime(each.happened_ms ?? 0)}</p>
                            </div>
                          </li>
                        `,
                      )}
                    </ul>
                  `
                : html`
                    <p class="soft">${say('handover-nothing')}</p>
                  `
            }
          </section>
        `
      }
      ${
        link &&
        html`
          <div class="stack">
            <p>${say('handover-link-once')}</p>
            <div
              class="qr"
              role="img"
              aria-label=${say('handover-share-title', { who: v.name })}
              dangerouslySetInnerHTML=${{ __html: link.qr_svg }}
            />
            <p>
              <a class="address" href=${link.link}>${link.link}</a>
            </p>
            <p>
              ${say('handover-by-code')}${' '}
              <span class="code">${link.code}</span>
            </p>
            ${
              'share' in navigator &&
              html`
                <button type="button" class="button wide" onClick=${share}>
                  <${Icon} name="share" />
                  ${say('handover-share')}
                </button>
              `
            }
          </div>
        `
      }
      ${said}
      ${
        !over &&
        html`
          <div class="wrap even">
            <button type="button" class="button main" disabled=${busy} onClick=${makeLink}>
              ${link ? say('handover-new-link') : say('handover-make-link')}
            </button>
            <button type="button" class="button" onClick=${() => setPreview(true)}>${say('handover-preview')}</button>
            <a class="button" href=${`${v.language ? `/?in=${v.language}` : ''}#/paper/${row.id}`}>
              <${Icon} name="print" />
              ${say('handover-print')}
            </a>
          </div>
          <${CalendarAddress} passId=${row.id} />
        `
      }
      ${
        !v.revoked_at_ms &&
        html`
          <button type="button" class="button warn" disabled=${busy} onClick=${takeBack}>
            ${say('handover-take-back')}
          </button>
        `
      }
      ${
        preview &&
        html`
          <${Sheet} title=${say('handover-preview-title', { who: v.name })} onClose=${() => setPreview(false)}>
            <div class="stack" inert>
              <${StandInView} given=${v} state="open" colonies=${rowsWith(v.colony_ids)} />
            </div>
          </${Sheet}>
        `
      }
    </article>
  `;
}

/** @param {string[]} ids */
const rowsWith = (ids) => rowsOf('colony').filter(({ id }) => ids.includes(id));

const USUAL_DAYS = 7;
/** How the stand-in is told; what is left open is as their phone. */
const TOLD = ['language', 'degrees', 'volumes'];

/** A new pass. @param {{trip: Trip | null}} props what to begin with; then the form is where the eye goes */
function PassForm({ trip }) {
  const colonies = coloniesInOrder();
  const [chosen, setChosen] = useState(trip?.colony_ids ?? []);
  const who = useRef(/** @type {HTMLInputElement | null} */ (null));
  useEffect(() => {
    if (trip) who.current?.focus();
  }, []);
  const form = useAttempt();
  const stings = (/** @type {ColonyRow | undefined} */ colony) =>
    Boolean(catalogue.value?.species?.[colony?.set.species_code ?? '']?.stings ?? colony?.set.stings);
  const named = (/** @type {ColonyRow} */ colony) =>
    stings(colony) ? say('handover-stings', { colony: colony.set.name }) : colony.set.name;
  const stinging = chosen.filter((id) => stings(colonies.find((each) => each.id === id)));
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    if (!chosen.length) return form.refuse(say('handover-none'));
    if (text('ends_on') < text('starts_on')) return form.refuse(say('handover-backwards'));
    return form.attempt(async () => {
      await keep('pass', {
        name: text('name'),
        colony_ids: chosen,
        starts_on: text('starts_on'),
        ends_on: text('ends_on'),
        instructions: text('instructions'),
        emergency_contact: text('emergency_contact'),
        stinging_ok_ids: stinging,
        ...Object.fromEntries(TOLD.flatMap((name) => (text(name) ? [[name, text(name)]] : []))),
      });
      tell(say('saving-saved'));
      formOf(event).reset();
      setChosen([]);
    });
  }
  return html`
    <form class="card" onSubmit=${save}>
      <h2>${say('handover-new')}</h2>
      <label>
        ${say('handover-who')}
        <input ref=${who} name="name" required maxlength="60" autocomplete="off" />
      </label>
      <${ManyChoice}
        label=${say('handover-colonies')}
        values=${chosen}
        onChange=${setChosen}
        options=${colonies.map((colony) => [colony.id, named(colony)])}
      />
      ${
        chosen.length < colonies.length &&
        html`
          <button type="button" class="button" onClick=${() => setChosen(colonies.map((colony) => colony.id))}>
            ${say('handover-all')}
          </button>
        `
      }
      ${
        stinging.length > 0 &&
        html`
          <p class="caution" role="status">${say('handover-stings-words')}</p>
        `
      }
      <div class="pair">
        <label>
          ${say('handover-first')}
          <input name="starts_on" type="date" required defaultValue=${trip?.starts_on ?? today.value} />
        </label>
        <label>
          ${say('handover-last')}
          <input
            name="ends_on"
            type="date"
            required
            defaultValue=${trip?.ends_on ?? dayOf(new Date(now.peek() + USUAL_DAYS * DAY_MS))}
          />
        </label>
      </div>
      <label>
        ${say('handover-know')}
        <textarea name="instructions" maxlength="4000"></textarea>
      </label>
      <label>
        ${say('handover-call')}
        <input name="emergency_contact" maxlength="200" inputmode="tel" />
      </label>
      <label>
        ${say('house-language')}
        <select name="language">
          <option value="">${say('house-language-as-phone')}</option>
          ${languageChoices().map(
            ([tag, language]) => html`
              <option value=${tag} lang=${tag}>${language}</option>
            `,
          )}
        </select>
      </label>
      ${unitChoices().map(
        ([name, label, options]) => html`
          <label>
            ${label}
            <select name=${name}>
              ${options.map(
                ([unit, words]) => html`
                  <option value=${unit}>${words}</option>
                `,
              )}
            </select>
          </label>
        `,
      )}
      ${form.said}
      <button class="button main wide" disabled=${form.busy}>${say('handover-go')}</button>
    </form>
  `;
}

/** The secret address of a calendar feed: made, shown once, and ended. @param {{passId: string | null}} props */
function CalendarAddress({ passId }) {
  const [url, setUrl] = useState('');
  const { attempt, busy, said } = useAttempt();
  const make = () =>
    attempt(async () => {
      await syncNow();
      setUrl((await post('/api/feeds', { pass_id: passId })).url);
    });
  const end = () =>
    attempt(async () => {
      await post('/api/feeds/revoke', { pass_id: passId });
      setUrl('');
      return say('calendar-address-ended');
    });
  const copy = () =>
    attempt(async () => {
      await navigator.clipboard.writeText(url);
      return say('calendar-address-copied');
    });
  return html`
    <details>
      <summary>${say('calendar-address-title')}</summary>
      <p class="soft">${say('calendar-address-about')}</p>
      ${
        url &&
        html`
          <p>${say('calendar-address-once')}</p>
          <p>
            <a class="address" href=${url.replace(/^https?:/, 'webcal:')}>${url}</a>
          </p>
          <button type="button" class="button" onClick=${copy}>${say('calendar-address-copy')}</button>
        `
      }
      ${said}
      <div class="wrap">
        <button type="button" class="button" disabled=${busy} onClick=${make}>
          ${url ? say('calendar-address-anew') : say('calendar-address-make')}
        </button>
        <button type="button" class="button" disabled=${busy} onClick=${end}>${say('calendar-address-end')}</button>
      </div>
    </details>
  `;
}

// before you go away: which colonies need nobody, what to top up on the last day, and who needs a visit
