// Nudges on this phone, in words: will they come, when did one last come, and a test.
import { useEffect } from 'preact/hooks';
import { useAnswer } from '../components/answer.js';
import { html } from '../components/html.js';
import { moment } from '../components/in-words.js';
import { askForNudges, pushState, refreshPush, sendTest, stopNudges } from '../signals/push.js';
import { nudgesText } from '../text/en/nudges.js';

export function Nudges() {
  const { state, problem, health, tested } = pushState.value;
  const { answer } = useAnswer('/api/push/health'); // also where this phone itself does not listen
  useEffect(() => {
    void refreshPush();
  }, []);
  const silent = (answer?.devices ?? []).filter((/** @type {any} */ phone) => phone.silent && !phone.here);
  return html`
    <section class="card">
      <h2>${nudgesText.title}</h2>
      <p>${nudgesText.state[state]}</p>
      ${
        state === 'on' &&
        html`
          <p class="soft">${health?.last_ack_ms ? nudgesText.last(moment(health.last_ack_ms)) : nudgesText.none}</p>
        `
      }
      ${silent.map(
        (/** @type {any} */ phone) => html`
          <p class="caution">${nudgesText.silent(phone.name)}</p>
        `,
      )}
      ${(answer?.silent_elsewhere ?? []).map(
        (/** @type {any} */ phone) => html`
          <p class="caution" key=${phone.id}>
            ${nudgesText.elsewhere[phone.why]?.(phone.person ?? nudgesText.somebody, phone.name)}
          </p>
        `,
      )}
      ${
        tested &&
        html`
          <p role="status">${nudgesText.tested[tested]}</p>
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
            <button type="button" class="button main" onClick=${() => askForNudges()}>${nudgesText.ask}</button>
          `
        }
        ${
          state === 'on' &&
          html`
            <button type="button" class="button main" disabled=${tested === 'waiting'} onClick=${() => sendTest()}>
              ${nudgesText.test}
            </button>
            <button type="button" class="button" onClick=${() => stopNudges()}>${nudgesText.stop}</button>
          `
        }
      </div>
    </section>
  `;
}
