// Handing the shelf over: passes for stand-ins, with their link, their dates and what they did; who needs one while you
// Longer than 300 lines because making, showing and ending a pass share its draft.
// are away; a new one; the calendar.
import { useEffect, useRef, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { ManyChoice } from '../components/choices.js';
import { eventInWords } from '../components/event-in-words.js';
import { formOf, textsOf } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { dayAndTime, nameOf, shortDay } from '../components/in-words.js';
import { Sheet } from '../components/sheet.js';
import { DAY_MS } from '../care/gauges.js';
import { dayOf } from '../care/instants.js';
import { keep, say } from '../signals/actions.js';
import { post } from '../signals/people.js';
import { now, today } from '../signals/clock.js';
import { catalogue, events, rows, rowsOf } from '../signals/rows.js';
import { syncNow } from '../signals/sync.js';
import { calendarText } from '../text/en/calendar.js';
import { handoverText } from '../text/en/handover.js';
import { savingText } from '../text/en/saving.js';
import { coloniesInOrder } from '../components/colonies.js';
import { StandInView } from './standin.js';
import { Holiday } from './holiday.js';

/** @typedef {import('./holiday.js').Trip} Trip */
/** @typedef {import('../care/overlay.js').ShownRow<'colony'>} ColonyRow */

export function HandOverScreen() {
  const [trip, setTrip] = useState(/** @type {Trip | null} */ (null));
  return html`
    <h1>${handoverText.title}</h1>
    <p class="soft">${handoverText.about}</p>
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
      <h2>${handoverText.calendar}</h2>
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
  const [link, setLink] = useState(/** @type {any} */ (null));
  const [preview, setPreview] = useState(false);
  const { attempt, busy, said } = useAttempt();
  const v = row.set;
  const over = v.revoked_at_ms || today.value > v.ends_on;
  const state = v.revoked_at_ms
    ? handoverText.state.back
    : today.value < v.starts_on
      ? handoverText.state.from(shortDay(v.starts_on))
      : over
        ? handoverText.state.ended
        : handoverText.state.now;
  const done = doneUnder(row.id, v.colony_ids);
  const makeLink = () =>
    attempt(async () => {
      await syncNow();
      setLink(await post(`/api/passes/${row.id}/link`));
    });
  const takeBack = () =>
    confirm(handoverText.sure(v.name)) &&
    attempt(async () => {
      await post(`/api/passes/${row.id}/revoke`);
      await syncNow();
    });
  const share = () =>
    navigator.share({ title: handoverText.share_title(v.name), url: link.link }).catch(() => undefined);
  return html`
    <article class="card">
      <h2>${v.name}</h2>
      <p class="soft">
        ${shortDay(v.starts_on)}${' '}${handoverText.to}${' '}${shortDay(v.ends_on)}${' · '}
        <strong>${state}</strong>
        ${' · '}${v.colony_ids.map(nameOf).join(', ')}
      </p>
      ${
        (done.length > 0 || over) &&
        html`
          <section class="stack">
            <h3>${handoverText.done_by(v.name)}</h3>
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
                    <p class="soft">${handoverText.nothing}</p>
                  `
            }
          </section>
        `
      }
      ${
        link &&
        html`
          <div class="stack">
            <p>${handoverText.link_once}</p>
            <div
              class="qr"
              role="img"
              aria-label=${handoverText.share_title(v.name)}
              dangerouslySetInnerHTML=${{ __html: link.qr_svg }}
            />
            <p><a class="address" href=${link.link}>${link.link}</a></p>
            <p>
              ${handoverText.by_code}${' '}
              <span class="code">${link.code}</span>
            </p>
            ${
              'share' in navigator &&
              html`
                <button type="button" class="button wide" onClick=${share}>
                  <${Icon} name="share" />
                  ${handoverText.share}
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
              ${link ? handoverText.new_link : handoverText.make_link}
            </button>
            <button type="button" class="button" onClick=${() => setPreview(true)}>${handoverText.preview}</button>
            <a class="button" href=${`#/paper/${row.id}`}>
              <${Icon} name="print" />
              ${handoverText.print}
            </a>
          </div>
          <${CalendarAddress} passId=${row.id} />
        `
      }
      ${
        !v.revoked_at_ms &&
        html`
          <button type="button" class="button warn" disabled=${busy} onClick=${takeBack}>
            ${handoverText.take_back}
          </button>
        `
      }
      ${
        preview &&
        html`
          <${Sheet} title=${handoverText.preview_title(v.name)} onClose=${() => setPreview(false)}>
            <div class="stack" inert><${StandInView} given=${v} state="open" colonies=${rowsWith(v.colony_ids)} /></div>
          </${Sheet}>
        `
      }
    </article>
  `;
}

/** @param {string[]} ids */
const rowsWith = (ids) => ids.map((id) => rows.value.get(id)).filter((row) => row !== undefined);

const USUAL_DAYS = 7;

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
    stings(colony) ? `${colony.set.name} (${handoverText.stings})` : colony.set.name;
  const stinging = chosen.filter((id) => stings(colonies.find((each) => each.id === id)));
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    if (!chosen.length) return form.say(handoverText.none);
    if (text('ends_on') < text('starts_on')) return form.say(handoverText.backwards);
    return form.attempt(async () => {
      await keep('pass', {
        name: text('name'),
        colony_ids: chosen,
        starts_on: text('starts_on'),
        ends_on: text('ends_on'),
        instructions: text('instructions'),
        emergency_contact: text('emergency_contact'),
        stinging_ok_ids: stinging,
      });
      say(savingText.saved);
      formOf(event).reset();
      setChosen([]);
    });
  }
  return html`
    <form class="card" onSubmit=${save}>
      <h2>${handoverText.new}</h2>
      <label>
        ${handoverText.who}
        <input ref=${who} name="name" required maxlength="60" autocomplete="off" />
      </label>
      <${ManyChoice}
        label=${handoverText.colonies}
        values=${chosen}
        onChange=${setChosen}
        options=${colonies.map((colony) => [colony.id, named(colony)])}
      />
      ${
        chosen.length < colonies.length &&
        html`
          <button type="button" class="button" onClick=${() => setChosen(colonies.map((colony) => colony.id))}>
            ${handoverText.all}
          </button>
        `
      }
      ${
        stinging.length > 0 &&
        html`
          <p class="caution" role="status">${handoverText.stings_words}</p>
        `
      }
      <div class="pair">
        <label>
          ${handoverText.first}
          <input name="starts_on" type="date" required defaultValue=${trip?.starts_on ?? today.value} />
        </label>
        <label>
          ${handoverText.last}
          <input
            name="ends_on"
            type="date"
            required
            defaultValue=${trip?.ends_on ?? dayOf(new Date(now.peek() + USUAL_DAYS * DAY_MS))}
          />
        </label>
      </div>
      <label>
        ${handoverText.know}
        <textarea name="instructions" maxlength="4000"></textarea>
      </label>
      <label>
        ${handoverText.call}
        <input name="emergency_contact" maxlength="200" inputmode="tel" />
      </label>
      ${form.said}
      <button class="button main wide" disabled=${form.busy}>${handoverText.go}</button>
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
      return calendarText.ended;
    });
  const copy = () =>
    attempt(async () => {
      await navigator.clipboard.writeText(url);
      return calendarText.copied;
    });
  return html`
    <details>
      <summary>${calendarText.title}</summary>
      <p class="soft">${calendarText.about}</p>
      ${
        url &&
        html`
          <p>${calendarText.once}</p>
          <p><a class="address" href=${url.replace(/^https?:/, 'webcal:')}>${url}</a></p>
          <button type="button" class="button" onClick=${copy}>${calendarText.copy}</button>
        `
      }
      ${said}
      <div class="wrap">
        <button type="button" class="button" disabled=${busy} onClick=${make}>
          ${url ? calendarText.anew : calendarText.make}
        </button>
        <button type="button" class="button" disabled=${busy} onClick=${end}>${calendarText.end}</button>
      </div>
    </details>
  `;
}

// before you go away: which colonies need nobody, what to top up on the last day, and who needs a visit
