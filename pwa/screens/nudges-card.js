// Nudges on this phone, in words: will they come, when did one last come, and a test.
import { useEffect } from 'preact/hooks';
import { useAnswer } from '../components/answer.js';
import { html } from '../components/html.js';
import { askForNudges, pushState, refreshPush, sendTest, stopNudges } from '../signals/push.js';
import { say, sayOf } from '../words/say.js';
import { moment } from '../words/shown.js';

/** @param {number | null | undefined} ms */
const lastOne = (ms) => (ms ? say('phone-nudges-last', { when: moment(ms) }) : say('phone-nudges-none'));

export function Nudges() {
  const { state, problem, health, tested } = pushState.value;
  const { answer } = useAnswer('/api/push/health'); // also where this phone itself does not listen
  useEffect(() => {
    void refreshPush();
  }, []);
  const silent = (answer?.devices ?? []).filter((phone) => phone.silent && !phone.here);
  return html`
    <section class="card">
      <h2>${say('phone-nudges-title')}</h2>
      <p>${sayOf('phone-nudges-state', state)}</p>
      ${
        state === 'on' &&
        html`
          <p class="soft">${lastOne(health?.last_ack_ms)}</p>
        `
      }
      ${silent.map(
        (phone) => html`
          <p class="caution">${say('phone-nudges-silent', { name: phone.name })}</p>
        `,
      )}
      ${(answer?.silent_elsewhere ?? []).map(
        (phone) => html`
          <p class="caution" key=${phone.id}>
            ${sayOf('phone-nudges-elsewhere', phone.why, {
              who: phone.person ?? say('phone-nudges-somebody'),
              phone: phone.name,
            })}
          </p>
        `,
      )}
      ${
        tested &&
        html`
          <p role="status">${sayOf('phone-nudges-tested', tested)}</p>
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
            <button type="button" class="button main" onClick=${() => askForNudges()}>
              ${say('phone-nudges-ask')}
            </button>
          `
        }
        ${
          state === 'on' &&
          html`
            <button type="button" class="button main" disabled=${tested === 'waiting'} onClick=${() => sendTest()}>
              ${say('phone-nudges-test')}
            </button>
            <button type="button" class="button" onClick=${() => stopNudges()}>${say('phone-nudges-stop')}</button>
          `
        }
      </div>
    </section>
  `;
}
