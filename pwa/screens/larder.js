// The larder: foods in the house with their origin and how long they keep or are held, what to get by when, and sugar
// water mixed at home.
import { useState } from 'preact/hooks';
import { useAnswer } from '../components/answer.js';
import { html, Icon } from '../components/html.js';
import { capital, inWords, weekDay, wordFor, wordOf } from '../components/in-words.js';
import { Empty } from '../components/states.js';
import { DAY_MS } from '../care/gauges.js';
import { originVerdict } from '../care/origin.js';
import { keep, say } from '../signals/actions.js';
import { today } from '../signals/clock.js';
import { catalogue, outbox, rows, rowsOf } from '../signals/rows.js';
import { calculatorText } from '../text/en/calculators.js';
import { foodText } from '../text/en/food.js';
import { larderText } from '../text/en/larder.js';
import { savingText } from '../text/en/saving.js';
import { countedIn, LeftSheet, LotSheet, MixSheet } from './lot-sheets.js';

/** Whole days from today to a date. @param {string} date ISO */
const daysTo = (date) => Math.round((Date.parse(date) - Date.parse(today.value)) / DAY_MS);

export function LarderScreen() {
  const [sheet, setSheet] = useState('');
  const lots = rowsOf('lot')
    .filter((lot) => !lot.set.finished_on)
    .sort((a, b) => ((a.set.use_by ?? '9') < (b.set.use_by ?? '9') ? -1 : 1));
  // asked anew once a change has reached the server
  const known = [outbox.value.length, ...rowsOf('lot').map((lot) => `${lot.id} ${lot.rev}`)].join();
  const { answer, problem } = useAnswer('/api/larder', known);
  const ahead = problem ? null : answer;
  return html`
    <h1>${larderText.title}</h1>
    ${
      !lots.length &&
      html`
        <${Empty} bare title=${larderText.empty} />
      `
    }
    ${
      lots.length > 0 &&
      html`
        <section class="stack" aria-label=${larderText.lots}>
          ${lots.map(
            (lot) => html`
              <${Lot}
                key=${lot.id}
                lot=${lot}
                left=${ahead?.left.find((/** @type {Left} */ each) => each.lot_id === lot.id)}
              />
            `,
          )}
        </section>
      `
    }
    <div class="wrap even">
      <button type="button" class="button main" onClick=${() => setSheet('lot')}>
        <${Icon} name="add" />
        ${larderText.add}
      </button>
      <button type="button" class="button" onClick=${() => setSheet('mix')}>
        <${Icon} name="sugar" />
        ${larderText.mix}
      </button>
    </div>
    ${
      ahead?.outlooks.length > 0 &&
      html`
        <${LarderOutlook} outlooks=${ahead.outlooks} spoils=${ahead.spoils} />
      `
    }
    <a class="button" href="#/reckon">${calculatorText.title}</a>
    ${
      sheet === 'lot' &&
      html`
        <${LotSheet} onClose=${() => setSheet('')} />
      `
    }
    ${
      sheet === 'mix' &&
      html`
        <${MixSheet} onClose=${() => setSheet('')} />
      `
    }
  `;
}

/**
 * @typedef {{lot_id: string, amount: number,
 *   given: number}} Left what feedings since the amount was written down leave of a lot
 */

/**
 * @param {{lot: import('../care/overlay.js').ShownRow<'lot'>, left?: Left}} props `left`: from the server,
 *   so with a connection only
 */
