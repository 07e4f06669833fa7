// The sensors of a place: how they are, and a token for a new one. The server alone knows them.
import { useEffect, useState } from 'preact/hooks';
import { get, post } from '../signals/people.js';
import { syncNow } from '../signals/sync.js';
import { sensorsText } from '../text/en/sensors.js';
import { useAttempt } from './attempt.js';
import { Choice } from './choices.js';
import { fahrenheit, temperature } from './degrees.js';
import { textsOf } from './forms.js';
import { html } from './html.js';
import { moment } from './in-words.js';
import { lazy } from './lazy.js';

const PlaceFile = lazy(() => import('./place-file.js'), 'PlaceFile');

const HOUR_MS = 3_600_000;

/**
 * A sensor as `GET /api/sensors` tells it.
 * @typedef {{id: string, place_id: string, name: string, heard_ms: number | null, away_ms: number | null,
 *   broken_ms: number | null}} SensorState
 */

/** @param {{placeId: string}} props */
export function Sensors({ placeId }) {
  const [sensors, setSensors] = useState(/** @type {SensorState[] | null} */ (null));
  const [ways, setWays] = useState({ brokers: /** @type {string[]} */ ([]), topics: '' });
  const [hour, setHour] = useState('');
  const [adding, setAdding] = useState(false);
  const [filing, setFiling] = useState(false);
  const [token, setToken] = useState('');
  const [failed, setFailed] = useState(false);

  async function load() {
    await syncNow(); // the place may be on this phone only
    const [known, measured] = await Promise.all([get('/api/sensors'), get(`/api/places/${placeId}/hours`)]);
    setSensors(known.sensors.filter((/** @type {SensorState} */ sensor) => sensor.place_id === placeId));
    setWays({ brokers: known.brokers, topics: known.topics });
    setHour(lastHour(measured.hours));
  }
  useEffect(() => void load().catch(() => setFailed(true)), [placeId]);

  if (failed) {
    return html`
      <p class="soft">${sensorsText.offline}</p>
    `;
  }
  if (!sensors) return null;
  return html`
    <section class="stack">
      <h3>${sensorsText.title}</h3>
      <p class="soft">${sensorsText.about}</p>
      ${
        hour &&
        html`
          <p>${sensorsText.now(hour)}</p>
        `
      }
      ${
        !sensors.length &&
        html`
          <p>${sensorsText.none}</p>
        `
      }
      ${sensors.map(
        (sensor) => html`
          <${SensorLine} key=${sensor.id} sensor=${sensor} onEnded=${load} />
        `,
      )}
      ${
        token &&
        html`
          <${Token} token=${token} />
        `
      }
      ${
        adding
          ? html`
              <${NewSensor}
                placeId=${placeId}
                ways=${ways}
                onMade=${(/** @type {string} */ made) => {
                  setToken(made);
                  setAdding(false);
                  void load();
                }}
              />
            `
          : html`
              <button type="button" class="button" onClick=${() => setAdding(true)}>${sensorsText.add}</button>
            `
      }
      ${
        filing
          ? html`
              <${PlaceFile} placeId=${placeId} />
            `
          : html`
              <button type="button" class="button" onClick=${() => setFiling(true)}>${sensorsText.file}</button>
            `
      }
    </section>
  `;
}

/**
 * What was measured in the hour that runs, or in the one before it.
 * @param {[number, number | null, number | null, number | null, number | null][]} hours
 */
function lastHour(hours) {
  const [at_ms, mean_c, , , humidity_pct] = hours.at(-1) ?? [0, null, null, null, null];
  if (Date.now() - at_ms > 2 * HOUR_MS) return '';
  const parts = [
    mean_c === null ? '' : temperature(mean_c),
    humidity_pct === null ? '' : `${Math.round(humidity_pct)} %`,
  ];
  return parts.filter(Boolean).join(', ');
}

