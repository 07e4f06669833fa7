// A sheet that rises from the lower edge, where the thumb is. The browser's own dialog keeps focus inside.
import { useEffect, useRef } from 'preact/hooks';
import { html } from './html.js';

/** @param {{title: string, onClose: () => void, children: any}} props */
export function Sheet({ title, onClose, children }) {
  const ref = useRef(/** @type {any} */ (null));
  useEffect(() => {
    if (!ref.current.open) ref.current.showModal();
  }, []);
  return html`<dialog class="sheet" ref=${ref} aria-label=${title} onClose=${onClose} onCancel=${onClose}>
    <div class="body">
      <div class="row"><h2 class="grow">${title}</h2><button type="button" class="button" onClick=${() => ref.current.close()}>Close</button></div>
      ${children}
    </div>
  </dialog>`;
}
