// The shelf: every colony as tubes standing on their board.
import { useState } from 'preact/hooks';
import { coloniesInOrder, speciesOf } from '../components/colonies.js';
import { typed } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { NoColonies } from '../components/states.js';
import { dueInWords, Tube } from '../components/tube.js';
import { dueAtMs } from '../care/gauges.js';
import { gaugesOf, planOf } from '../signals/rows.js';
import { joining } from '../signals/saving.js';
import { say, sayIf, sayOf } from '../words/say.js';

const SEARCH_FROM = 7;

export function ShelfScreen() {
  const [wanted, setWanted] = useState('');
  const colonies = coloniesInOrder();
  const shown = colonies.filter(({ set }) =>
    `${set.number ?? ''} ${set.name} ${speciesOf(set)}`.toLowerCase().includes(wanted.trim().toLowerCase()),
  );
  if (joining.value !== null || !colonies.length) {
    return html`
      <${NoColonies} title=${say('shelf-title')} joining=${joining.value}>
        <${Went} />
      </${NoColonies}>
    `;
  }
  return html`
    <div class="title">
      <h1>${say('shelf-title')}</h1>
      <a class="button" href="#/at">
        <${Icon} name="scan" />
        ${say('shelf-scan')}
      </a>
    </div>
    ${
      colonies.length >= SEARCH_FROM &&
      html`
        <label>
          ${say('shelf-search')}
          <input type="search" value=${wanted} onInput=${typed(setWanted)} />
        </label>
      `
    }
    <div class="shelf-grid">
      ${shown.map(
        (colony) => html`
          <${Board} key=${colony.id} colony=${colony} />
        `,
      )}
    </div>
    ${
      !shown.length &&
      html`
        <p class="lead">${say('shelf-none')}</p>
      `
    }
    <div class="wrap even">
      <a class="button main" href="#/colony/new">
        <${Icon} name="add" />
        ${say('round-add')}
      </a>
      <a class="button" href="#/labels">
        <${Icon} name="print" />
        ${say('shelf-labels')}
      </a>
    </div>
    <${Went} />
  `;
}

const Went = () => html`
  <p>
    <a class="button quiet" href="#/gone">${say('history-gone-link')}</a>
  </p>
`;

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'>}} props */
function Board({ colony }) {
  const v = colony.set;
  const gauges = gaugesOf(colony.id);
  const first = gauges
    .map((gauge) => ({ gauge, due: dueAtMs(gauge) }))
    .filter((each) => each.due !== null)
    .sort((a, b) => (a.due ?? 0) - (b.due ?? 0))[0];
  const condition = v.condition && v.condition !== 'well' ? ` · ${sayOf('colony-condition', v.condition)}` : '';
  return html`
    <a class="board" href=${`#/colony/${colony.id}`}>
      <div class="stand">
        ${gauges.map(
          (gauge) => html`
            <${Tube} gauge=${gauge} small />
          `,
        )}${
          !planOf(colony.id) &&
          html`
            <p class="soft">${say('shelf-no-plan')}</p>
          `
        }
      </div>
      <div class="plank">
        ${
          v.number &&
          html`
            <span class="number">${v.number}</span>
          `
        }
        <h2>${v.name}</h2>
        ${
          first &&
          html`
            <span class="next">
              ${say('shelf-next', { need: sayOf('need', first.gauge.need), due: dueInWords(first.due) })}
            </span>
          `
        }
        <p class="soft">
          <em>${speciesOf(v)}</em>
          ${' · '}${sayIf('colony-stage', v.stage)}${condition}
        </p>
      </div>
    </a>
  `;
}
