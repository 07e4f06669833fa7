// The secret address of a calendar feed: made, shown once, and ended.
import { useState } from 'preact/hooks';
import { post } from '../signals/people.js';
import { syncNow } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { useAttempt } from './attempt.js';
import { html } from './html.js';

/** @param {{passId: string | null}} props */
export function CalendarAddress({ passId }) {
  const [url, setUrl] = useState('');
  const { attempt, busy, said } = useAttempt();
  const make = () => attempt(async () => {
    await syncNow();
    setUrl((await post('/api/feeds', { pass_id: passId })).url);
  });
  const end = () => attempt(async () => {
    await post('/api/feeds/revoke', { pass_id: passId });
    setUrl('');
    return m.calendar.ended;
  });
  const copy = () => attempt(async () => { await navigator.clipboard.writeText(url); return m.calendar.copied; });
  return html`<details><summary>${m.calendar.title}</summary>
    <p class="soft">${m.calendar.about}</p>
    ${url && html`<p>${m.calendar.once}</p><p><a class="address" href=${url.replace(/^https?:/, 'webcal:')}>${url}</a></p>
      <button type="button" class="button" onClick=${copy}>${m.calendar.copy}</button>`}
    ${said}
    <div class="wrap"><button type="button" class="button" disabled=${busy} onClick=${make}>${url ? m.calendar.anew : m.calendar.make}</button>
      <button type="button" class="button" disabled=${busy} onClick=${end}>${m.calendar.end}</button></div></details>`;
}
