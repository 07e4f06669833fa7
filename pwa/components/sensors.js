// The sensors of a place: how they are, and a token for a new one. The server alone knows them.
import { useEffect, useState } from 'preact/hooks';
import { nowMs } from '../signals/clock.js';
import { get, post } from '../signals/people.js';
import { syncNow } from '../signals/sync.js';
import { useAttempt } from './attempt.js';
import { Choice } from './choices.js';
import { textsOf } from './forms.js';
import { html } from './html.js';
import { lazy } from './lazy.js';
import { fahrenheit, temperature } from '../words/measures.js';
import { say } from '../words/say.js';
import { moment } from '../words/shown.js';
import { HOUR_MS } from '../care/rules.js';

const PlaceFile = lazy(() => import('./place-file.js'), 'PlaceFile', 'charts');

/**
 * @typedef {import('../answers.d.ts').SensorState} SensorState
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
    setSensors(known.sensors.filter((sensor) => sensor.place_id === placeId));
    setWays({ brokers: known.brokers, topics: known.topics });
    setHour(lastHour(measured.hours));
  }
  useEffect(() => void load().catch(() => setFailed(true)), [placeId]);

  if (failed) {
    return html`
      <p class="soft">${say('sensor-offline')}</p>
    `;
  }
  if (!sensors) return null;
  return html`
    <section class="stack">
      <h3>${say('sensor-title')}</h3>
      <p class="soft">${say('sensor-about')}</p>
      ${
        hour &&
        html`
          <p>${say('sensor-now', { what: hour })}</p>
        `
      }
      ${
        !sensors.length &&
        html`
          <p>${say('sensor-none')}</p>
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
              <button type="button" class="button" onClick=${() => setAdding(true)}>${say('sensor-add')}</button>
            `
      }
      ${
        filing
          ? html`
              <${PlaceFile} placeId=${placeId} />
            `
          : html`
              <button type="button" class="button" onClick=${() => setFiling(true)}>${say('sensor-file')}</button>
            `
      }
    </section>
  `;
}

/**
 * What was measured in the hour that runs, or in the one before it.
 * @param {[number, number | null, number | null, number | null, number | null][]} hours
 */
export function lastHour(hours) {
  const [at_ms, mean_c, , , humidity_pct] = hours.at(-1) ?? [0, null, null, null, null];
  if (nowMs() - at_ms > 2 * HOUR_MS) return '';
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
              <p>${say('sensor-end-sure')}</p>
              <div class="wrap even">
                <button type="button" class="button" disabled=${busy} onClick=${end}>${say('sensor-end')}</button>
                <button type="button" class="button" onClick=${() => setSure(false)}>${say('sensor-keep')}</button>
              </div>
            `
          : html`
              <button type="button" class="button" onClick=${() => setSure(true)}>${say('sensor-end')}</button>
            `
      }
    </div>
  `;
}

/** @param {SensorState} sensor */
function howItIs(sensor) {
  if (sensor.broken_ms !== null) return say('sensor-broken', { when: moment(sensor.broken_ms) });
  if (sensor.away_ms !== null) return say('sensor-away', { when: moment(sensor.away_ms) });
  return sensor.heard_ms === null ? say('sensor-never') : say('sensor-heard', { when: moment(sensor.heard_ms) });
}

/** @param {{token: string}} props */
function Token({ token }) {
  const { attempt, said } = useAttempt();
  const copy = () =>
    attempt(async () => {
      await navigator.clipboard.writeText(token);
      return say('sensor-copied');
    });
  return html`
    <div class="stack">
      <p>${say('sensor-once')}</p>
      <p class="address">${token}</p>
      <p class="soft">${say('sensor-address', { url: `${location.origin}/api/readings` })}</p>
      <button type="button" class="button" onClick=${copy}>${say('sensor-copy')}</button>
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
  /** @type {Array<[string, string]>} */
  const units = [
    ['C', '°C'],
    ['F', '°F'],
  ];
  return html`
    <form class="stack" onSubmit=${save}>
      <label>
        ${say('sensor-name')}
        <input name="name" required maxlength="60" autocomplete="off" />
      </label>
      ${
        ways.brokers.length > 0 &&
        html`
          <${Choice}
            label=${say('sensor-way')}
            options=${[
              ['', say('sensor-here')],
              ...ways.brokers.map(
                /** @returns {[string, string]} */ (each) => [each, say('sensor-through', { broker: each })],
              ),
            ]}
            value=${broker}
            onPick=${setBroker}
          />
        `
      }
      ${
        broker &&
        html`
          <label>
            ${say('sensor-topic')}${' '}
            <small>${say('sensor-topic-hint', { topics: ways.topics })}</small>
            <input name="topic" required maxlength="250" autocomplete="off" autocapitalize="off" />
          </label>
          <label>
            ${say('sensor-temperature-path')}${' '}
            <small>${say('sensor-path-hint')}</small>
            <input name="temperature_path" maxlength="120" autocomplete="off" autocapitalize="off" />
          </label>
          <label>
            ${say('sensor-humidity-path')}
            <input name="humidity_path" maxlength="120" autocomplete="off" autocapitalize="off" />
          </label>
        `
      }
      <${Choice} label=${say('sensor-unit')} options=${units} value=${unit} onPick=${setUnit} />
      ${form.said}
      <button class="button main wide" disabled=${form.busy}>
        ${broker ? say('sensor-listen') : say('sensor-make')}
      </button>
    </form>
  `;
}
