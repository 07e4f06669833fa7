// The first colony is in: its plan at once, then the two things that make the app dependable, each with its reason.
import { html } from '../components/html.js';
import { Install } from '../components/install.js';
import { lazy } from '../components/lazy.js';
import { planOf, rowOf, round } from '../signals/rows.js';
import { Nudges } from './nudges.js';
import { Task } from '../components/task.js';
import { Notices, OF_BROOD } from '../components/in-words.js';
import { say } from '../words/say.js';

const Brood = lazy(() => import('./brood.js'), 'Brood', 'charts');
const SHOWN = 3;

/** @param {{id: string}} props */
export function WelcomeScreen({ id }) {
  const colony = /** @type {import('../care/overlay.js').ShownRow<'colony'> | undefined} */ (rowOf(id));
  const plan = planOf(id);
  const items = round.value.items.filter((item) => item.colony_id === id).slice(0, SHOWN);
  return html`
    <h1>${say('welcome-title', { name: colony?.set.name ?? '' })}</h1>
    <section class="stack" aria-label=${say('welcome-plan')}>
      <h2>${say('welcome-plan')}</h2>
      ${
        plan
          ? html`
              ${
                plan.set.census &&
                colony &&
                html`
                  <${Brood} colony=${colony} />
                `
              }
              <${Notices} items=${(plan.set.notices ?? []).filter(({ code }) => !OF_BROOD.includes(code))} />
            `
          : html`
              <p class="soft">${say('welcome-wait')}</p>
            `
      }
      ${items.map(
        (item) => html`
          <${Task}
            key=${item.key}
            item=${item}
            onOther=${() => {
              location.hash = `#/colony/${id}`;
            }}
          />
        `,
      )}
      ${
        plan &&
        !items.length &&
        html`
          <p class="lead">${say('welcome-nothing')}</p>
        `
      }
    </section>
    <div class="wrap even">
      <a class="button main" href="#/round">${say('welcome-go')}</a>
      <a class="button" href="#/colony/new">${say('welcome-again')}</a>
    </div>
    <${Nudges} />
    <${Install} />
  `;
}
