// A picture of a colony, from this phone or from the server.
import { useEffect, useState } from 'preact/hooks';
import { addressOf } from '../signals/photos.js';
import { html } from './html.js';
import { say } from '../words/say.js';

/**
 * `size`: in px, where the record that says it is at hand.
 * @param {{id: string, words: string, size?: {width_px?: number | null, height_px?: number | null}}} props
 */
export function Photo({ id, words, size = {} }) {
  const [address, setAddress] = useState('');
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    let made = '';
    let left = false;
    const free = () => made.startsWith('blob:') && URL.revokeObjectURL(made);
    setAddress('');
    setMissing(false);
    void addressOf(id).then((found) => {
      made = found;
      if (left) free();
      else setAddress(found);
    });
    return () => {
      left = true;
      free();
    };
  }, [id]);
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
      width=${size.width_px}
      height=${size.height_px}
      onError=${() => setMissing(true)}
    />
  `;
}
