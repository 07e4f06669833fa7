// 'I could not': what was in the way goes into the diary for the keeper, and the task stays on the list.
import { Sheet } from '../components/sheet.js';
import { html } from '../components/html.js';
import { taskTitle } from '../components/task.js';
import { log, tell } from '../signals/actions.js';
import { say, sayOf } from '../words/say.js';

const WHY = /** @type {const} */ (['none', 'closed', 'unsure', 'away', 'other']);

/** @param {{item: import('../care/round.js').Item, onClose: () => void}} props */
export function CouldNot({ item, onClose }) {
  /** @param {string} why in words */
  const write = async (why) => {
    await log('note', { colony_id: item.colony_id, text: say('stand-in-note', { task: taskTitle(item), why }) });
    tell(say('stand-in-told'));
    onClose();
  };
  return html`
    <${Sheet} title=${say('stand-in-why')} onClose=${onClose}>
      <div class="stack">
        ${WHY.map((code) => {
          const words = sayOf('stand-in-why', code);
          return html`
            <button type="button" class="button wide" key=${code} onClick=${() => write(words)}>${words}</button>
          `;
        })}
      </div>
    </${Sheet}>
  `;
}
