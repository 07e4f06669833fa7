// The calculators of the server: any of them is drawn from what it says of its inputs.
import { useEffect, useRef, useState } from 'preact/hooks';
import { useAnswer, whyNot } from '../components/answer.js';
import { useAttempt } from '../components/attempt.js';
import { formOf } from '../components/forms.js';
import { html } from '../components/html.js';
import { Skeleton } from '../components/states.js';
import { post } from '../signals/people.js';
import { degreeUnit, inDegrees, ounces, storedOf, storedVolume, typedOf, typedVolume } from '../words/measures.js';
import { say, sayIf, sayOf } from '../words/say.js';
import { capital, numeral } from '../words/shown.js';

/** @typedef {import('../answers.d.ts').CalculatorInput} Input */
/** @typedef {import('../answers.d.ts').Calculator} About */

/** @param {{code: string}} props the calculator that is open; empty: the list of all */
export function ReckonScreen({ code }) {
  const { answer, problem, ask } = useAnswer('/api/reckon');
  const one = answer?.calculators.find((each) => each.code === code);
  if (one) {
    return html`
      <${Calculator} about=${one} key=${code} />
    `;
  }
  return html`
    <h1>${say('calculator-title')}</h1>
    ${
      !answer &&
      !problem &&
      html`
        <${Skeleton} words=${say('frame-loading')} />
      `
    }
    ${
      problem &&
      !answer &&
      html`
        <section class="card">
          <p role="alert">${whyNot(problem)}</p>
          <p class="soft">${say('calculator-without')}</p>
          <div class="wrap even">
            <button type="button" class="button main" onClick=${ask}>${say('part-again')}</button>
            <a class="button" href="#/larder">${say('larder-title')}</a>
          </div>
        </section>
      `
    }
    ${
      answer &&
      html`
        <p class="soft">${say('calculator-about')}</p>
        <ul class="stack">
          ${answer.calculators.map(
            (each) => html`
              <li key=${each.code}>
                <a class="button wide" href=${`#/reckon/${each.code}`}>${titleOf(each)}</a>
              </li>
            `,
          )}
        </ul>
        <p>
          <a class="button quiet" href="#/larder">${say('calculator-back-larder')}</a>
        </p>
      `
    }
  `;
}

/** @param {{about: About}} props */
function Calculator({ about }) {
  const [lines, setLines] = useState(/** @type {string[]} */ ([]));
  const shown = useRef(/** @type {HTMLElement | null} */ (null));
  const { attempt, busy, said } = useAttempt();
  useEffect(() => {
    if (lines.length) shown.current?.scrollIntoView({ block: 'nearest' });
  }, [lines]);
  /** @param {Event} event */
  function work(event) {
    event.preventDefault();
    const given = valuesOf(about.inputs, formOf(event));
    setLines([]);
    void attempt(async () => {
      const { lines: found } = await post(`/api/reckon/${about.code}`, given).catch((problem) => {
        throw new Error(whyNot(problem));
      });
      setLines(found);
    });
  }
  const ticks = about.inputs.filter((input) => input.kind === 'yes_no');
  return html`
    <h1>${titleOf(about)}</h1>
    <form class="card" onSubmit=${work}>
      ${about.inputs
        .filter((input) => input.kind !== 'yes_no')
        .map(
          (input) => html`
            <${input.kind === 'choice' ? Choosing : NumberField} input=${input} what=${whatOf(about, input)} />
          `,
        )}
      ${
        ticks.length > 0 &&
        html`
          <div class="wrap">
            ${ticks.map(
              (input) => html`
                <label class="chip">
                  <input type="checkbox" name=${input.name} defaultChecked=${input.default === true} />
                  ${' '}${whatOf(about, input)}
                </label>
              `,
            )}
          </div>
        `
      }
      ${said}
      <button class="button main wide" disabled=${busy}>${say('calculator-go')}</button>
    </form>
    <div role="status">
      ${
        lines.length > 0 &&
        html`
          <section class="card" ref=${shown} aria-label=${say('calculator-result')}>
            ${lines.map(
              (line, n) => html`
                <p class=${n ? '' : 'lead'}>${inDegrees(line)}</p>
              `,
            )}
          </section>
        `
      }
    </div>
    <section class="stack soft" aria-label=${say('calculator-how')}>
      <p>
        <strong>${say('calculator-formula')}</strong>
        ${' '}${sayOf('reckon-formula', about.code)}
      </p>
      <p>
        <strong>${say('calculator-source')}</strong>
        ${' '}${sayOf('reckon-source', about.code)}
      </p>
      <p>
        <strong>${say('calculator-limits')}</strong>
        ${' '}${sayOf('reckon-limits', about.code)}
      </p>
    </section>
    <p>
      <a class="button quiet" href="#/reckon">${say('calculator-back')}</a>
    </p>
  `;
}

/** What a calculator is called. @param {About} about */
const titleOf = ({ code }) => sayOf('reckon', code);

/** @param {About} about @param {Input} input */
const whatOf = ({ code }, { name }) =>
  capital(sayIf('calculator-input', `${code}.${name}`) || sayOf('calculator-input', name));

/**
 * What is typed in the reader's own units, by the unit of the input.
 * @type {Record<string, {shown: typeof typedOf, stored: typeof storedOf, name: () => string}>}
 */
const MEASURED = {
  '°C': { shown: typedOf, stored: storedOf, name: () => degreeUnit() },
  mL: {
    shown: typedVolume,
    stored: storedVolume,
    name: () => say(ounces() ? 'measure-fl-oz' : 'measure-unit-ml'),
  },
};

/**
 * A figure of an input as the reader is used to it: in fields and limits.
 * @param {Input} input @param {Input['default']} value
 */
const shownOf = ({ unit }, value) => MEASURED[unit]?.shown(/** @type {number | null} */ (value)) ?? value ?? '';

/** @param {{input: Input, what: string}} props */
const NumberField = ({ input, what }) => html`
  <label>
    ${what}${unitOf(input, what)}
    <input
      name=${input.name}
      type="number"
      inputmode="decimal"
      step="any"
      min=${shownOf(input, input.low)}
      max=${shownOf(input, input.high)}
      defaultValue=${shownOf(input, input.default)}
      placeholder=${sayIf('calculator-usual', input.name) || input.left_out}
    />
    <small>${rangeOf(input)}</small>
  </label>
`;

/** The unit, unless the name of the input says it already. @param {Input} input @param {string} what */
function unitOf({ unit }, what) {
  const words = MEASURED[unit]?.name() ?? (sayIf('calculator-unit', unit) || unit);
  return words && !what.toLowerCase().includes(words)
    ? html`
        ${' '}
        <small>${say('calculator-in-unit', { unit: words })}</small>
      `
    : '';
}

/** @param {{input: Input, what: string}} props */
const Choosing = ({ input, what }) => html`
  <label>
    ${what}
    <select name=${input.name} defaultValue=${input.default ?? ''}>
      ${
        input.default === null &&
        html`
          <option value="">${say('calculator-open')}</option>
        `
      }
      ${input.choices.map(
        (code) => html`
          <option value=${code} selected=${code === input.default}>${nameOf(code)}</option>
        `,
      )}
    </select>
  </label>
`;

/** A choice in words: our own, a food, or a species. @param {string} code */
const nameOf = (code) => capital(sayIf('calculator-choice', code) || sayIf('food', code) || sayOf('species', code));

/** What a number may be, and what counts when it is left out. @param {Input} input */
function rangeOf(input) {
  const { low, high, default: usual } = input;
  const left_out = sayIf('calculator-usual', input.name) || input.left_out;
  const end = (/** @type {number} */ value) => numeral(Number(shownOf(input, value)), 3);
  const range =
    low === null || high === null
      ? ''
      : low > 0 && low < 0.001
        ? say('calculator-up-to', { high: end(high) })
        : say('calculator-range', { low: end(low), high: end(high) });
  return [
    range,
    usual === null ? (left_out ? say('calculator-left-out', { usual: left_out }) : say('calculator-may-be-empty')) : '',
  ]
    .filter(Boolean)
    .join('; ');
}

/** The inputs by name; what is left empty is left out. @param {Input[]} asked @param {HTMLFormElement} form */
function valuesOf(asked, form) {
  const data = new FormData(form);
  /** @type {Record<string, number | string | boolean | null>} */
  const found = {};
  for (const { name, kind, unit, default: usual } of asked) {
    const text = String(data.get(name) ?? '');
    if (kind === 'yes_no') found[name] = data.has(name);
    else if (text) {
      const measured = MEASURED[unit];
      const was = typeof usual === 'number' ? usual : null;
      if (kind === 'number') found[name] = measured ? measured.stored(Number(text), was) : Number(text);
      else found[name] = text;
    }
  }
  return found;
}
