// The number on the app's icon, where the platform draws one: what is due now. Fetched after the first paint.
import { effect } from '@preact/signals';
import { round, session } from './shelf.js';

const phone = /** @type {any} */ (navigator);
const AFTER_PAINT_MS = 60;

if (phone.setAppBadge) {
  let shown = -1;
  effect(() => {
    const due = session.value && !session.value.ended ? round.value.items.filter((item) => item.group === 'now').length : 0;
    if (due === shown) return;
    shown = due;
    setTimeout(() => void (shown ? phone.setAppBadge(shown) : phone.clearAppBadge()).catch(() => undefined), AFTER_PAINT_MS); // not installed, or not allowed
  });
}
