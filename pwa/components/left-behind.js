// What others have left unsent on this phone: it goes when they are in again, or as a file.
import { useEffect, useState } from 'preact/hooks';
import { exportUnsent, leftBehind } from '../signals/unsent.js';
import { say } from '../words/say.js';
import { html } from './html.js';

/** @param {{me: import('../answers.d.ts').Me | null | undefined}} props who is in */
export function LeftBehind({ me = null }) {
  const [left, setLeft] = useState(/** @type {Awaited<ReturnType<typeof leftBehind>>} */ ([]));
  useEffect(() => {
    void leftBehind(me).then(setLeft);
  }, []);
  return left.map(
    ({ store, who, count }) => html`
      <p class="caution calm" key=${store.deviceId}>
        ${say('house-left', { who, count })}${' '}
        <button type="button" class="button" onClick=${() => exportUnsent(store)}>${say('house-export')}</button>
      </p>
    `,
  );
}
