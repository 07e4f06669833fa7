// Tube labels: a sheet of QR codes with short codes, drawn on this phone, to print, cut and tape on.
import { useEffect, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { ManyChoice } from '../components/choices.js';
import { html, Icon } from '../components/html.js';
import { shortCode } from '../care/short-code.js';
import { coloniesInOrder, speciesOf } from '../components/colonies.js';
import { labelled, say } from '../words/say.js';

/** @typedef {typeof import('qr').default} Encode */

/** @type {{ecc: 'medium', border: number}} */
const CODE_LOOK = { ecc: 'medium', border: 1 };

/** The address in a label: opened by the app's own scanner, or by a camera in the browser. @param {string} id */
export const labelAddress = (id) => `${location.origin}/#/at/${shortCode(id)}`;

export function LabelsScreen() {
  const colonies = coloniesInOrder();
  const [left_out, setLeftOut] = useState(/** @type {string[]} */ ([]));
  const [encode, setEncode] = /** @type {typeof useState<Encode | null>} */ (useState)(null);
  const { attempt, said } = useAttempt();
  useEffect(() => {
    void attempt(async () => {
      const { default: made } = await import('qr');
      setEncode(() => made);
    });
  }, []);
  const chosen = colonies.filter((colony) => !left_out.includes(colony.id));
  const choose = (/** @type {string[]} */ ids) =>
    setLeftOut(colonies.map((colony) => colony.id).filter((id) => !ids.includes(id)));
  return html`
    <div class="screen-only stack">
      <h1>${say('label-title')}</h1>
      <p class="soft">${say('label-about')}</p>
      <${ManyChoice}
        label=${say('label-choose')}
        values=${chosen.map((colony) => colony.id)}
        options=${colonies.map((colony) => [colony.id, colony.set.name])}
        onChange=${choose}
      />
      <div class="wrap even">
        <button type="button" class="button main" onClick=${() => print()}>
          <${Icon} name="print" />
          ${say('label-print')}
        </button>
        <a class="button" href="#/at">
          <${Icon} name="scan" />
          ${say('label-scan')}
        </a>
      </div>
      ${said}
    </div>
    ${
      encode &&
      html`
        <ul class="labels">
          ${chosen.map(
            (colony) => html`
              <li key=${colony.id}>
                <strong>${colony.set.number ? `${colony.set.number} · ` : ''}${colony.set.name}</strong>
                <div
                  role="img"
                  aria-label=${labelled(colony.set.name, shortCode(colony.id))}
                  dangerouslySetInnerHTML=${{ __html: encode(labelAddress(colony.id), 'svg', CODE_LOOK) }}
                />
                <span class="code">${shortCode(colony.id)}</span>
                <em>${speciesOf(colony.set)}</em>
              </li>
            `,
          )}
        </ul>
      `
    }
  `;
}
