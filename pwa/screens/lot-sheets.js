// The sheets of the larder: a food that came in, how much of it is left, and a batch of sugar water with its recipe.
import { useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { Choice } from '../components/choices.js';
import { numberOf, textsOf, typed } from '../components/forms.js';
import { html } from '../components/html.js';
import { Sheet } from '../components/sheet.js';
import { Stepper } from '../components/stepper.js';
import { DAY_MS } from '../care/rules.js';
import { dayOf } from '../care/instants.js';
import { mixSugarWater } from '../care/mixing.js';
import { originsOf, originVerdict, usualOrigin } from '../care/origin.js';
import { keep, tell } from '../signals/actions.js';
import { now, today } from '../signals/clock.js';
import { catalogue } from '../signals/rows.js';
import { TINTS } from '../care/codes.js';
import { ounces, storedVolume, typedVolume, volumeUnit } from '../words/measures.js';
import { choicesOf, say, sayOf } from '../words/say.js';
import { capital, numeral } from '../words/shown.js';

const MOST = 1e6; // server: model/kinds/larder.py
const BATCH_KEEPS_DAYS = 7; // in the fridge; common practice

/** @param {number | null} amount */
const isAmount = (amount) => amount !== null && amount >= 0 && amount <= MOST;

/**
 * The unit in which a lot is counted: what is offered in drops lies there in mL, legs and slices as pieces.
 * @param {string} unit
 * @returns {import('../kinds.d.ts').Unit}
 */
export const countedIn = (unit) =>
  /** @type {import('../kinds.d.ts').Unit} */ ({ drop: 'ml', leg: 'piece', slice: 'piece' }[unit] ?? unit);

/** A field that asks how much there is, as the reader measures it; what is stored is in `unit`.
 * @param {{unit: string, was?: number | null, optional?: boolean}} props
 */
const HowMuch = ({ unit, was = null, optional = false }) => html`
  <label>
    ${sayOf('measure-ask', unit === 'ml' ? volumeUnit() : unit)}${' '}
    ${
      optional &&
      html`
        <small>${say('colony-form-optional')}</small>
      `
    }
    <input
      name="amount"
      inputmode="decimal"
      autocomplete="off"
      required=${!optional}
      defaultValue=${unit === 'ml' ? typedVolume(was) : (was ?? '')}
    />
  </label>
`;

/** What to store for it. @param {string} text @param {string} unit @param {number | null} [was] */
function howMuch(text, unit, was) {
  const amount = numberOf(text);
  return unit === 'ml' ? storedVolume(amount, was) : amount;
}

/**
 * How much of a lot is left.
 * @param {{lot: import('../care/overlay.js').ShownRow<'lot'>, title: string, onClose: () => void}} props
 */
export function LeftSheet({ lot, title, onClose }) {
  const unit = lot.set.unit ?? countedIn(catalogue.value?.foods?.[lot.set.food_code]?.unit ?? 'piece');
  const { attempt, busy, said, refuse } = useAttempt();
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const amount = howMuch(textsOf(event)('amount'), unit, lot.set.amount);
    if (!isAmount(amount)) return refuse(say('larder-no-amount'));
    return attempt(async () => {
      await keep('lot', { amount, unit }, lot.id);
      tell(say('saving-saved'));
      onClose();
    });
  }
  return html`
    <${Sheet} title=${title} onClose=${onClose}>
      <form onSubmit=${save}>
        <${HowMuch} unit=${unit} was=${lot.set.amount} />
        ${said}
        <button class="button main wide" disabled=${busy}>${say('colony-form-save')}</button>
      </form>
    </${Sheet}>
  `;
}

/**
 * A tint to see who drank, with its cautions as soon as one is chosen.
 * @typedef {import('../kinds.d.ts').Tint | ''} Tint none where it is empty
 * @param {{value: Tint, onPick: (tint: Tint) => void}} props
 */
const TintChoice = ({ value, onPick }) => html`
  <${Choice}
    label=${say('larder-tint')}
    value=${value}
    onPick=${onPick}
    options=${[['', say('larder-no-tint')], ...choicesOf('measure-tint', TINTS)]}
  />
  ${
    value &&
    html`
      <p class="caution" role="status">${say('larder-tint-why')}</p>
    `
  }
`;

