// The larder: foods in the house with their origin, and what an origin means before it is offered.
import { useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { originVerdict } from '../care/origin.js';
import { say as inTable } from '../care/words.js';
import { keep, say } from '../signals/actions.js';
import { catalogue, rowsOf, today } from '../signals/shelf.js';

export function LarderScreen() {
  const words = catalogue.value?.words ?? {};
  const origins = catalogue.value?.origins ?? {};
  const lots = rowsOf('lot').filter((lot) => !lot.set.finished_on);
  return html`<h1>The larder</h1>
    ${!lots.length && html`<p class="lead">No food is noted. Note what is in the house, and the round suggests it.</p>`}
    ${lots.map((lot) => {
      const verdict = originVerdict(origins, lot.set.origin, { got_on: lot.set.got_on ?? null, today: today.value });
      const bad = verdict.verdict === 'refuse' || verdict.verdict === 'hold';
      return html`<article class=${`card ${bad ? 'urgent' : ''}`} key=${lot.id}><h2>${lot.set.name || inTable(words, 'food', lot.set.food_code)}</h2>
        <p class="soft">${inTable(words, 'origin', lot.set.origin)}${lot.set.use_by ? ` · use by ${lot.set.use_by}` : ''}</p>
        <p>${verdict.verdict === 'hold' ? `On hold until ${verdict.until}. ` : verdict.verdict === 'refuse' ? 'Never offer this. ' : ''}${inTable(words, 'origin_why', verdict.reason_code)}</p>
        <button type="button" class="button" onClick=${() => keep('lot', { finished_on: today.value }, lot.id)}>Used up</button></article>`;
    })}
    <${LotForm} />`;
}

function LotForm() {
  const words = catalogue.value?.words ?? {};
  const origins = catalogue.value?.origins ?? {};
  const [origin, setOrigin] = useState('bought_or_bred');
  const [error, setError] = useState('');
  const verdict = originVerdict(origins, origin, { got_on: null, today: today.value });
  /** @param {any} event */
  async function save(event) {
    event.preventDefault();
    const form = new FormData(event.target);
    try {
      await keep('lot', {
        food_code: String(form.get('food')), origin, got_on: today.value,
        ...(form.get('name') ? { name: String(form.get('name')) } : {}), ...(form.get('use_by') ? { use_by: String(form.get('use_by')) } : {}),
        ...(verdict.until ? { hold_until: verdict.until } : {}),
      });
      say('Saved on this phone');
      event.target.reset();
    } catch (problem) {
      setError(/** @type {Error} */ (problem).message);
    }
  }
  return html`<form class="card" onSubmit=${save}><h2>Add a food</h2>
    <label>Food<select name="food">${Object.keys(catalogue.value?.foods ?? {}).map((code) => html`<option value=${code}>${inTable(words, 'food', code)}</option>`)}</select></label>
    <label>Where it comes from<select value=${origin} onChange=${(/** @type {any} */ e) => setOrigin(e.target.value)}>${Object.keys(origins).map((code) => html`<option value=${code}>${inTable(words, 'origin', code)}</option>`)}</select></label>
    <p class=${verdict.verdict === 'fine' ? 'soft' : 'caution'}>${inTable(words, 'origin_why', verdict.reason_code)}</p>
    <label>Name <small>(optional)</small><input name="name" maxlength="80" /></label>
    <label>Use by <small>(optional)</small><input name="use_by" type="date" /></label>
    ${error && html`<p role="alert" class="caution">${error}</p>`}
    ${verdict.verdict === 'refuse' ? html`<p role="alert"><strong>This does not go into the larder.</strong></p>` : html`<button class="button main">Add it</button>`}</form>`;
}
