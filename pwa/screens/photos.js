// The pictures of a colony: take one, how it grew side by side, and each of them large.
import { useState } from 'preact/hooks';
import { fullDay } from '../components/days.js';
import { html } from '../components/html.js';
import { Icon } from '../components/icon.js';
import { Photo } from '../components/photo.js';
import { SaveState } from '../components/save-state.js';
import { Sheet } from '../components/sheet.js';
import { say, voidLog } from '../signals/actions.js';
import { useHistory } from '../signals/history.js';
import { takePhoto } from '../signals/photos.js';
import { m } from '../text/en-more.js';

/** @typedef {import('../care/overlay.js').ShownRow} ShownRow */

const SHOWN = 24;

/** @param {{colonyId: string, name: string}} props */
export function Photos({ colonyId, name }) {
  const [busy, setBusy] = useState(false);
  const [large, setLarge] = useState('');
  const { log } = useHistory(colonyId);
  const all = log.filter((row) => row.kind === 'photo').slice(-SHOWN).reverse();
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
  const at = all.findIndex((row) => row.id === large);
  return html`<section class="stack" aria-label=${m.photos.title}><h2>${m.photos.title}</h2>
    ${all.length > 0 && html`<ol class="photo-strip">${all.map((row) => html`<li key=${row.id}>
      <button type="button" class="photo-button" aria-haspopup="dialog" aria-label=${m.photos.large(day(row))} onClick=${() => setLarge(row.id)}><${Photo} row=${row} words="" /></button>
      <p>${day(row)}</p>${row.state !== 'synced' && html`<p><${SaveState} state=${row.state} /></p>`}</li>`)}</ol>`}
    ${at >= 0 && html`<${Large} all=${all} at=${at} name=${name} onTurn=${setLarge} />`}
    <label class="button wide file"><${Icon} name="photo" />${busy ? m.photos.busy : m.photos.take}<input type="file" accept="image/*" capture="environment" disabled=${busy} onChange=${take} /></label></section>`;
}

/** One picture as large as the phone, and the way to its neighbours. @param {{all: ShownRow[], at: number, name: string, onTurn: (id: string) => void}} props */
function Large({ all, at, name, onTurn }) {
  const row = /** @type {ShownRow} */ (all[at]);
  const turn = (/** @type {ShownRow | undefined} */ to, /** @type {string} */ words) => html`<button type="button" class="button" disabled=${!to} onClick=${() => onTurn(to?.id ?? '')}>${words}</button>`;
  return html`<${Sheet} title=${day(row)} onClose=${() => onTurn('')}><${Photo} key=${row.id} row=${row} words=${m.photos.of(name, day(row))} />
    ${all.length > 1 && html`<div class="wrap even">${turn(all[at + 1], m.photos.older)}${turn(all[at - 1], m.photos.newer)}</div>`}
    <button type="button" class="button warn" onClick=${() => { onTurn(''); void voidLog(row); }}>${m.photos.remove}</button></${Sheet}>`;
}

/** @param {ShownRow} row */
const day = (row) => fullDay(row.happened_ms ?? 0);