function Lot({ lot, left }) {
  const v = lot.set;
  const name = v.name || capital(wordFor('food', v.food_code));
  const [open, setOpen] = useState(false);
  const verdict = originVerdict(catalogue.value?.origins ?? {}, v.origin, {
    got_on: v.got_on ?? null,
    today: today.value,
  });
  const days = v.use_by ? daysTo(v.use_by) : null;
  const bad = ['refuse', 'hold'].includes(verdict.verdict) || (days !== null && days < 0);
  const state =
    verdict.verdict === 'hold' && verdict.until
      ? larderText.held(weekDay(verdict.until), daysTo(verdict.until))
      : verdict.verdict === 'refuse'
        ? larderText.never
        : days === null
          ? ''
          : days < 0
            ? larderText.over
            : larderText.left(days);
  const amount = `${v.amount} ${foodText.units[v.unit ?? '']?.(v.amount ?? 0) ?? ''}`;
  const facts = [
    v.size_class ? wordFor('size', v.size_class) : '',
    wordOf(foodText.tints, v.tint),
    v.amount == null ? '' : left?.given ? larderText.by_logs(Number(left.amount.toFixed(1)), amount) : amount,
    wordFor('origin', v.origin),
    v.got_on ? larderText.got(weekDay(v.got_on)) : '',
    v.use_by ? larderText.use_by(weekDay(v.use_by)) : '',
  ]
    .filter(Boolean)
    .join(' · ');
  const need = catalogue.value?.foods?.[v.food_code]?.need ?? 'other';
  async function usedUp() {
    await keep('lot', { finished_on: today.value }, lot.id);
    say(larderText.used_up, async () => {
      await keep('lot', { finished_on: null }, lot.id);
      say(savingText.taken_back);
    });
  }
  return html`
    <article class=${`card ${bad ? 'urgent' : ''}`}>
      <div class="row top-align">
        <span class="badge"><${Icon} name=${need} /></span>
        <div class="grow stack">
          <h2>${name}</h2>
          ${
            state &&
            html`
              <p><strong>${state}</strong></p>
            `
          }
          <p class="soft">${facts}</p>
          ${
            verdict.verdict !== 'fine' &&
            html`
              <p class="caution">${wordFor('origin_why', verdict.reason_code)}</p>
            `
          }
        </div>
      </div>
      <div class="wrap even">
        <button
          type="button"
          class="button"
          aria-label=${`${larderText.left_now}: ${name}`}
          onClick=${() => setOpen(true)}
        >
          ${larderText.left_now}
        </button>
        <button type="button" class="button" aria-label=${`${larderText.used}: ${name}`} onClick=${usedUp}>
          ${larderText.used}
        </button>
      </div>
      ${
        open &&
        html`
          <${LeftSheet} lot=${lot} title=${`${larderText.left_now}: ${name}`} onClose=${() => setOpen(false)} />
        `
      }
    </article>
  `;
}

/** @typedef {{code: string, args: Record<string, any>}} Reason */
/** @typedef {{lot_id: string, food_code: string, on: string, amount: number}} Spoiling */
/** @typedef {{food_code: string, buy_by: string | null, spoils: Spoiling[], reasons: Reason[]}} Outlook */

/** "Get it today" and "Spoils first" say these. */
const SAID_ELSEWHERE = ['larder_out', 'larder_spoils'];

/** @param {Reason} reason */
const told = (reason) => inWords('reason', reason);

/** What to get by when, and what spoils first. @param {{outlooks: Outlook[], spoils: Spoiling[]}} props */
function LarderOutlook({ outlooks, spoils }) {
  return html`
    <section class="card" aria-label=${larderText.get.title}>
      <h2>${larderText.get.title}</h2>
      <ul class="done-list">
        ${outlooks.map(
          (each) => html`
            <${Food} key=${each.food_code} outlook=${each} />
          `,
        )}
      </ul>
      ${
        spoils.length > 0 &&
        html`
          <h3>${larderText.get.spoils}</h3>
          <ul class="done-list">
            ${spoils.map(
              (lot) => html`
                <li key=${lot.lot_id}>
                  <div class="grow">
                    <strong>${lotName(lot)}</strong>
                    <p class="soft">${told({ code: 'larder_spoils', args: { on: lot.on, amount: amountOf(lot) } })}</p>
                  </div>
                </li>
              `,
            )}
          </ul>
        `
      }
    </section>
  `;
}

/** @param {{outlook: Outlook}} props */
function Food({ outlook: { food_code, buy_by, reasons } }) {
  const need = catalogue.value?.foods?.[food_code]?.need ?? 'other';
  return html`
    <li>
      <span class="badge"><${Icon} name=${need} /></span>
      <div class="grow">
        <h3>${foodName(food_code)}</h3>
        ${
          buy_by &&
          html`
            <p><strong>${buy_by <= today.value ? larderText.get.today : larderText.get.by(weekDay(buy_by))}</strong></p>
          `
        }
        ${reasons
          .filter(({ code }) => !SAID_ELSEWHERE.includes(code))
          .map(
            (reason) => html`
              <p class="soft">${told(reason)}</p>
            `,
          )}
      </div>
    </li>
  `;
}

/** @param {string} code */
const foodName = (code) => capital(wordFor('food', code));
/** @param {Spoiling} lot */
const lotName = (lot) => rows.value.get(lot.lot_id)?.set.name || foodName(lot.food_code);
/** The server counts in the lot's own unit, but drops as mL and legs as pieces. @param {Spoiling} lot */
function amountOf({ lot_id, amount }) {
  const own = rows.value.get(lot_id)?.set.unit ?? '';
  const unit = countedIn(own);
  const shown = Number(amount.toFixed(1));
  return [shown, foodText.units[unit]?.(shown)].filter((part) => part !== undefined).join(' ');
}
