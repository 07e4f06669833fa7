// What needs a person: logs that were refused, and changes that met another phone's. Nothing is dropped by itself.
import { useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { moment } from '../components/in-words.js';
import { Empty } from '../components/states.js';
import { discard, exportUnsent, sendAgain, settle } from '../signals/actions.js';
import { conflicts, outbox, rows } from '../signals/rows.js';
import { m } from '../text/en-more.js';
import { t } from '../text/en.js';
import { fieldName, kindName, valueInWords } from './field-words.js';

const a = m.attention;

export function AttentionScreen() {
  const entries = outbox.value;
  const met = conflicts.value;
  return html`
    <h1>${a.title}</h1>
    ${
      !entries.length &&
      !met.length &&
      html`
        <${Empty} title=${a.none} />
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
        <button type="button" class="button main" onClick=${exportUnsent}>${a.export}</button>
      `
    }
  `;
}

/** A change of this phone that met another one. @param {{met: any}} props */
function Met({ met }) {
  const lost = met.conflicts.some((/** @type {any} */ c) => c.winner === 'theirs');
  const name = rows.value.get(met.op.id)?.set.name ?? kindName(met.op.kind);
  return html`
    <article class="card">
      <h2>${a.met(name)}</h2>
      <ul class="stack">
        ${met.conflicts.map(
          (/** @type {any} */ c) => html`
            <li>
              <strong>${fieldName(c.field)}</strong>
              ${': '}${a.here(valueInWords(c.field, c.mine))},
              ${a.there(rows.value.get(c.by)?.set.name ?? a.other_phone, valueInWords(c.field, c.theirs))}${' '}
              <span class="soft">${moment(c.at_ms)}</span>
              .
              <br />
              ${c.winner === 'theirs' ? a.theirs : a.mine}
            </li>
          `,
        )}
      </ul>
      <div class="wrap">
        <button type="button" class="button main" onClick=${() => settle(met, false)}>${a.leave}</button>
        ${
          lost &&
          html`
            <button type="button" class="button" onClick=${() => settle(met, true)}>${a.bring}</button>
          `
        }
      </div>
    </article>
  `;
}

/** @param {{entry: import('../care/overlay.js').Entry}} props */
function Unsent({ entry }) {
  const refused = entry.state !== 'waiting';
  const args = entry.answer?.args ?? {};
  const orphan = entry.state === 'rejected' && entry.answer?.code === 'parent_missing';
  return html`
    <article class=${`card ${refused ? 'urgent' : ''}`}>
      <p>
        <strong>${entry.op?.kind ? kindName(entry.op.kind) : a.damaged}</strong>
        ${' · '}${refused ? t.state.attention : t.state.saved}
      </p>
      ${
        entry.answer &&
        html`
          <p class="caution">
            ${args.field ? `${fieldName(args.field)}: ` : ''}
            ${args.why ?? a.codes[entry.answer.code] ?? entry.answer.code}
          </p>
        `
      }
      <ul class="why">
        ${Object.entries(entry.op?.set ?? {}).map(
          ([name, value]) => html`
            <li>${fieldName(name)}: ${valueInWords(name, value)}</li>
          `,
        )}
      </ul>
      ${
        orphan &&
        html`
          <p class="soft">${a.again_why}</p>
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
                <button type="button" class="button main" onClick=${() => sendAgain(entry)}>${a.again}</button>
              `
            }
            <button type="button" class="button warn" onClick=${() => confirm(a.sure) && discard(entry.op_id)}>
              ${a.drop}
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
      onSubmit=${(/** @type {any} */ e) => {
        e.preventDefault();
        void sendAgain(entry, { [field]: next });
      }}
    >
      <label>
        ${fieldName(field)}
        <input value=${value} onInput=${(/** @type {any} */ e) => setValue(e.target.value)} />
      </label>
      <button class="button main" disabled=${!usable}>${a.mend}</button>
    </form>
  `;
}
