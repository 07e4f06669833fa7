// One task of the round: its tube, what to do in real units, why, and one tap to log it as suggested.
import { html, Icon } from '../components/html.js';
import { capital, Cautions, nameOf, portionInWords, Why, wordFor } from '../components/in-words.js';
import { useSwipe } from '../components/swipe.js';
import { dueInWords, Tube } from '../components/tube.js';
import { logAsSuggested, resolve } from '../signals/actions.js';
import { rows } from '../signals/shelf.js';
import { t } from '../text/en.js';

/** @param {import('../care/round.js').Item} item @returns {string} what to do */
export function taskTitle(item) {
  if (isFault(item)) return capital(wordFor('fault', item.reasons[0]?.code));
  return item.portion ? portionInWords(item.portion) : wordFor('todo', item.need);
}

/** @param {import('../care/round.js').Item} item */
const isFault = (item) => item.key.includes('/fault:');

/** What is due in the next days, in one line: looked at more than done, so its tick is small. @param {{item: import('../care/round.js').Item}} props */
export function CompactTask({ item }) {
  const title = taskTitle(item);
  return html`<article class="task compact">
    <${Side} item=${item} /><${Head} item=${item} title=${title} />
    ${item.suggested && html`<button type="button" class="button" aria-label=${`${t.round.as_suggested}: ${nameOf(item.colony_id)}, ${title}`} onClick=${() => logAsSuggested([item])}><${Icon} name="done" /></button>`}</article>`;
}

/** @param {{item: import('../care/round.js').Item}} props */
const Side = ({ item }) => html`<div class="side">${item.gauge ? html`<${Tube} gauge=${item.gauge} small />` : html`<span class=${`badge ${isFault(item) ? 'warn' : ''}`}><${Icon} name=${isFault(item) ? 'fault' : item.need} /></span>`}</div>`;

/** @param {{item: import('../care/round.js').Item, title: string}} props */
function Head({ item, title }) {
  const number = rows.value.get(item.colony_id)?.set.number;
  return html`<a class="open" href=${`#/colony/${item.colony_id}`}>
    <span class="eyebrow"><strong>${number ? `${number} · ` : ''}${nameOf(item.colony_id)}</strong> <span>${wordFor('need', item.need)}</span>
      <span class=${item.group === 'now' ? 'due-now' : ''}>${item.urgent ? t.round.urgent : dueInWords(item.due_at_ms)}</span></span>
    <span class="lead">${title}</span></a>`;
}

/** @param {{item: import('../care/round.js').Item, onOther: (item: any) => void, onLater?: (item: any) => void}} props */
export function Task({ item, onOther, onLater }) {
  const fault = isFault(item);
  const title = taskTitle(item);
  const swipe = useSwipe(item.suggested ? () => void logAsSuggested([item]) : null);
  return html`<article class=${`task ${item.urgent ? 'urgent' : ''}`} ...${swipe}>
    <${Side} item=${item} /><${Head} item=${item} title=${title} />
    <div class="more">${fault ? html`<div class="steps"><${Why} items=${item.reasons} open /></div>` : html`<${Why} items=${item.reasons} />`}<${Cautions} items=${item.cautions} /></div>
    <div class="actions">
      ${item.suggested && html`<button type="button" class="button main" aria-label=${`${t.round.as_suggested}: ${nameOf(item.colony_id)}, ${title}`} onClick=${() => logAsSuggested([item])}><${Icon} name="done" />${t.round.done_short}</button>`}
      ${fault && html`<button type="button" class="button main" onClick=${() => resolve(item.key.split('fault:')[1] ?? '')}>${t.round.resolved}</button>`}
      ${!fault && html`<button type="button" class="button" aria-label=${`${t.round.other}: ${title}`} onClick=${() => onOther(item)}>${t.round.other}</button>`}
      ${onLater && !item.urgent && item.group !== 'next' && html`<button type="button" class="button" aria-label=${`${t.round.later}: ${title}`} onClick=${() => onLater(item)}>${t.round.later}</button>`}
    </div></article>`;
}
