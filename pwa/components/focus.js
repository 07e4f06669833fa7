// Where the keyboard and a screen reader are: at the head of a screen after going there, beside what went away.
import { effect } from '@preact/signals';
import { route } from '../signals/route.js';

const CAN_HOLD = 'button:not(:disabled), a[href], input:not(:disabled), select:not(:disabled), h1, h2, [role="status"]';
const APP = 'Broodshelf';

/** Put the focus on an element, also where it cannot be tabbed to. @param {HTMLElement} element */
function hold(element) {
  if (element.tabIndex < 0 && !element.hasAttribute('tabindex')) element.tabIndex = -1;
  element.focus({ preventScroll: true });
}

/** Name the page by the head of its screen, so that tabs, histories and screen readers tell one from another. */
function entitle() {
  const head = document.querySelector('main h1')?.textContent?.trim();
  const title = head && head !== APP ? `${head} · ${APP}` : APP;
  if (document.title !== title) document.title = title;
}

/**
 * Follow what is drawn below `root`: the title goes with the head of the screen; the head gets the focus once after
 * each going; when what has the focus is taken away, what stands next to it gets it.
 * @param {HTMLElement} root
 */
export function followFocus(root) {
  /** What had the focus last, and what it stood in, from the inside out. @type {HTMLElement[]} */
  let held = [];
  let arriving = false;
  root.addEventListener('focusin', (event) => {
    held = [];
    for (let at = /** @type {HTMLElement | null} */ (event.target); at && at !== root; at = at.parentElement) {
      held.push(at);
    }
  });
  let begun = false;
  effect(() => {
    void route.value; // known before the new screen is drawn
    arriving = begun;
    begun = true;
    held = [];
  });
  const look = () => {
    asked = 0;
    entitle();
    const head = root.querySelector('main h1');
    if (arriving && head instanceof HTMLElement && !root.querySelector('dialog[open]')) {
      arriving = false;
      hold(head);
      return;
    }
    const [lost] = held;
    if (!lost || lost.isConnected || document.activeElement !== document.body) return;
    const around = held.find((each) => each.isConnected) ?? root.querySelector('main');
    const next = around?.querySelector(CAN_HOLD) ?? head;
    if (next instanceof HTMLElement) hold(next);
  };
  // with the next painting, which lays out what is new anyway: to focus at once would lay it out within the drawing
  let asked = 0;
  new MutationObserver(() => {
    asked ||= requestAnimationFrame(look);
  }).observe(root, { childList: true, subtree: true, characterData: true });
}
