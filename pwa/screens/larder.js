// The larder: foods in the house with their origin and how long they keep or are held, what to get by when, and sugar
// water mixed at home.
import { useState } from 'preact/hooks';
import { useAnswer } from '../components/answer.js';
import { html, Icon } from '../components/html.js';
import { Empty } from '../components/states.js';
import { DAY_MS } from '../care/rules.js';
import { originVerdict } from '../care/origin.js';
import { keep, tell } from '../signals/actions.js';
import { today } from '../signals/clock.js';
import { catalogue, outbox, rows, rowsOf } from '../signals/rows.js';
import { countedIn, LeftSheet, LotSheet, MixSheet } from './lot-sheets.js';
import { inWords } from '../components/in-words.js';
import { labelled, say, sayIf, sayOf } from '../words/say.js';
import { capital, numeral, weekDay } from '../words/shown.js';

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
    <h1>${say('larder-title')}</h1>
    ${
      !lots.length &&
      html`
        <${Empty} bare title=${say('larder-empty')} />
      `
    }
    ${
      lots.length > 0 &&
      html`
        <section class="stack" aria-label=${say('larder-lots')}>
          ${lots.map(
            (lot) => html`
              <${Lot} key=${lot.id} lot=${lot} left=${ahead?.left.find((each) => each.lot_id === lot.id)} />
            `,
          )}
        </section>
      `
    }
    <div class="wrap even">
      <button type="button" class="button main" onClick=${() => setSheet('lot')}>
        <${Icon} name="add" />
        ${say('larder-add')}
      </button>
      <button type="button" class="button" onClick=${() => setSheet('mix')}>
        <${Icon} name="sugar" />
        ${say('larder-mix')}
      </button>
    </div>
    ${
      ahead &&
      ahead.outlooks.length > 0 &&
      html`
        <${LarderOutlook} outlooks=${ahead.outlooks} spoils=${ahead.spoils} />
      `
    }
    <a class="button" href="#/reckon">${say('calculator-title')}</a>
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

/** @typedef {import('../answers.d.ts').Left} Left */

/**
 * @param {{lot: import('../care/overlay.js').ShownRow<'lot'>, left?: Left}} props `left`: from the server,
 *   so with a connection only
 */
function Lot({ lot, left }) {
  const v = lot.set;
  const name = v.name || capital(sayOf('food', v.food_code));
  const [open, setOpen] = useState(false);
  const verdict = originVerdict(catalogue.value?.origins ?? {}, v.origin, {
    got_on: v.got_on ?? null,
    today: today.value,
  });
  const days = v.use_by ? daysTo(v.use_by) : null;
  const bad = ['refuse', 'hold'].includes(verdict.verdict) || (days !== null && days < 0);
  const state =
    verdict.verdict === 'hold' && verdict.until
      ? say('larder-held', { day: weekDay(verdict.until), days: daysTo(verdict.until) })
      : verdict.verdict === 'refuse'
        ? say('larder-never')
        : days === null
          ? ''
          : days < 0
            ? say('larder-over')
            : say('larder-left', { days });
  const amount = amountInWords(v.amount ?? 0, v.unit ?? '');
  const facts = [
    v.size_class ? sayOf('size', v.size_class) : '',
    sayIf('measure-tint', v.tint),
    v.amount == null
      ? ''
      : left?.given
        ? say('larder-by-logs', { left: Number(left.amount.toFixed(1)), whole: amount })
        : amount,
    sayOf('origin', v.origin),
    v.got_on ? say('larder-got', { day: weekDay(v.got_on) }) : '',
    v.use_by ? say('larder-use-by', { day: weekDay(v.use_by) }) : '',
  ]
    .filter(Boolean)
    .join(' · ');
  const need = catalogue.value?.foods?.[v.food_code]?.need ?? 'other';
  async function usedUp() {
    await keep('lot', { finished_on: today.value }, lot.id);
    tell(say('larder-used-up'), async () => {
      await keep('lot', { finished_on: null }, lot.id);
      tell(say('saving-taken-back'));
    });
  }
  return html`
    <article class=${`card ${bad ? 'urgent' : ''}`}>
      <div class="row top-align">
        <span class="badge">
          <${Icon} name=${need} />
        </span>
        <div class="grow stack">
          <h2>${name}</h2>
          ${
            state &&
            html`
              <p>
                <strong>${state}</strong>
              </p>
            `
          }
          <p class="soft">${facts}</p>
          ${
            verdict.verdict !== 'fine' &&
            html`
              <p class="caution">${sayOf('origin-why', verdict.reason_code)}</p>
            `
          }
        </div>
      </div>
      <div class="wrap even">
        <button
          type="button"
          class="button"
          aria-label=${labelled(say('larder-left-now'), name)}
          onClick=${() => setOpen(true)}
        >
          ${say('larder-left-now')}
        </button>
        <button type="button" class="button" aria-label=${labelled(say('larder-used'), name)} onClick=${usedUp}>
          ${say('larder-used')}
        </button>
      </div>
      ${
        open &&
        html`
          <${LeftSheet} lot=${lot} title=${labelled(say('larder-left-now'), name)} onClose=${() => setOpen(false)} />
        `
      }
    </article>
  `;
}

/** @typedef {import('../kinds.d.ts').Reason} Reason */
/** @typedef {import('../answers.d.ts').Spoiling} Spoiling */
/** @typedef {import('../answers.d.ts').Outlook} Outlook */

/** "Get it today" and "Spoils first" say these. */
const SAID_ELSEWHERE = ['larder_out', 'larder_spoils'];

/** @param {Reason} reason */
const told = (reason) => inWords('reason', reason);

/** What to get by when, and what spoils first. @param {{outlooks: Outlook[], spoils: Spoiling[]}} props */
function LarderOutlook({ outlooks, spoils }) {
  return html`
    <section class="card" aria-label=${say('larder-get-title')}>
      <h2>${say('larder-get-title')}</h2>
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
          <h3>${say('larder-get-spoils')}</h3>
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
      <span class="badge">
        <${Icon} name=${need} />
      </span>
      <div class="grow">
        <h3>${foodName(food_code)}</h3>
        ${
          buy_by &&
          html`
            <p>
              <strong>
                ${buy_by <= today.value ? say('larder-get-today') : say('larder-get-by', { day: weekDay(buy_by) })}
              </strong>
            </p>
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

/** @param {number} count @param {string} unit */
const amountInWords = (count, unit) => (unit ? sayOf('measure-amount', unit, { count }) : numeral(count));
/** @param {string} code */
const foodName = (code) => capital(sayOf('food', code));
/** @param {Spoiling} lot */
const lotName = (lot) => rows.value.get(lot.lot_id)?.set.name || foodName(lot.food_code);
/** The server counts in the lot's own unit, but drops as mL and legs as pieces. @param {Spoiling} lot */
function amountOf({ lot_id, amount }) {
  const own = rows.value.get(lot_id)?.set.unit ?? '';
  const unit = countedIn(own);
  return amountInWords(Number(amount.toFixed(1)), unit);
}
