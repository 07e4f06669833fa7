// What needs a person: logs that were refused, and changes that met another phone's. Nothing is dropped by itself.
import { useState } from 'preact/hooks';
import { typed } from '../components/forms.js';
import { html } from '../components/html.js';
import { Empty } from '../components/states.js';
import { discard, sendAgain, settle } from '../signals/actions.js';
import { conflicts, outbox, rows } from '../signals/rows.js';
import { exportUnsent } from '../signals/unsent.js';
import { fieldName, isUntold, kindName, valueInWords } from './field-words.js';
import { isSaid, labelled, say, sayIf, sayOf } from '../words/say.js';
import { moment } from '../words/shown.js';

export function AttentionScreen() {
  const entries = outbox.value;
  const met = conflicts.value;
  return html`
    <h1>${say('attention-title')}</h1>
    ${
      !entries.length &&
      !met.length &&
      html`
        <${Empty} title=${say('attention-none')} />
      `
    }
    ${met.map(
      (each) => html`
        <${Met} key=${each.op_id} met=${each} />
      `,
    )}
    ${entries.map(
      (entry) => html`
        <${Unsent} key=${entry.op_id} entry=${entry} />
      `,
    )}
    ${
      entries.length > 0 &&
      html`
        <button type="button" class="button main" onClick=${() => exportUnsent()}>${say('attention-export')}</button>
      `
    }
  `;
}

/** Who wrote, by name; whom this phone does not know is another phone. @param {string | null} id @returns {string} */
const writerOf = (id) => rows.value.get(id ?? '')?.set.name ?? say('attention-other-phone');

/** A change of this phone that met another one. @param {{met: import('../care/overlay.js').Met}} props */
function Met({ met }) {
  const lost = met.conflicts.some((c) => c.winner === 'theirs');
  const name = rows.value.get(met.op.id)?.set.name ?? kindName(met.op.kind);
  return html`
    <article class="card">
      <h2>${say('attention-met', { name })}</h2>
      <ul class="stack">
        ${met.conflicts.map(
          (c) => html`
            <li>
              ${say('attention-values', {
                field: fieldName(c.field),
                here: valueInWords(c.field, c.mine),
                who: writerOf(c.by),
                there: valueInWords(c.field, c.theirs),
                when: moment(c.at_ms),
              })}
              <br />
              ${c.winner === 'theirs' ? say('attention-theirs') : say('attention-mine')}
            </li>
          `,
        )}
      </ul>
      <div class="wrap">
        <button type="button" class="button main" onClick=${() => settle(met, false)}>${say('attention-leave')}</button>
        ${
          lost &&
          html`
            <button type="button" class="button" onClick=${() => settle(met, true)}>${say('attention-bring')}</button>
          `
        }
      </div>
    </article>
  `;
}

/**
 * In this phone's words; what it has none for, as of a newer server, in the server's.
 * @param {import('../answers.d.ts').Rejected} answer
 */
function whyRefused({ code, args = {} }) {
  const said = isSaid('refused', args.reason)
    ? sayOf('refused', /** @type {string} */ (args.reason), args)
    : sayIf('attention-code', code);
  const why = said || (args.why ?? code);
  return args.field ? labelled(fieldName(args.field), why) : why;
}

/** @param {{entry: import('../care/overlay.js').Entry}} props */
function Unsent({ entry }) {
  const refused = entry.state !== 'waiting';
  const args = entry.answer?.args ?? {};
  const orphan = entry.state === 'rejected' && entry.answer?.code === 'parent_missing';
  return html`
    <article class=${`card ${refused ? 'urgent' : ''}`}>
      <p>
        <strong>${entry.op?.kind ? kindName(entry.op.kind) : say('attention-damaged')}</strong>
        ${' · '}${refused ? say('saving-state-attention') : say('saving-state-saved')}
      </p>
      ${
        entry.answer &&
        html`
          <p class="caution">${whyRefused(entry.answer)}</p>
        `
      }
      <ul class="why">
        ${Object.entries(entry.op?.set ?? {}).map(
          ([name, value]) =>
            !isUntold(name) &&
            html`
              <li>${labelled(fieldName(name), valueInWords(name, value))}</li>
            `,
        )}
      </ul>
      ${
        orphan &&
        html`
          <p class="soft">${say('attention-again-why')}</p>
        `
      }
      ${
        entry.state === 'rejected' &&
        args.field &&
        args.field in entry.op.set &&
        html`
          <${Mend} entry=${entry} field=${args.field} />
        `
      }
      ${
        refused &&
        html`
          <div class="wrap">
            ${
              orphan &&
              html`
                <button type="button" class="button main" onClick=${() => sendAgain(entry)}>
                  ${say('attention-again')}
                </button>
              `
            }
            <button
              type="button"
              class="button warn"
              onClick=${() => confirm(say('attention-sure')) && discard(entry.op_id)}
            >
              ${say('attention-drop')}
            </button>
          </div>
        `
      }
    </article>
  `;
}

/** @param {{entry: import('../care/overlay.js').Entry, field: string}} props */
function Mend({ entry, field }) {
  const was = /** @type {Record<string, unknown>} */ (entry.op.set)[field];
  const [value, setValue] = useState(String(was ?? ''));
  const next = typeof was === 'number' ? Number(value.replace(',', '.')) : value;
  const usable = value.trim() !== '' && !Number.isNaN(next);
  return html`
    <form
      class="stack"
      onSubmit=${(/** @type {Event} */ e) => {
        e.preventDefault();
        void sendAgain(entry, { [field]: next });
      }}
    >
      <label>
        ${fieldName(field)}
        <input value=${value} onInput=${typed(setValue)} />
      </label>
      <button class="button main" disabled=${!usable}>${say('attention-mend')}</button>
    </form>
  `;
}
