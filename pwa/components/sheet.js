// A sheet that rises from the lower edge, where the thumb is. The browser's own dialog keeps focus inside.
import { useEffect, useRef } from 'preact/hooks';
import { t } from '../text/en.js';
import { Icon } from './icon.js';
import { html } from './html.js';

/** @param {{title: string, onClose: () => void, children: any}} props */
export function Sheet({ title, onClose, children }) {
  const ref = useRef(/** @type {any} */ (null));
  useEffect(() => {
    if (!ref.current.open) ref.current.showModal();
  }, []);
  const onBackdrop = (/** @type {any} */ event) => { if (event.target === ref.current) ref.current.close(); };
  return html`<dialog class="sheet" ref=${ref} aria-label=${title} onClose=${onClose} onCancel=${onClose} onClick=${onBackdrop}>
    <div class="sheet-head"><h2 class="grow">${title}</h2><button type="button" class="button quiet" onClick=${() => ref.current.close()}><${Icon} name="close" />${t.close}</button></div>
    <div class="body">${children}</div>
  </dialog>`;
}
