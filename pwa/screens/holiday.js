// A journey: who needs nobody while you are away, what to top up before, and for whom a pass is made.
import { useState } from 'preact/hooks';
import { whyNot } from '../components/answer.js';
import { useAttempt } from '../components/attempt.js';
import { textsOf } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { DAY_MS } from '../care/rules.js';
import { dayOf } from '../care/instants.js';
import { post } from '../signals/people.js';
import { now, today } from '../signals/clock.js';
import { portionInWords } from '../words/portions.js';
import { inWords, nameOf } from '../components/in-words.js';
import { labelled, say, sayOf } from '../words/say.js';

/** @typedef {{colony_ids: string[], starts_on: string, ends_on: string}} Trip */
/** @typedef {import('../answers.d.ts').ColonyHoliday} ColonyHoliday */

const AWAY_DAYS = 14;
/** @param {{onPass: (trip: Trip) => void}} props `onPass` starts a pass for the colonies that need visits */
export function Holiday({ onPass }) {
  const [found, setFound] = useState(
    /** @type {null | {trip: Trip, colonies: ColonyHoliday[], travel: import('../kinds.d.ts').Reason[]}} */ (null),
  );
  const { attempt, busy, said } = useAttempt();
  /** @param {Event} event */
  function look(event) {
    event.preventDefault();
    const text = textsOf(event);
    const [leave_on, return_on] = [text('leave_on'), text('return_on')];
    setFound(null);
    void attempt(async () => {
      const answer = await post('/api/holiday', { leave_on, return_on }).catch((problem) => {
        throw new Error(whyNot(problem));
      });
      const colony_ids = answer.colonies.filter((each) => each.verdict === 'visit').map((each) => each.colony_id);
      setFound({ ...answer, trip: { colony_ids, starts_on: leave_on, ends_on: return_on } });
    });
  }
  return html`
    <section class="card">
      <h2>${say('holiday-title')}</h2>
      <p class="soft">${say('holiday-about')}</p>
      <form class="stack" onSubmit=${look}>
        <div class="pair">
          <label>
            ${say('holiday-leave')}
            <input name="leave_on" type="date" required min=${today.value} defaultValue=${today.value} />
          </label>
          <label>
            ${say('holiday-back')}
            <input
              name="return_on"
              type="date"
              required
              min=${today.value}
              defaultValue=${dayOf(new Date(now.peek() + AWAY_DAYS * DAY_MS))}
            />
          </label>
        </div>
        ${said}
        <button class="button" disabled=${busy}>${say('holiday-go')}</button>
      </form>
      <div role="status">
        ${
          found &&
          (found.colonies.length
            ? html`
                <ul class="done-list">
                  ${found.colonies.map(
                    (each) => html`
                      <${OneColony} key=${each.colony_id} told=${each} />
                    `,
                  )}
                </ul>
              `
            : html`
                <p>${say('holiday-none')}</p>
              `)
        }
      </div>
      ${
        found &&
        found.trip.colony_ids.length > 0 &&
        html`
          <button type="button" class="button main" onClick=${() => onPass(found.trip)}>
            <${Icon} name="handover" />
            ${say('holiday-pass')}
          </button>
        `
      }
      ${
        found &&
        html`
          <details>
            <summary>${say('holiday-travel')}</summary>
            <ul class="stack">
              ${found.travel.map(
                (rule) => html`
                  <li>${inWords('travel', rule)}</li>
                `,
              )}
            </ul>
          </details>
        `
      }
    </section>
  `;
}

/** @param {{told: ColonyHoliday}} props */
function OneColony({ told }) {
  return html`
    <li>
      <div class="grow stack">
        <h3>${nameOf(told.colony_id)}</h3>
        <p>
          <strong>
            ${
              told.verdict === 'visit'
                ? say('holiday-visit', { days: told.visit_every_days ?? 1 })
                : sayOf('holiday-verdict', told.verdict)
            }
          </strong>
        </p>
        ${
          told.top_up.length > 0 &&
          html`
            <div>
              <p>${say('holiday-top-up')}</p>
              ${told.top_up.map(
                ({ need, portion }) => html`
                  <p>${labelled(sayOf('need', need), portion ? portionInWords(portion) : say('holiday-full'))}</p>
                `,
              )}
            </div>
          `
        }
        ${told.reasons.map(
          (reason) => html`
            <p class="soft">${inWords('reason', reason)}</p>
          `,
        )}
      </div>
    </li>
  `;
}
