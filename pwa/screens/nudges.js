// Nudges on this phone, in words: will they come, when did one last come, and a test.
import { useEffect } from 'preact/hooks';
import { html } from '../components/html.js';
import { moment } from '../components/in-words.js';
import { useAnswer } from '../components/parts.js';
import { askForNudges, pushState, refreshPush, sendTest, stopNudges } from '../signals/push.js';
import { m } from '../text/en-more.js';

export function Nudges() {
  const { state, problem, health, tested } = pushState.value;
  const { answer } = useAnswer('/api/push/health'); // also where this phone itself does not listen
  useEffect(() => {
    void refreshPush();
  }, []);
  const silent = (answer?.devices ?? []).filter((/** @type {any} */ phone) => phone.silent && !phone.here);
  return html`
    <section class="card">
      <h2>${m.nudges.title}</h2>
      <p>${m.nudges.state[state]}</p>
      ${
        state === 'on' &&
        html`
          <p class="soft">${health?.last_ack_ms ? m.nudges.last(moment(health.last_ack_ms)) : m.nudges.none}</p>
        `
      }
      ${silent.map(
        (/** @type {any} */ phone) => html`
          <p class="caution">${m.nudges.silent(phone.name)}</p>
        `,
      )}
      ${(answer?.silent_elsewhere ?? []).map(
        (/** @type {any} */ phone) => html`
          <p class="caution" key=${phone.id}>
            ${m.nudges.elsewhere[phone.why]?.(phone.person ?? m.nudges.somebody, phone.name)}
          </p>
        `,
      )}
      ${
        tested &&
        html`
          <p role="status">${m.nudges.tested[tested]}</p>
        `
      }
      ${
        problem &&
        html`
          <p role="alert" class="caution">${problem}</p>
        `
      }
      <div class="wrap">
        ${
          state === 'off' &&
          html`
            <button type="button" class="button main" onClick=${() => askForNudges()}>${m.nudges.ask}</button>
          `
        }
        ${
          state === 'on' &&
          html`
            <button type="button" class="button main" disabled=${tested === 'waiting'} onClick=${() => sendTest()}>
              ${m.nudges.test}
            </button>
            <button type="button" class="button" onClick=${() => stopNudges()}>${m.nudges.stop}</button>
          `
        }
      </div>
    </section>
  `;
}
