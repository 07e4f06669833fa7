// The last thing done, for ten seconds, with its undo.
import { toast } from '../signals/actions.js';
import { t } from '../text/en.js';
import { html } from './html.js';

export function Toast() {
  const shown = toast.value;
  if (!shown) return null;
  return html`<div class="toast" role="status"><span>${shown.text}</span>
    ${shown.undo && html`<button type="button" class="button" onClick=${() => { const { undo } = shown; toast.value = null; void undo?.(); }}>${t.round.undo}</button>`}</div>`;
}
