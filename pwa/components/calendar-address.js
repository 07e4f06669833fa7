// The secret address of a calendar feed: made, shown once, and ended.
import { useState } from 'preact/hooks';
import { html } from './html.js';
import { post } from '../signals/people.js';
import { syncNow } from '../signals/shelf.js';

/** @param {{passId: string | null}} props */
export function CalendarAddress({ passId }) {
  const [url, setUrl] = useState('');
  const [note, setNote] = useState('');
  /** @param {() => Promise<string>} work */
  const attempt = async (work) => {
    try {
      setNote(await work());
    } catch (problem) {
      setNote(/** @type {Error} */ (problem).message);
    }
  };
  const make = () => attempt(async () => {
    await syncNow();
    setUrl((await post('/api/feeds', { pass_id: passId })).url);
    return '';
  });
  const end = () => attempt(async () => {
    await post('/api/feeds/revoke', { pass_id: passId });
    setUrl('');
    return 'The calendar address has ended.';
  });
  return html`<details><summary>Show the rounds in a calendar</summary>
    <p class="soft">Calendars look every 1 to 24 hours, and many leave our alarms out: set an alert of your own there. Whoever has the address can read the rounds. It ends after a year; a new one ends the old.</p>
    ${url && html`<p>Add this address as a calendar subscription. It is shown once.</p><p><a class="address" href=${url.replace(/^https?:/, 'webcal:')}>${url}</a></p>
      <button type="button" class="button" onClick=${() => attempt(async () => { await navigator.clipboard.writeText(url); return 'Copied.'; })}>Copy the address</button>`}
    ${note && html`<p role="status">${note}</p>`}
    <div class="wrap"><button type="button" class="button" onClick=${make}>${url ? 'Make a new address' : 'Make the address'}</button>
      <button type="button" class="button" onClick=${end}>End the address</button></div></details>`;
}
