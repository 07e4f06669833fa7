// Going over to a new version of the app: at once in a tab where nobody writes, else when what is written is saved or
// left.
import { patchSaving } from '../signals/saving.js';

const TEXT = 'textarea, input:not([type="search"], [type="checkbox"], [type="radio"])';
/** Fields that were written in since the page was loaded. @type {Set<HTMLInputElement>} */
const written = new Set();

/** Remember what is written below `root`; what is only searched for can be lost. @param {HTMLElement} root */
export function followWriting(root) {
  root.addEventListener('input', ({ target }) => {
    const field = /** @type {HTMLInputElement} */ (target);
    if (field.matches(TEXT)) written.add(field);
  });
}

/**
 * Whether a sheet stands open, or a field says something else than what is kept: both end when it is saved or left. A
 * field whose text the screen holds itself keeps nothing.
 */
function isHalfWritten() {
  for (const field of written) if (!field.isConnected) written.delete(field);
  return (
    [...written].some((field) => field.value !== field.defaultValue) || document.querySelector('dialog[open]') !== null
  );
}

/** Load the page again, in the new version, as soon as that takes nothing away that somebody is writing. */
export function goOver() {
  if (!isHalfWritten()) {
    location.reload();
    return;
  }
  patchSaving({ update_ready: false, update_waits: true });
  const watcher = new MutationObserver(() => {
    if (isHalfWritten()) return;
    watcher.disconnect();
    location.reload();
  });
  const attributeFilter = ['open', 'value'];
  watcher.observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter });
}
