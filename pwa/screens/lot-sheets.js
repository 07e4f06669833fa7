// The sheets of the larder: a food that came in, how much of it is left, and a batch of sugar water with its recipe.
import { useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { capital, wordFor } from '../components/in-words.js';
import { Choice, numberOf, Sheet, Stepper, textsOf, useAttempt } from '../components/parts.js';
import { DAY_MS } from '../care/gauges.js';
import { dayOf } from '../care/instants.js';
import { mixSugarWater } from '../care/mixing.js';
import { originsOf, originVerdict, usualOrigin } from '../care/origin.js';
import { keep, say } from '../signals/actions.js';
import { now, today } from '../signals/clock.js';
import { catalogue } from '../signals/rows.js';
import { m } from '../text/en-more.js';
import { t } from '../text/en.js';

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

/**
 * How much of a lot is left.
 * @param {{lot: import('../care/overlay.js').ShownRow<'lot'>, title: string, onClose: () => void}} props
 */
export function LeftSheet({ lot, title, onClose }) {
  const unit = lot.set.unit ?? countedIn(catalogue.value?.foods?.[lot.set.food_code]?.unit ?? 'piece');
  const { attempt, busy, said, say: tell } = useAttempt();
  /** @param {any} event */
  function save(event) {
    event.preventDefault();
    const amount = numberOf(textsOf(event.target)('amount'));
    if (!isAmount(amount)) return tell(m.larder.no_amount);
    return attempt(async () => {
      await keep('lot', { amount, unit }, lot.id);
      say(t.saved);
      onClose();
    });
  }
  return html`
    <${Sheet} title=${title} onClose=${onClose}>
      <form onSubmit=${save}>
        <label>
          ${m.larder.how_much(t.units[unit]?.(2) ?? unit)}
          <input name="amount" inputmode="decimal" required defaultValue=${lot.set.amount ?? ''} />
        </label>
        ${said}
        <button class="button main wide" disabled=${busy}>${m.form.save}</button>
      </form>
    </${Sheet}>
  `;
}

/**
 * A tint to see who drank, with its cautions as soon as one is chosen.
 * @param {{value: string, onPick: (tint: string) => void}} props
 */
const TintChoice = ({ value, onPick }) => html`
  <${Choice}
    label=${m.larder.tint}
    value=${value}
    onPick=${onPick}
    options=${[['', m.larder.no_tint], ...Object.entries(t.tints)]}
  />
  ${
    value &&
    html`
      <p class="caution" role="status">${m.larder.tint_why}</p>
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
  const [tint, setTint] = useState(/** @type {import('../kinds.d.ts').Tint | ''} */ (''));
  const sizes = Object.keys(foods[food]?.size ?? {});
  const sized = sizes.length > 1;
  const sweet = foods[food]?.need === 'sugar';
  const { attempt, busy, said, say: tell } = useAttempt();
  const verdict = originVerdict(origins, origin, { got_on: null, today: today.value });
  /** @param {any} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event.target);
    const amount = numberOf(text('amount'));
    if (amount !== null && !isAmount(amount)) return tell(m.larder.no_amount);
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
      say(t.saved);
      onClose();
    });
  }
  return html`
    <${Sheet} title=${m.larder.add} onClose=${onClose}>
      <form onSubmit=${save}>
        <label>
          ${m.larder.food}
          <select
            name="food"
            value=${food}
            onChange=${(/** @type {any} */ e) => {
              setFood(e.target.value);
              setOrigin(usualOrigin(foods, e.target.value));
              setSize('');
            }}
          >
            ${Object.keys(foods).map(
              (code) => html`
                <option value=${code}>${capital(wordFor('food', code))}</option>
              `,
            )}
          </select>
        </label>
        ${
          sized &&
          html`
            <${Choice}
              label=${m.larder.size}
              value=${size}
              onPick=${setSize}
              options=${[...sizes.map((code) => [code, capital(wordFor('size', code))]), ['', m.larder.size_open]]}
            />
          `
        }
        ${
          sweet &&
          html`
            <${TintChoice} value=${tint} onPick=${setTint} />
          `
        }
        <label>
          ${m.larder.how_much(t.units[unit]?.(2) ?? unit)}${' '}
          <small>${m.larder.optional}</small>
          <input name="amount" inputmode="decimal" autocomplete="off" />
        </label>
        <label>
          ${m.larder.origin}
          <select value=${origin} onChange=${(/** @type {any} */ e) => setOrigin(e.target.value)}>
            ${originsOf(foods, origins, food).map(
              (code) => html`
                <option value=${code}>${capital(wordFor('origin', code))}</option>
              `,
            )}
          </select>
        </label>
        <p class=${verdict.verdict === 'fine' ? 'soft' : 'caution'} role="status">
          ${wordFor('origin_why', verdict.reason_code)}
        </p>
        <label>
          ${m.larder.name}${' '}
          <small>${m.larder.optional}</small>
          <input name="name" maxlength="80" />
        </label>
        <label>
          ${m.larder.use_by_field}${' '}
          <small>${m.larder.optional}</small>
          <input name="use_by" type="date" />
        </label>
        ${said}
        ${
          verdict.verdict === 'refuse'
            ? html`
                <p role="alert"><strong>${m.larder.refused}</strong></p>
              `
            : html`
                <button class="button main wide" disabled=${busy}>${m.larder.go}</button>
              `
        }
      </form>
    </${Sheet}>
  `;
}

/** A batch of sugar water with its recipe. @param {{onClose: () => void}} props */
export function MixSheet({ onClose }) {
  const [percent, setPercent] = useState(25);
  const [water_ml, setWater] = useState(30);
  const [tint, setTint] = useState(/** @type {import('../kinds.d.ts').Tint | ''} */ (''));
  const { attempt, busy, said } = useAttempt();
  const { sugar_g, total_ml } = mixSugarWater(percent, water_ml);
  const gram = sugar_g < 10 ? sugar_g.toFixed(1) : String(Math.round(sugar_g));
  const batch = () =>
    attempt(async () => {
      await keep('lot', {
        food_code: 'sugar_water',
        origin: 'home_mixed',
        name: m.larder.batch_name(percent),
        percent_ww: percent,
        amount: Math.round(total_ml),
        unit: 'ml',
        ...(tint ? { tint } : {}),
        got_on: today.value,
        use_by: dayOf(new Date(now.peek() + BATCH_KEEPS_DAYS * DAY_MS)),
      });
      say(t.saved);
      onClose();
    });
  return html`
    <${Sheet} title=${m.larder.mix} onClose=${onClose}>
      <${Stepper}
        label=${m.larder.percent}
        value=${percent}
        step=${5}
        most=${60}
        unit=${m.larder.of_weight}
        onChange=${setPercent}
      />
      <${Stepper}
        label=${m.larder.water}
        value=${water_ml}
        step=${5}
        most=${1000}
        unit=${m.larder.ml_water}
        onChange=${setWater}
      />
      <p class="lead" role="status">${m.larder.recipe(gram, String(water_ml), String(Math.round(total_ml)))}</p>
      <${TintChoice} value=${tint} onPick=${setTint} />
      <p class="caution">${m.larder.cool}</p>
      <p class="soft">${m.larder.keeps}</p>
      ${said}
      <button type="button" class="button main wide" disabled=${busy} onClick=${batch}>${m.larder.batch}</button>
    </${Sheet}>
  `;
}
