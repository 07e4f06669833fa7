// The pictures of a colony: take one, and how it grew, side by side.
import { useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { Photo } from '../components/photo.js';
import { SaveState } from '../components/save-state.js';
import { remove, say } from '../signals/actions.js';
import { takePhoto } from '../signals/photos.js';
import { events } from '../signals/shelf.js';
import { m } from '../text/en-more.js';

const SHOWN = 24;

/** @param {{colonyId: string, name: string}} props */
export function Photos({ colonyId, name }) {
  const [busy, setBusy] = useState(false);
  const [large, setLarge] = useState('');
  const all = (events.value.get(colonyId) ?? []).filter((row) => row.kind === 'photo').slice(-SHOWN);
  /** @param {any} event */
  const take = async (event) => {
    const [file] = event.target.files;
    event.target.value = '';
    if (!file) return;
    setBusy(true);
    try {
      await takePhoto(colonyId, file);
    } catch (error) {
      if (/** @type {any} */ (error).name === 'NotSaved') throw error;
      say(m.photos.unreadable);
    } finally {
      setBusy(false);
    }
  };
  return html`<section class="stack" aria-label=${m.photos.title}><h2>${m.photos.title}</h2>
    ${all.length > 0 && html`<ol class="photo-strip">${all.map((row) => html`<li key=${row.id}>
      <button type="button" class="photo-button" aria-expanded=${large === row.id} onClick=${() => setLarge(large === row.id ? '' : row.id)}><${Photo} row=${row} words=${m.photos.of(name, day(row))} /></button>
      <p class="soft">${day(row)} <${SaveState} state=${row.state} /></p></li>`)}</ol>`}
    ${all.filter((row) => row.id === large).map((row) => html`<figure class="stack photo-large" key=${row.id}><${Photo} row=${row} words=${m.photos.of(name, day(row))} />
      <button type="button" class="button" onClick=${() => { setLarge(''); void remove('photo', row.id); }}>${m.photos.remove}</button></figure>`)}
    <label class="button wide file">${busy ? m.photos.busy : m.photos.take}<input type="file" accept="image/*" capture="environment" disabled=${busy} onChange=${take} /></label></section>`;
}

/** @param {import('../care/overlay.js').ShownRow} row */
const day = (row) => new Date(row.happened_ms ?? 0).toLocaleDateString([], { dateStyle: 'medium' });
