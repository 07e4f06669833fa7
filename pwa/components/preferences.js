// What a person chooses for this phone: its light, its language and units; the last two also for nudges and mail.
import { useEffect, useState } from 'preact/hooks';
import { keep } from '../signals/actions.js';
import { session } from '../signals/session.js';
import { useAttempt } from './attempt.js';
import { Choice } from './choices.js';
import { typed } from './forms.js';
import { html } from './html.js';
import { goOver } from './new-version.js';
import { keepLanguage } from '../words/choice.js';
import { languagesThere, phoneLanguage } from '../words/fetched.js';
import { languageOf, localeOf } from '../words/language.js';
import { say } from '../words/say.js';
import { nameOfLanguage } from '../words/shown.js';

/** Keep a choice on this phone; an empty one is as the phone itself. @param {string} name @param {string} next */
const keepHere = (name, next) => (next ? localStorage.setItem(name, next) : localStorage.removeItem(name));

/** In which light the app is shown. */
export function LookChoice() {
  const [look, setLook] = useState(document.documentElement.dataset.look ?? '');
  /** @param {string} next */
  function pick(next) {
    setLook(next);
    if (next) document.documentElement.dataset.look = next;
    else delete document.documentElement.dataset.look;
    keepHere('look', next);
  }
  return html`
    <${Choice}
      label=${say('look-light')}
      value=${look}
      onPick=${pick}
      options=${[
        ['', say('look-as-phone')],
        ['light', say('look-day')],
        ['dark', say('look-dark')],
        ['red', say('look-red')],
      ]}
    />
    <p class="soft">${say('look-red-why')}</p>
  `;
}

/** Units that follow the phone's region unless they are chosen: where the choice is kept, and what can be chosen.
 * @typedef {'degrees' | 'volumes'} Unit @returns {Array<[Unit, string, Array<[string, string]>]>}
 */
export const unitChoices = () => {
  const as_phone = /** @type {[string, string]} */ (['', say('look-as-phone')]);
  return [
    ['degrees', say('look-degrees'), [as_phone, ['c', '°C'], ['f', '°F']]],
    ['volumes', say('look-volumes'), [as_phone, ['ml', say('measure-unit-ml')], ['floz', say('measure-fl-oz')]]],
  ];
};

/** @param {{name: Unit, label: string, options: Array<[string, string]>}} props */
function UnitChoice({ name, label, options }) {
  const [unit, setUnit] = useState(localStorage.getItem(name) ?? '');
  /** @param {string} next */
  function pick(next) {
    setUnit(next);
    keepHere(name, next);
    void tellIn({ [name]: next || null });
  }
  return html`
    <${Choice} label=${label} value=${unit} onPick=${pick} options=${options} />
  `;
}

/** Let nudges and mail to the keeper come so, too. @param {Partial<import('../kinds.d.ts').Person>} how */
async function tellIn(how) {
  const me = session.peek();
  if (me?.role === 'keeper' && me.person_id) await keep('person', how, me.person_id);
}

/** In which units it shows warmth and volumes. */
export const UnitChoices = () =>
  unitChoices().map(
    ([name, label, options]) => html`
      <${UnitChoice} name=${name} label=${label} options=${options} />
    `,
  );

/**
 * In which language it speaks. Another one is fetched first, then the page begins anew in it.
 * @param {{label?: string}} props
 */
export function LanguageChoice({ label = say('house-language') }) {
  const { attempt, busy, said } = useAttempt();
  const chosen = localStorage.getItem('language') ?? '';
  return html`
    <label>
      ${label}
      <select disabled=${busy} onChange=${typed((/** @type {string} */ tag) => void attempt(() => choose(tag)))}>
        <option value="" selected=${!chosen}>${say('house-language-as-phone')}</option>
        ${languageChoices().map(
          ([tag, name]) => html`
            <option value=${tag} lang=${tag} selected=${tag === chosen}>${name}</option>
          `,
        )}
      </select>
    </label>
    ${said}
  `;
}

/** @param {string} tag @returns {Promise<void>} rejects where its messages do not come */
async function choose(tag) {
  await keepLanguage(tag);
  await tellIn({ language: localeOf(languageOf(tag, navigator.languages, languagesThere), navigator.languages) });
  goOver();
}

/**
 * Speak as the keeper chose for a pass, unless somebody has chosen on this phone.
 * @param {Partial<import('../kinds.d.ts').Pass>} given
 */
export function useLanguageOfPass(given) {
  const { language: tag, degrees, volumes } = given;
  useEffect(() => {
    for (const [name, unit] of Object.entries({ degrees, volumes })) {
      if (unit && !localStorage.getItem(name)) keepHere(name, unit);
    }
    if (!tag || localStorage.getItem('language')) return;
    const wanted = languageOf(null, [tag], languagesThere);
    if (wanted !== phoneLanguage) void keepLanguage(wanted).then(goOver, () => undefined); // else at the next start
  }, [tag, degrees, volumes]);
}

/** @returns {Array<[string, string]>} the languages that there are, each by its own name */
export const languageChoices = () => languagesThere.map((tag) => [tag, nameOfLanguage(tag)]);
