// The shelf: every colony as tubes standing on their board.
import { useState } from 'preact/hooks';
import { coloniesInOrder, speciesOf } from '../components/colonies.js';
import { typed } from '../components/forms.js';
import { html, Icon } from '../components/html.js';
import { wordFor, wordOf } from '../components/in-words.js';
import { Empty, Joining } from '../components/states.js';
import { dueInWords, Tube } from '../components/tube.js';
import { dueAtMs } from '../care/gauges.js';
import { gaugesOf, planOf } from '../signals/rows.js';
import { joining } from '../signals/saving.js';
import { colonyText } from '../text/en/colony.js';
import { historyText } from '../text/en/history.js';
import { roundText } from '../text/en/round.js';
import { shelfText } from '../text/en/shelf.js';

const SEARCH_FROM = 7;

export function ShelfScreen() {
  const [wanted, setWanted] = useState('');
  const colonies = coloniesInOrder();
  const shown = colonies.filter(({ set }) =>
    `${set.number ?? ''} ${set.name} ${speciesOf(set)}`.toLowerCase().includes(wanted.trim().toLowerCase()),
  );
  if (joining.value !== null) {
    return html`
      <h1>${shelfText.title}</h1>
      <${Joining} entries=${joining.value} />
    `;
  }
  if (!colonies.length) {
    return html`
      <h1>${shelfText.title}</h1>
      <${Empty} bare title=${roundText.empty_shelf}>
        <a class="button main" href="#/colony/new">
          <${Icon} name="add" />
          ${roundText.add}
        </a>
      </${Empty}>
      <${Went} />
    `;
  }
  return html`
    <div class="title">
      <h1>${shelfText.title}</h1>
      <a class="button" href="#/at">
        <${Icon} name="scan" />
        ${shelfText.scan}
      </a>
    </div>
    ${
      colonies.length >= SEARCH_FROM &&
      html`
        <label>
          ${shelfText.search}
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
        <p class="lead">${shelfText.none}</p>
      `
    }
    <div class="wrap even">
      <a class="button main" href="#/colony/new">
        <${Icon} name="add" />
        ${roundText.add}
      </a>
      <a class="button" href="#/labels">
        <${Icon} name="print" />
        ${shelfText.labels}
      </a>
    </div>
    <${Went} />
  `;
}

const Went = () => html`
  <p><a class="button quiet" href="#/gone">${historyText.gone.link}</a></p>
`;

/** @param {{colony: import('../care/overlay.js').ShownRow<'colony'>}} props */
function Board({ colony }) {
  const v = colony.set;
  const gauges = gaugesOf(colony.id);
  const first = gauges
    .map((gauge) => ({ gauge, due: dueAtMs(gauge) }))
    .filter((each) => each.due !== null)
    .sort((a, b) => (a.due ?? 0) - (b.due ?? 0))[0];
  const conditions = /** @type {Record<string, string>} */ (colonyText.conditions);
  const condition = v.condition && v.condition !== 'well' ? ` · ${conditions[v.condition]}` : '';
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
            <p class="soft">${shelfText.no_plan}</p>
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
            <span class="next">${wordFor('need', first.gauge.need)} ${dueInWords(first.due)}</span>
          `
        }
        <p class="soft">
          <em>${speciesOf(v)}</em>
          ${' · '}${wordOf(colonyText.stages, v.stage)}${condition}
        </p>
      </div>
    </a>
  `;
}
