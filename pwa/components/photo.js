// A picture of a colony, from this phone or from the server.
import { useEffect, useState } from 'preact/hooks';
import { addressOf } from '../signals/photos.js';
import { html } from './html.js';
import { say } from '../words/say.js';

/** @param {{row: import('../care/overlay.js').ShownRow, words: string}} props */
export function Photo({ row, words }) {
  const [address, setAddress] = useState('');
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    let made = '';
    void addressOf(row.id).then((found) => {
      made = found;
      setAddress(found);
    });
    return () => {
      if (made.startsWith('blob:')) URL.revokeObjectURL(made);
    };
  }, [row.id]);
  if (missing) {
    return html`
      <p class="photo-missing soft">${say('photo-elsewhere')}</p>
    `;
  }
  if (!address) {
    return html`
      <p class="photo-missing" aria-busy="true"></p>
    `;
  }
  return html`
    <img
      class="photo"
      src=${address}
      alt=${words}
      loading="lazy"
      width=${row.set.width_px}
      height=${row.set.height_px}
      onError=${() => setMissing(true)}
    />
  `;
}
