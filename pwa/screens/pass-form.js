// A new pass: who, which colonies, from when to when, and what they should know.
import { useEffect, useRef, useState } from 'preact/hooks';
import { textsOf, useAttempt } from '../components/attempt.js';
import { ManyChoice } from '../components/choice.js';
import { html } from '../components/html.js';
import { DAY_MS } from '../care/gauges.js';
import { dayOf } from '../care/instants.js';
import { keep, say } from '../signals/actions.js';
import { catalogue, now, today } from '../signals/shelf.js';
import { t } from '../text/en.js';
import { m } from '../text/en-more.js';
import { coloniesInOrder } from './shelf.js';

const USUAL_DAYS = 7;

/** @param {{trip: import('./holiday.js').Trip | null}} props what to begin with; then the form is where the eye goes */
export function PassForm({ trip }) {
  const colonies = coloniesInOrder();
  const [chosen, setChosen] = useState(trip?.colony_ids ?? []);
  const who = useRef(/** @type {HTMLInputElement | null} */ (null));
  useEffect(() => { if (trip) who.current?.focus(); }, []);
  const form = useAttempt();
  const stings = (/** @type {any} */ colony) => Boolean(catalogue.value?.species?.[colony?.set.species_code]?.stings ?? colony?.set.stings);
  const stinging = chosen.filter((id) => stings(colonies.find((each) => each.id === id)));
  /** @param {any} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event.target);
    if (!chosen.length) return form.say(m.handover.none);
    if (text('ends_on') < text('starts_on')) return form.say(m.handover.backwards);
    return form.attempt(async () => {
      await keep('pass', {
        name: text('name'), colony_ids: chosen, starts_on: text('starts_on'), ends_on: text('ends_on'), instructions: text('instructions'),
        emergency_contact: text('emergency_contact'), stinging_ok_ids: stinging,
      });
      say(t.saved);
      event.target.reset();
      setChosen([]);
    });
  }
  return html`<form class="card" onSubmit=${save}><h2>${m.handover.new}</h2>
    <label>${m.handover.who}<input ref=${who} name="name" required maxlength="60" autocomplete="off" /></label>
    <${ManyChoice} label=${m.handover.colonies} values=${chosen} onChange=${setChosen} options=${colonies.map((colony) => [colony.id, `${colony.set.name}${stings(colony) ? ` (${m.handover.stings})` : ''}`])} />
    ${chosen.length < colonies.length && html`<button type="button" class="button" onClick=${() => setChosen(colonies.map((colony) => colony.id))}>${m.handover.all}</button>`}
    ${stinging.length > 0 && html`<p class="caution" role="status">${m.handover.stings_words}</p>`}
    <div class="pair"><label>${m.handover.first}<input name="starts_on" type="date" required defaultValue=${trip?.starts_on ?? today.value} /></label>
    <label>${m.handover.last}<input name="ends_on" type="date" required defaultValue=${trip?.ends_on ?? dayOf(new Date(now.peek() + USUAL_DAYS * DAY_MS))} /></label></div>
    <label>${m.handover.know}<textarea name="instructions" maxlength="4000"></textarea></label>
    <label>${m.handover.call}<input name="emergency_contact" maxlength="200" inputmode="tel" /></label>
    ${form.said}
    <button class="button main wide" disabled=${form.busy}>${m.handover.go}</button></form>`;
}
