// A sheet over the screen.
import { useEffect, useRef } from 'preact/hooks';
import { html, Icon } from './html.js';
import { say } from '../words/say.js';

/**
 * A sheet that rises from the lower edge, where the thumb is. The browser's own dialog keeps focus inside.
 * @param {{title: string, onClose: () => void, children: import('preact').ComponentChildren}} props
 */
export function Sheet({ title, onClose, children }) {
  const ref = useRef(/** @type {HTMLDialogElement | null} */ (null));
  const left = useRef(false);
  useEffect(() => {
    const dialog = ref.current;
    const before = document.activeElement;
    if (!dialog) return undefined;
    if (!dialog.open) dialog.showModal();
    return () => {
      left.current = true;
      dialog.close(); // while it is open, nothing beneath it takes the focus
      if (before instanceof HTMLElement && before.isConnected) before.focus({ preventScroll: true });
    };
  }, []);
  // a dialog tells later that it closed: by then another sheet may be open, which that must not close
  const closed = () => {
    if (!left.current) onClose();
  };
  const close = () => ref.current?.close();
  /** @param {MouseEvent} event */
  const onBackdrop = (event) => {
    if (event.target === ref.current) close();
  };
  return html`
    <dialog class="sheet" ref=${ref} aria-label=${title} onClose=${closed} onCancel=${closed} onClick=${onBackdrop}>
      <div class="sheet-head">
        <h2 class="grow">${title}</h2>
        <button type="button" class="button quiet" onClick=${close}>
          <${Icon} name="close" />
          ${say('frame-close')}
        </button>
      </div>
      <div class="body">${children}</div>
    </dialog>
  `;
}
