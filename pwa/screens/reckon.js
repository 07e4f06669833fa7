// The calculators of the server: any of them is drawn from what it says of its inputs.
import { useEffect, useRef, useState } from 'preact/hooks';
import { useAnswer, whyNot } from '../components/answer.js';
import { useAttempt } from '../components/attempt.js';
import { Skeleton } from '../components/empty.js';
import { html } from '../components/html.js';
import { post } from '../signals/people.js';
import { catalogue } from '../signals/shelf.js';
import { m } from '../text/en-more.js';
import { t } from '../text/en.js';
import { capital } from './event-words.js';

const r = m.reckon;

/** @typedef {{name: string, what: string, unit: string, default: any, low: number | null, high: number | null, choices: string[], kind: 'number' | 'choice' | 'yes_no', left_out: string}} Input */
/** @typedef {{code: string, title: string, inputs: Input[], formula: string, source: string, limits: string}} About */

/** @param {{code: string}} props the calculator that is open; empty: the list of all */
export function ReckonScreen({ code }) {
  const { answer, problem, ask } = useAnswer('/api/reckon');
  const one = answer?.calculators.find((/** @type {About} */ each) => each.code === code);
  if (one) return html`<${Calculator} about=${one} key=${code} />`;
  return html`<h1>${r.title}</h1>
    ${!answer && !problem && html`<${Skeleton} words=${t.loading} />`}
    ${problem && !answer && html`<section class="card"><p role="alert">${whyNot(problem)}</p><p class="soft">${r.without}</p>
      <div class="wrap even"><button type="button" class="button main" onClick=${ask}>${m.ahead.again}</button><a class="button" href="#/larder">${m.larder.title}</a></div></section>`}
    ${answer && html`<p class="soft">${r.about}</p><ul class="stack">${answer.calculators.map((/** @type {About} */ each) => html`<li key=${each.code}><a class="button wide" href=${`#/reckon/${each.code}`}>${each.title}</a></li>`)}</ul>
      <p><a class="button quiet" href="#/larder">${r.back_larder}</a></p>`}`;
}

/** @param {{about: About}} props */
function Calculator({ about }) {
  const [lines, setLines] = useState(/** @type {string[]} */ ([]));
  const shown = useRef(/** @type {HTMLElement | null} */ (null));
  const { attempt, busy, said } = useAttempt();
  useEffect(() => { if (lines.length) shown.current?.scrollIntoView({ block: 'nearest' }); }, [lines]);
  /** @param {any} event */
  function work(event) {
    event.preventDefault();
    const given = valuesOf(about.inputs, event.target);
    setLines([]);
    void attempt(async () => {
      const { lines: found } = await post(`/api/reckon/${about.code}`, given).catch((problem) => { throw new Error(whyNot(problem)); });
      setLines(found);
    });
  }
  const ticks = about.inputs.filter((input) => input.kind === 'yes_no');
  return html`<h1>${about.title}</h1>
    <form class="card" onSubmit=${work}>${about.inputs.filter((input) => input.kind !== 'yes_no').map((input) => html`<${input.kind === 'choice' ? Choosing : NumberField} input=${input} />`)}
      ${ticks.length > 0 && html`<div class="wrap">${ticks.map((input) => html`<label class="chip"><input type="checkbox" name=${input.name} defaultChecked=${input.default === true} /> ${capital(input.what)}</label>`)}</div>`}
      ${said}<button class="button main wide" disabled=${busy}>${r.go}</button></form>
    <div role="status">${lines.length > 0 && html`<section class="card" ref=${shown} aria-label=${r.result}>${lines.map((line, n) => html`<p class=${n ? '' : 'lead'}>${line}</p>`)}</section>`}</div>
    <section class="stack soft" aria-label=${r.how}><p><strong>${r.formula}</strong> ${about.formula}</p><p><strong>${r.source}</strong> ${about.source}</p><p><strong>${r.limits}</strong> ${about.limits}</p></section>
    <p><a class="button quiet" href="#/reckon">${r.back}</a></p>`;
}

/** @param {{input: Input}} props */
const NumberField = ({ input }) => html`<label>${capital(input.what)}${unitOf(input)}
  <input name=${input.name} type="number" inputmode="decimal" step="any" min=${input.low} max=${input.high} defaultValue=${input.default ?? ''} placeholder=${input.left_out} />
  <small>${rangeOf(input)}</small></label>`;

/** The unit, unless the name of the input says it already. @param {Input} input */
function unitOf({ what, unit }) {
  const words = r.units[unit] ?? unit;
  return words && !what.includes(words) ? html` <small>${r.in_unit(words)}</small>` : '';
}

/** @param {{input: Input}} props */
const Choosing = ({ input }) => html`<label>${capital(input.what)}<select name=${input.name} defaultValue=${input.default ?? ''}>
  ${input.default === null && html`<option value="">${r.open}</option>`}
  ${input.choices.map((code) => html`<option value=${code} selected=${code === input.default}>${nameOf(code)}</option>`)}</select></label>`;

/** A choice in words: a food, a species, or its own code. @param {string} code */
const nameOf = (code) => capital(catalogue.value?.words?.food?.[code] ?? catalogue.value?.species?.[code]?.name ?? code.replaceAll('_', ' '));

/** What a number may be, and what counts when it is left out. @param {Input} input */
function rangeOf({ low, high, left_out, default: usual }) {
  const range = low === null || high === null ? '' : low > 0 && low < 0.001 ? r.up_to(high.toLocaleString()) : r.range(low.toLocaleString(), high.toLocaleString());
  return [range, usual === null ? (left_out ? r.left_out(left_out) : r.may_be_empty) : ''].filter(Boolean).join('; ');
}

/** The inputs by name; what is left empty is left out. @param {Input[]} inputs @param {HTMLFormElement} form */
function valuesOf(inputs, form) {
  const data = new FormData(form);
  /** @type {Record<string, number | string | boolean>} */
  const found = {};
  for (const { name, kind } of inputs) {
    const text = String(data.get(name) ?? '');
    if (kind === 'yes_no') found[name] = data.has(name);
    else if (text) found[name] = kind === 'number' ? Number(text) : text;
  }
  return found;
}
