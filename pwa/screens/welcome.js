// The first colony is in: its plan at once, then the two things that make the app dependable, each with its reason.
import { html } from '../components/html.js';
import { Notices } from '../components/in-words.js';
import { Install } from '../components/install.js';
import { planOf, round, rows } from '../signals/rows.js';
import { welcomeText } from '../text/en/welcome.js';
import { Nudges } from './nudges.js';
import { Task } from '../components/task.js';

const SHOWN = 3;

/** @param {{id: string}} props */
export function WelcomeScreen({ id }) {
  const colony = rows.value.get(id);
  const plan = planOf(id);
  const items = round.value.items.filter((item) => item.colony_id === id).slice(0, SHOWN);
  return html`
    <h1>${welcomeText.title(colony?.set.name ?? '')}</h1>
    <section class="stack" aria-label=${welcomeText.plan}>
      <h2>${welcomeText.plan}</h2>
      ${
        plan
          ? html`
              <${Notices} items=${plan.set.notices ?? []} />
            `
          : html`
              <p class="soft">${welcomeText.wait}</p>
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
          <p class="lead">${welcomeText.nothing}</p>
        `
      }
    </section>
    <div class="wrap even">
      <a class="button main" href="#/round">${welcomeText.go}</a>
      <a class="button" href="#/colony/new">${welcomeText.again}</a>
    </div>
    <${Nudges} />
    <${Install} />
  `;
}
