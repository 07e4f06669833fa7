// A sensor's own file into a place: its columns are named, a preview says what is in it, then it is taken in.
import { useState } from 'preact/hooks';
import { post } from '../signals/people.js';
import { climateText } from '../text/en/climate.js';
import { useAttempt } from './attempt.js';
import { Choice } from './choices.js';
import { fahrenheit, temperature } from './degrees.js';
import { textsOf } from './forms.js';
import { html } from './html.js';
import { fullDay } from './in-words.js';

const MOST_BYTES = 4 * 1024 * 1024;

/**
 * What `POST /api/places/<place_id>/file` says.
 * @typedef {{rows: number, hours: number, new_hours: number, from_ms: number | null, until_ms: number | null,
 *   low_c: number | null, high_c: number | null, bad_rows: number, bad: Array<{line: number, why: string}>}} Preview
 */

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
    form.attempt(async () => {
      const file = /** @type {HTMLInputElement} */ (event.target).files?.[0];
      setFound(null);
      setText('');
      if (!file) return;
      if (file.size > MOST_BYTES) throw new Error(climateText.too_large);
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
      return climateText.taken(done.new_hours);
    });
  return html`
    <form class="stack" onSubmit=${look}>
      <label>
        ${climateText.file}${' '}
        <small>${climateText.file_hint}</small>
        <input type="file" accept=".csv,.txt,text/csv,text/plain" onChange=${choose} />
      </label>
      ${
        heads.length > 0 &&
        html`
          <${Column} name="time" label=${climateText.time_column} heads=${heads} at=${0} />
          <${Column} name="temperature" label=${climateText.temperature_column} heads=${heads} at=${1} optional />
          <${Column} name="humidity" label=${climateText.humidity_column} heads=${heads} at=${-1} optional />
          <${Choice}
            label=${climateText.unit}
            options=${[
              ['C', '°C'],
              ['F', '°F'],
            ]}
            value=${unit}
            onPick=${setUnit}
          />
          <${Choice}
            label=${climateText.dates}
            options=${Object.entries(climateText.date_forms)}
            value=${dates}
            onPick=${setDates}
          />
          <${Choice}
            label=${climateText.zone}
            options=${Object.entries(climateText.zones)}
            value=${utc}
            onPick=${setUtc}
          />
          <button class="button wide" disabled=${form.busy}>${climateText.look}</button>
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
                ${climateText.take}
              </button>
            `
          }
        `
      }
      ${form.said}
    </form>
    <p>
      <a href=${`/api/places/${placeId}/hours.csv`} download>${climateText.give_out}</a>
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
          <option value="" selected=${at < 0}>${climateText.no_column}</option>
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

/** @param {{preview: Preview}} props */
const Found = ({ preview }) => html`
  <div class="stack" role="status">
    <p>
      ${
        preview.from_ms === null || preview.until_ms === null
          ? climateText.found_nothing
          : climateText.found(preview.rows, fullDay(preview.from_ms), fullDay(preview.until_ms))
      }${' '}${
        preview.low_c === null || preview.high_c === null
          ? ''
          : climateText.range(temperature(preview.low_c), temperature(preview.high_c))
      }
    </p>
    ${
      preview.rows > 0 &&
      html`
        <p>${climateText.new_hours(preview.new_hours, preview.hours)}</p>
      `
    }
    ${
      preview.bad_rows > 0 &&
      html`
        <p>${climateText.bad_rows(preview.bad_rows)}</p>
        <ul>
          ${preview.bad.map(
            ({ line, why }) => html`
              <li>${climateText.bad_line(line, why)}</li>
            `,
          )}
        </ul>
      `
    }
  </div>
`;
