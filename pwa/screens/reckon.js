// The calculators of the server: any of them is drawn from what it says of its inputs.
import { useEffect, useRef, useState } from 'preact/hooks';
import { useAnswer, whyNot } from '../components/answer.js';
import { useAttempt } from '../components/attempt.js';
import { inDegrees, storedOf, typedOf } from '../components/degrees.js';
import { formOf } from '../components/forms.js';
import { html } from '../components/html.js';
import { capital } from '../components/in-words.js';
import { Skeleton } from '../components/states.js';
import { post } from '../signals/people.js';
import { catalogue } from '../signals/rows.js';
import { calculatorText } from '../text/en/calculators.js';
import { frameText } from '../text/en/frame.js';
import { larderText } from '../text/en/larder.js';
import { partsText } from '../text/en/parts.js';
import { choices, inputs, leftOut, units } from '../text/en/calculators.js';

/**
 * @typedef {{name: string, unit: string, default: any, low: number | null, high: number | null, choices: string[],
 *   kind: 'number' | 'choice' | 'yes_no', left_out: string}} Input
 */
/** @typedef {{code: string, inputs: Input[], formula: string, source: string, limits: string}} About */

/** @param {{code: string}} props the calculator that is open; empty: the list of all */
export function ReckonScreen({ code }) {
  const { answer, problem, ask } = useAnswer('/api/reckon');
  const one = answer?.calculators.find((/** @type {About} */ each) => each.code === code);
  if (one) {
    return html`
      <${Calculator} about=${one} key=${code} />
    `;
  }
  return html`
    <h1>${calculatorText.title}</h1>
    ${
      !answer &&
      !problem &&
      html`
        <${Skeleton} words=${frameText.loading} />
      `
    }
    ${
      problem &&
      !answer &&
      html`
        <section class="card">
          <p role="alert">${whyNot(problem)}</p>
          <p class="soft">${calculatorText.without}</p>
          <div class="wrap even">
            <button type="button" class="button main" onClick=${ask}>${partsText.again}</button>
            <a class="button" href="#/larder">${larderText.title}</a>
          </div>
        </section>
      `
    }
    ${
      answer &&
      html`
        <p class="soft">${calculatorText.about}</p>
        <ul class="stack">
          ${answer.calculators.map(
            (/** @type {About} */ each) => html`
              <li key=${each.code}><a class="button wide" href=${`#/reckon/${each.code}`}>${titleOf(each)}</a></li>
            `,
          )}
        </ul>
        <p><a class="button quiet" href="#/larder">${calculatorText.back_larder}</a></p>
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
      <button class="button main wide" disabled=${busy}>${calculatorText.go}</button>
    </form>
    <div role="status">
      ${
        lines.length > 0 &&
        html`
          <section class="card" ref=${shown} aria-label=${calculatorText.result}>
            ${lines.map(
              (line, n) => html`
                <p class=${n ? '' : 'lead'}>${inDegrees(line)}</p>
              `,
            )}
          </section>
        `
      }
    </div>
    <section class="stack soft" aria-label=${calculatorText.how}>
      <p>
        <strong>${calculatorText.formula}</strong>
        ${' '}${about.formula}
      </p>
      <p>
        <strong>${calculatorText.source}</strong>
        ${' '}${about.source}
      </p>
      <p>
        <strong>${calculatorText.limits}</strong>
        ${' '}${inDegrees(about.limits)}
      </p>
    </section>
    <p><a class="button quiet" href="#/reckon">${calculatorText.back}</a></p>
  `;
}

/** What a calculator is called. @param {About} about */
const titleOf = ({ code }) => catalogue.value?.words?.reckon?.[code] ?? code;

/** @param {About} about @param {Input} input */
const whatOf = ({ code }, { name }) => capital(inputs[`${code}.${name}`] ?? inputs[name] ?? name);

/** A figure of an input as the reader is used to it: in fields and limits. @param {Input} input @param {any} value */
const shownOf = ({ unit }, value) => (unit === '°C' ? typedOf(value) : (value ?? ''));

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
      placeholder=${leftOut[input.name] ?? input.left_out}
    />
    <small>${rangeOf(input)}</small>
  </label>
`;

/** The unit, unless the name of the input says it already. @param {Input} input @param {string} what */
function unitOf({ unit }, what) {
  const words = inDegrees(units[unit] ?? unit);
  return words && !what.toLowerCase().includes(words)
    ? html`
        ${' '}
        <small>${calculatorText.in_unit(words)}</small>
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
          <option value="">${calculatorText.open}</option>
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
const nameOf = (code) =>
  capital(choices[code] ?? catalogue.value?.words?.food?.[code] ?? catalogue.value?.species?.[code]?.name ?? code);

/** What a number may be, and what counts when it is left out. @param {Input} input */
function rangeOf(input) {
  const { low, high, default: usual } = input;
  const left_out = leftOut[input.name] ?? input.left_out;
  const end = (/** @type {number} */ value) => Number(shownOf(input, value)).toLocaleString();
  const range =
    low === null || high === null
      ? ''
      : low > 0 && low < 0.001
        ? calculatorText.up_to(end(high))
        : calculatorText.range(end(low), end(high));
  return [range, usual === null ? (left_out ? calculatorText.left_out(left_out) : calculatorText.may_be_empty) : '']
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
      found[name] = kind !== 'number' ? text : unit === '°C' ? storedOf(Number(text), usual) : Number(text);
    }
  }
  return found;
}