/** A food with its origin. @param {{onClose: () => void}} props */
export function LotSheet({ onClose }) {
  const origins = catalogue.value?.origins ?? {};
  const foods = catalogue.value?.foods ?? {};
  const [food, setFood] = useState(Object.keys(foods)[0] ?? '');
  const unit = countedIn(foods[food]?.unit ?? 'piece');
  const [origin, setOrigin] = useState(/** @type {import('../kinds.d.ts').Origin} */ ('bought_or_bred'));
  const [size, setSize] = useState(/** @type {import('../kinds.d.ts').SizeClass | ''} */ (''));
  const [tint, setTint] = useState(/** @type {Tint} */ (''));
  const sizes = /** @type {Array<import('../kinds.d.ts').SizeClass>} */ (Object.keys(foods[food]?.size ?? {}));
  const sized = sizes.length > 1;
  const sweet = foods[food]?.need === 'sugar';
  const { attempt, busy, said, refuse } = useAttempt();
  const verdict = originVerdict(origins, origin, { got_on: null, today: today.value });
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    const amount = howMuch(text('amount'), unit);
    if (amount !== null && !isAmount(amount)) return refuse(say('larder-no-amount'));
    return attempt(async () => {
      await keep('lot', {
        food_code: food,
        origin,
        ...(amount !== null ? { amount, unit } : {}),
        ...(sized && size ? { size_class: size } : {}),
        ...(sweet && tint ? { tint } : {}),
        got_on: today.value,
        ...(text('name') ? { name: text('name') } : {}),
        ...(text('use_by') ? { use_by: text('use_by') } : {}),
        ...(verdict.until ? { hold_until: verdict.until } : {}),
      });
      tell(say('saving-saved'));
      onClose();
    });
  }
  return html`
    <${Sheet} title=${say('larder-add')} onClose=${onClose}>
      <form onSubmit=${save}>
        <label>
          ${say('larder-food')}
          <select
            name="food"
            value=${food}
            onChange=${(/** @type {Event & {target: HTMLSelectElement}} */ e) => {
              setFood(e.target.value);
              setOrigin(usualOrigin(foods, e.target.value));
              setSize('');
            }}
          >
            ${Object.keys(foods).map(
              (code) => html`
                <option value=${code}>${capital(sayOf('food', code))}</option>
              `,
            )}
          </select>
        </label>
        ${
          sized &&
          html`
            <${Choice}
              label=${say('larder-size')}
              value=${size}
              onPick=${setSize}
              options=${[
                ...sizes.map(/** @returns {[typeof code, string]} */ (code) => [code, capital(sayOf('size', code))]),
                ['', say('larder-size-open')],
              ]}
            />
          `
        }
        ${
          sweet &&
          html`
            <${TintChoice} value=${tint} onPick=${setTint} />
          `
        }
        <${HowMuch} unit=${unit} optional />
        <label>
          ${say('larder-origin')}
          <select
            value=${origin}
            onChange=${typed((/** @type {import('../kinds.d.ts').Origin} */ code) => setOrigin(code))}
          >
            ${originsOf(foods, origins, food).map(
              (code) => html`
                <option value=${code}>${capital(sayOf('origin', code))}</option>
              `,
            )}
          </select>
        </label>
        <p class=${verdict.verdict === 'fine' ? 'soft' : 'caution'} role="status">
          ${sayOf('origin-why', verdict.reason_code)}
        </p>
        <label>
          ${say('larder-name')}${' '}
          <small>${say('colony-form-optional')}</small>
          <input name="name" maxlength="80" />
        </label>
        <label>
          ${say('larder-use-by-field')}${' '}
          <small>${say('colony-form-optional')}</small>
          <input name="use_by" type="date" />
        </label>
        ${said}
        ${
          verdict.verdict === 'refuse'
            ? html`
                <p role="alert">
                  <strong>${say('larder-refused')}</strong>
                </p>
              `
            : html`
                <button class="button main wide" disabled=${busy}>${say('larder-go')}</button>
              `
        }
      </form>
    </${Sheet}>
  `;
}

/** A batch of sugar water with its recipe. @param {{onClose: () => void}} props */
export function MixSheet({ onClose }) {
  const [percent, setPercent] = useState(25);
  const oz = ounces();
  const [water, setWater] = useState(oz ? 1 : 30);
  const water_ml = storedVolume(water) ?? 0;
  const [tint, setTint] = useState(/** @type {Tint} */ (''));
  const { attempt, busy, said } = useAttempt();
  const { sugar_g, total_ml } = mixSugarWater(percent, water_ml);
  const batch = () =>
    attempt(async () => {
      await keep('lot', {
        food_code: 'sugar_water',
        origin: 'home_mixed',
        name: say('larder-batch-name', { percent }),
        percent_ww: percent,
        amount: Math.round(total_ml),
        unit: 'ml',
        ...(tint ? { tint } : {}),
        got_on: today.value,
        use_by: dayOf(new Date(now.peek() + BATCH_KEEPS_DAYS * DAY_MS)),
      });
      tell(say('saving-saved'));
      onClose();
    });
  return html`
    <${Sheet} title=${say('larder-mix')} onClose=${onClose}>
      <${Stepper}
        label=${say('larder-percent')}
        value=${percent}
        step=${5}
        most=${60}
        unit=${say('larder-of-weight')}
        onChange=${setPercent}
      />
      <${Stepper}
        label=${say('larder-water')}
        value=${water}
        step=${oz ? 0.5 : 5}
        most=${oz ? 32 : 1000}
        unit=${say('larder-of-water', { unit: say(oz ? 'measure-fl-oz' : 'measure-unit-ml') })}
        onChange=${setWater}
      />
      <p class="lead" role="status">
        ${say('larder-recipe', {
          sugar_g: numeral(sugar_g, sugar_g < 10 ? 1 : 0),
          water_ml,
          total_ml: Math.round(total_ml),
        })}
      </p>
      <${TintChoice} value=${tint} onPick=${setTint} />
      <p class="caution">${say('larder-cool')}</p>
      <p class="soft">${say('larder-keeps')}</p>
      ${said}
      <button type="button" class="button main wide" disabled=${busy} onClick=${batch}>${say('larder-batch')}</button>
    </${Sheet}>
  `;
}