/** @param {{sensor: SensorState, onEnded: () => Promise<void>}} props */
function SensorLine({ sensor, onEnded }) {
  const [sure, setSure] = useState(false);
  const { attempt, busy, said } = useAttempt();
  const end = () =>
    attempt(async () => {
      await post(`/api/sensors/${sensor.id}/end`, {});
      await onEnded();
    });
  return html`
    <div class="stack">
      <p>
        <b>${sensor.name}</b>
        <br />
        <span class="soft">${howItIs(sensor)}</span>
      </p>
      ${said}
      ${
        sure
          ? html`
              <p>${sensorsText.end_sure}</p>
              <div class="wrap even">
                <button type="button" class="button" disabled=${busy} onClick=${end}>${sensorsText.end}</button>
                <button type="button" class="button" onClick=${() => setSure(false)}>${sensorsText.keep}</button>
              </div>
            `
          : html`
              <button type="button" class="button" onClick=${() => setSure(true)}>${sensorsText.end}</button>
            `
      }
    </div>
  `;
}

/** @param {SensorState} sensor */
function howItIs(sensor) {
  if (sensor.broken_ms !== null) return sensorsText.broken(moment(sensor.broken_ms));
  if (sensor.away_ms !== null) return sensorsText.away(moment(sensor.away_ms));
  return sensor.heard_ms === null ? sensorsText.never : sensorsText.heard(moment(sensor.heard_ms));
}

/** @param {{token: string}} props */
function Token({ token }) {
  const { attempt, said } = useAttempt();
  const copy = () =>
    attempt(async () => {
      await navigator.clipboard.writeText(token);
      return sensorsText.copied;
    });
  return html`
    <div class="stack">
      <p>${sensorsText.once}</p>
      <p class="address">${token}</p>
      <p class="soft">${sensorsText.address(`${location.origin}/api/readings`)}</p>
      <button type="button" class="button" onClick=${copy}>${sensorsText.copy}</button>
      ${said}
    </div>
  `;
}

/**
 * @param {{placeId: string, ways: {brokers: string[], topics: string}, onMade: (token: string) => void}} props
 * `ways`: the brokers that the server listens to, and which topics are this household's
 */
function NewSensor({ placeId, ways, onMade }) {
  const [broker, setBroker] = useState('');
  const [unit, setUnit] = useState(fahrenheit() ? 'F' : 'C');
  const form = useAttempt();
  /** @param {Event} event */
  function save(event) {
    event.preventDefault();
    const text = textsOf(event);
    const said = ['topic', 'temperature_path', 'humidity_path'].filter((name) => broker && text(name));
    const topic = Object.fromEntries(said.map((name) => [name, text(name)]));
    return form.attempt(async () => {
      const wish = { place_id: placeId, name: text('name'), unit, ...(broker ? { broker, ...topic } : {}) };
      onMade((await post('/api/sensors', wish)).token ?? '');
    });
  }
  const units = [
    ['C', '°C'],
    ['F', '°F'],
  ];
  return html`
    <form class="stack" onSubmit=${save}>
      <label>
        ${sensorsText.name}
        <input name="name" required maxlength="60" autocomplete="off" />
      </label>
      ${
        ways.brokers.length > 0 &&
        html`
          <${Choice}
            label=${sensorsText.way}
            options=${[['', sensorsText.here], ...ways.brokers.map((name) => [name, sensorsText.through(name)])]}
            value=${broker}
            onPick=${setBroker}
          />
        `
      }
      ${
        broker &&
        html`
          <label>
            ${sensorsText.topic}${' '}
            <small>${sensorsText.topic_hint(ways.topics)}</small>
            <input name="topic" required maxlength="250" autocomplete="off" autocapitalize="off" />
          </label>
          <label>
            ${sensorsText.temperature_path}${' '}
            <small>${sensorsText.path_hint}</small>
            <input name="temperature_path" maxlength="120" autocomplete="off" autocapitalize="off" />
          </label>
          <label>
            ${sensorsText.humidity_path}
            <input name="humidity_path" maxlength="120" autocomplete="off" autocapitalize="off" />
          </label>
        `
      }
      <${Choice} label=${sensorsText.unit} options=${units} value=${unit} onPick=${setUnit} />
      ${form.said}
      <button class="button main wide" disabled=${form.busy}>${broker ? sensorsText.listen : sensorsText.make}</button>
    </form>
  `;
}
