// What to get by when, and what spoils first; the server reckons it, so it is there only with a connection.
import { useAnswer } from '../components/answer.js';
import { weekDay } from '../components/days.js';
import { html } from '../components/html.js';
import { Icon } from '../components/icon.js';
import { inWords } from '../components/reasons.js';
import { say as inTable } from '../care/words.js';
import { catalogue, rows, rowsOf, today } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { t } from '../text/en.js';
import { capital } from './event-words.js';
import { countedIn } from './larder-forms.js';

/** @typedef {{code: string, args: Record<string, any>}} Reason */
/** @typedef {{lot_id: string, food_code: string, on: string, amount: number}} Spoiling */
/** @typedef {{food_code: string, buy_by: string | null, spoils: Spoiling[], reasons: Reason[]}} Outlook */

/** "Get it today" and "Spoils first" say these. */
const SAID_ELSEWHERE = ['larder_out', 'larder_spoils'];

/** @param {Reason} reason */
const told = (reason) => inWords('reason', reason);

export function LarderOutlook() {
  const lots = rowsOf('lot').map((lot) => `${lot.id} ${lot.rev}`).join(); // asked anew once a change has reached the server
  const { answer, problem } = useAnswer('/api/larder', lots);
  /** @type {Outlook[]} */
  const outlooks = problem ? [] : answer?.outlooks ?? [];
  /** @type {Spoiling[]} */
  const spoils = problem ? [] : answer?.spoils ?? [];
  if (!outlooks.length) return null;
  return html`<section class="card" aria-label=${m.get.title}><h2>${m.get.title}</h2>
    <ul class="done-list">${outlooks.map((each) => html`<${Food} key=${each.food_code} outlook=${each} />`)}</ul>
    ${spoils.length > 0 && html`<h3>${m.get.spoils}</h3><ul class="done-list">${spoils.map((lot) => html`<li key=${lot.lot_id}><div class="grow"><strong>${lotName(lot)}</strong>
      <p class="soft">${told({ code: 'larder_spoils', args: { on: lot.on, amount: amountOf(lot) } })}</p></div></li>`)}</ul>`}</section>`;
}

/** @param {{outlook: Outlook}} props */
function Food({ outlook: { food_code, buy_by, reasons } }) {
  const need = catalogue.value?.foods?.[food_code]?.need ?? 'other';
  return html`<li><span class="badge"><${Icon} name=${need} /></span><div class="grow">
    <h3>${foodName(food_code)}</h3>${buy_by && html`<p><strong>${buy_by <= today.value ? m.get.today : m.get.by(weekDay(buy_by))}</strong></p>`}
    ${reasons.filter(({ code }) => !SAID_ELSEWHERE.includes(code)).map((reason) => html`<p class="soft">${told(reason)}</p>`)}</div></li>`;
}

/** @param {string} code */
const foodName = (code) => capital(inTable(catalogue.value?.words ?? {}, 'food', code));
/** @param {Spoiling} lot */
const lotName = (lot) => rows.value.get(lot.lot_id)?.set.name || foodName(lot.food_code);
/** The server counts in the lot's own unit, but drops as mL and legs as pieces. @param {Spoiling} lot */
function amountOf({ lot_id, amount }) {
  const own = rows.value.get(lot_id)?.set.unit ?? '';
  const unit = countedIn(own);
  const shown = Number(amount.toFixed(1));
  return [shown, t.units[unit]?.(shown)].filter((part) => part !== undefined).join(' ');
}
