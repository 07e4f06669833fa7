// A sensor's own file into a place: its columns are named, a preview says what is in it, then it is taken in.
import { useState } from 'preact/hooks';
import { post } from '../signals/people.js';
import { useAttempt } from './attempt.js';
import { Choice } from './choices.js';
import { textsOf } from './forms.js';
import { html } from './html.js';
import { fahrenheit, temperature } from '../words/measures.js';
import { choicesOf, say } from '../words/say.js';
import { fullDay } from '../words/shown.js';

const MOST_BYTES = 4 * 1024 * 1024;

/** @typedef {import('../answers.d.ts').ReadFile} Preview */

/** The headings of a table. @param {string} text @returns {string[]} */
export function headingsOf(text) {
  const first = (text.replace(/^\uFEFF/, '').split(/\r?\n/, 1)[0] ?? '').trim();
  const delimiter = [',', ';', '\t'].reduce((best, each) =>
    first.split(each).length > first.split(best).length ? each : best,
  );
  return first.split(delimiter).map((head) => head.trim().replace(/^"(.*)"$/, '$1'));
}

/** @param {{placeId: string}} props */
export function PlaceFile({ placeId }) {
  const [text, setText] = useState('');
  const [unit, setUnit] = useState(fahrenheit() ? 'F' : 'C');
  const [dates, setDates] = useState('iso');
  const [utc, setUtc] = useState('');
  const [found, setFound] = useState(/** @type {{preview: Preview, wish: Record<string, unknown>} | null} */ (null));
  const form = useAttempt();
  const heads = text ? headingsOf(text) : [];
  /** @param {Event} event */
  const choose = (event) =>
    form.load(async () => {
      const file = /** @type {HTMLInputElement} */ (event.target).files?.[0];
      setFound(null);
      setText('');
      if (!file) return;
      if (file.size > MOST_BYTES) throw new Error(say('climate-too-large'));
      setText(await file.text());
    });
  /** @param {Event} event */
  function look(event) {
    event.preventDefault();
    const said = textsOf(event);
    const columns = Object.fromEntries(
      ['time', 'temperature', 'humidity'].filter((name) => said(name)).map((name) => [name, said(name)]),
    );
    return form.attempt(async () => {
      const wish = { text, unit, dates, utc: utc === 'utc', ...columns };
      setFound({ preview: await post(`/api/places/${placeId}/file`, { ...wish, preview: true }), wish });
    });
  }
  const take = () =>
    form.attempt(async () => {
      const done = await post(`/api/places/${placeId}/file`, { ...found?.wish, preview: false });
      setFound(null);
      setText('');
      return say('climate-taken', { hours: done.new_hours });
    });
  return html`
    <form class="stack" onSubmit=${look}>
      <label>
        ${say('climate-file')}${' '}
        <small>${say('climate-file-hint')}</small>
        <input type="file" accept=".csv,.txt,text/csv,text/plain" onChange=${choose} />
      </label>
      ${
        heads.length > 0 &&
        html`
          <${Column} name="time" label=${say('climate-time-column')} heads=${heads} at=${0} />
          <${Column} name="temperature" label=${say('climate-temperature-column')} heads=${heads} at=${1} optional />
          <${Column} name="humidity" label=${say('climate-humidity-column')} heads=${heads} at=${-1} optional />
          <${Choice}
            label=${say('climate-unit')}
            options=${[
              ['C', '°C'],
              ['F', '°F'],
            ]}
            value=${unit}
            onPick=${setUnit}
          />
          <${Choice}
            label=${say('climate-dates')}
            options=${choicesOf('climate-date-form', ['iso', 'dmy', 'mdy', 'unix'])}
            value=${dates}
            onPick=${setDates}
          />
          <${Choice}
            label=${say('climate-zone')}
            options=${[
              ['', say('climate-zone-of-household')],
              ['utc', say('climate-zone-of-utc')],
            ]}
            value=${utc}
            onPick=${setUtc}
          />
          <button class="button wide" disabled=${form.busy}>${say('climate-look')}</button>
        `
      }
      ${
        found &&
        html`
          <${Found} preview=${found.preview} />
          ${
            found.preview.new_hours > 0 &&
            html`
              <button type="button" class="button main wide" disabled=${form.busy} onClick=${take}>
                ${say('climate-take')}
              </button>
            `
          }
        `
      }
      ${form.said}
    </form>
    <p>
      <a href=${`/api/places/${placeId}/hours.csv`} download>${say('climate-give-out')}</a>
    </p>
  `;
}

/** @param {{name: string, label: string, heads: string[], at: number, optional?: boolean}} props */
const Column = ({ name, label, heads, at, optional = false }) => html`
  <label>
    ${label}
    <select name=${name}>
      ${
        optional &&
        html`
          <option value="" selected=${at < 0}>${say('climate-no-column')}</option>
        `
      }
      ${heads.map(
        (head, i) => html`
          <option value=${head} selected=${i === at}>${head}</option>
        `,
      )}
    </select>
  </label>
`;

/** @param {Preview} preview */
const newHours = ({ new_hours, hours }) =>
  new_hours === hours ? say('climate-new-hours-all', { hours }) : say('climate-new-hours', { hours, new: new_hours });

/** @param {{preview: Preview}} props */
const Found = ({ preview }) => html`
  <div class="stack" role="status">
    <p>
      ${
        preview.from_ms === null || preview.until_ms === null
          ? say('climate-found-nothing')
          : say('climate-found', {
              rows: preview.rows,
              from: fullDay(preview.from_ms),
              until: fullDay(preview.until_ms),
            })
      }${' '}${
        preview.low_c === null || preview.high_c === null
          ? ''
          : say('climate-range', { low: temperature(preview.low_c), high: temperature(preview.high_c) })
      }
    </p>
    ${
      preview.rows > 0 &&
      html`
        <p>${newHours(preview)}</p>
      `
    }
    ${
      preview.bad_rows > 0 &&
      html`
        <p>${say('climate-bad-rows', { rows: preview.bad_rows })}</p>
        <ul>
          ${preview.bad.map(
            ({ line, why }) => html`
              <li>${say('climate-bad-line', { line, why })}</li>
            `,
          )}
        </ul>
      `
    }
  </div>
`;
