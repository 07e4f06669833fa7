// Logging a feeding: what the plan suggests, what is in the house, and what an origin means at the moment of choosing.
import { useState } from 'preact/hooks';
import { Choice } from '../components/choices.js';
import { typed } from '../components/forms.js';
import { html } from '../components/html.js';
import { Stepper } from '../components/stepper.js';
import { originsOf, originVerdict, usualOrigin } from '../care/origin.js';
import { hoursToRemoval } from '../care/round.js';
import { today } from '../signals/clock.js';
import { catalogue, events, planOf, rowsOf } from '../signals/rows.js';
import { runningTasting } from '../signals/tastings.js';
import { SIZES } from '../care/codes.js';
import { Cautions } from '../components/in-words.js';
import { ounces, volume } from '../words/measures.js';
import { choicesOf, say, sayOf } from '../words/say.js';
import { capital, shortDay } from '../words/shown.js';

const SHOWN_FIRST = 5;
const MOST = /** @type {Record<string, number>} */ ({
  drop: 60,
  ml: 200,
  piece: 500,
  leg: 40,
  slice: 40,
  mg: 5000,
  seed: 2000,
  leaf: 200,
});
const LEAST = /** @type {Record<string, number>} */ ({ ml: 0.1, mg: 5 });

/**
 * @typedef {<K extends import('../kinds.d.ts').EventKind>(what: K,
 *   set: Partial<import('../kinds.d.ts').FieldsOf[K]>) => Promise<boolean>} Save logs it, and ends the sheet
 * @typedef {{colonyId: string, need?: string, item?: import('../care/round.js').Item, save: Save}} FormProps
 */

/**
 * Foods in the order in which a thumb will want them: the plan's, this colony's last, what is in the house, the rest.
 * @param {string} colonyId
 * @param {string[]} planned
 */
function foodsInOrder(colonyId, planned) {
  const last = (events.value.get(colonyId) ?? [])
    .filter((row) => row.kind === 'feeding')
    .map((row) => row.set.food_code ?? '')
    .reverse();
  const house = rowsOf('lot')
    .filter((lot) => !lot.set.finished_on)
    .map((lot) => lot.set.food_code);
  const foods = catalogue.value?.foods ?? {};
  return [...new Set([...planned, ...last, ...house, ...Object.keys(foods)])].filter((code) => foods[code]);
}

/** @param {import('../care/overlay.js').ShownRow<'lot'>} lot @param {string} food */
const lotName = ({ set }, food) => set.name || (set.got_on ? say('larder-got', { day: shortDay(set.got_on) }) : food);

/**
 * Prefilled by the plan, last used foods first, and what an origin means at the moment of choosing.
 * @param {FormProps} props
 */
export function FeedingForm({ colonyId, need, item, save }) {
  const foods = catalogue.value?.foods ?? {};
  const origins = catalogue.value?.origins ?? {};
  const plan = planOf(colonyId);
  const tasks = (plan?.set.tasks ?? []).filter((task) => task.portion);
  const task = item?.portion ? item : (tasks.find((each) => each.need === need) ?? tasks[0]);
  const [order] = useState(() => foodsInOrder(colonyId, task?.portion ? [task.portion.food_code] : []));
  const [food, setFood] = useState(order[0] ?? 'sugar_water');
  const [amount, setAmount] = useState(task?.portion?.amount ?? 1);
  const [size, setSize] = useState(task?.portion?.size_class ?? '');
  const [form, setForm] = useState(task?.portion?.form ?? '');
  const [more, setMore] = useState(false);
  const lots = rowsOf('lot').filter((lot) => !lot.set.finished_on && lot.set.food_code === food);
  const [lotId, setLotId] = useState(lots[0]?.id ?? '');
  const [origin, setOrigin] = useState(lots[0]?.set.origin ?? usualOrigin(foods, food));
  /** @type {Partial<import('../kinds.d.ts').FoodRow>} */
  const kind = foods[food] ?? {};
  const planned = task?.portion?.food_code === food ? task.portion : null;
  const poured = kind.unit === 'drop';
  const unit = poured ? (form === 'feeder' ? 'ml' : 'drop') : (planned?.unit ?? kind.unit ?? 'piece');
  const is_prey = kind.need === 'protein' && ['piece', 'leg', 'slice'].includes(unit);
  const lot = lots.find((each) => each.id === lotId);
  const verdict = originVerdict(origins, lot?.set.origin ?? origin, {
    got_on: lot?.set.got_on ?? null,
    today: today.value,
  });
  const stop = ['refuse', 'wait', 'hold'].includes(verdict.verdict);
  const running = runningTasting(colonyId);
  const tasting = running?.set.food_codes.includes(food) ? running : undefined;
  /** @param {string} code */
  function pick(code) {
    const own = task?.portion?.food_code === code ? task.portion : null;
    const held = rowsOf('lot').find((each) => !each.set.finished_on && each.set.food_code === code);
    setFood(code);
    setAmount(own?.amount ?? 1);
    setSize(own?.size_class ?? '');
    setForm(own?.form ?? foods[code]?.form ?? '');
    setLotId(held?.id ?? '');
    setOrigin(held?.set.origin ?? usualOrigin(foods, code));
  }
  /** @param {string} how */
  function pour(how) {
    setForm(how);
    setAmount(how === planned?.form ? planned.amount : 1);
  }
  const set = /** @type {Partial<import('../kinds.d.ts').FieldsOf['feeding']>} */ ({
    need: kind.need ?? 'protein',
    food_code: food,
    amount,
    unit,
    origin: lot?.set.origin ?? origin,
    ...(lot ? { lot_id: lot.id } : {}),
    ...(tasting ? { tasting_id: tasting.id } : {}),
    ...(form || kind.form ? { form: form || kind.form } : {}),
    ...(is_prey && size ? { size_class: size } : {}),
    ...(item ? { task_key: item.task_key } : {}),
  });
  const hours = hoursToRemoval(set, foods);
  return html`
    <${Choice}
      label=${say('log-food')}
      value=${food}
      onPick=${pick}
      options=${(more ? order : order.slice(0, SHOWN_FIRST)).map((code) => [code, capital(sayOf('food', code))])}
    />
    ${
      !more &&
      order.length > SHOWN_FIRST &&
      html`
        <button type="button" class="button" onClick=${() => setMore(true)}>${say('log-more')}</button>
      `
    }
    ${
      poured &&
      html`
        <${Choice}
          label=${say('log-offered-in')}
          value=${form === 'feeder' ? 'feeder' : 'drop'}
          onPick=${pour}
          options=${choicesOf('log-vessel', ['drop', 'feeder'])}
        />
      `
    }
    <${Stepper}
      label=${say('log-amount')}
      value=${amount}
      step=${LEAST[unit] ?? 1}
      most=${MOST[unit] ?? 500}
      unit=${sayOf('measure-unit', unit, { count: amount })}
      words=${unit === 'ml' && ounces() ? volume(amount) : undefined}
      onChange=${setAmount}
    />
    ${
      is_prey &&
      html`
        <${Choice}
          label=${say('log-size')}
          value=${size}
          onPick=${setSize}
          options=${SIZES.map((code) => [code, capital(sayOf('size', code))])}
        />
      `
    }
    ${
      lots.length > 0 &&
      html`
        <${Choice}
          label=${say('log-lot')}
          value=${lotId}
          onPick=${setLotId}
          options=${[
            ...lots.map(/** @returns {[string, string]} */ (each) => [each.id, lotName(each, sayOf('food', food))]),
            ['', say('log-no-lot')],
          ]}
        />
      `
    }
    ${
      !lot &&
      html`
        <label>
          ${say('log-from')}
          <select
            value=${origin}
            onChange=${typed((/** @type {import('../kinds.d.ts').Origin} */ code) => setOrigin(code))}
          >
            ${originsOf(foods, origins, food).map(
              (code) => html`
                <option value=${code} selected=${code === origin}>${sayOf('origin', code)}</option>
              `,
            )}
          </select>
        </label>
      `
    }
    <p class=${stop ? 'caution' : 'soft'} role=${stop ? 'alert' : null}>
      ${stop ? `${sayOf('log-stop', verdict.verdict)} ` : ''}${sayOf('origin-why', verdict.reason_code)}
    </p>
    ${
      tasting &&
      html`
        <p class="soft">${say('tasting-here')}</p>
      `
    }
    <${Cautions} items=${item?.cautions ?? plan?.set.cautions ?? []} />
    ${
      hours &&
      html`
        <p class="soft">${say('log-outcome-later', { hours })}</p>
      `
    }
    ${
      stop
        ? html`
            <button
              type="button"
              class="button warn wide"
              onClick=${() => save('feeding', { ...set, despite: [verdict.reason_code] })}
            >
              ${say('log-despite')}
            </button>
          `
        : html`
            <button type="button" class="button main wide stick" onClick=${() => save('feeding', set)}>
              ${say('log-go')}
            </button>
          `
    }
  `;
}
