// Reading aloud, where the phone has a voice (Web Speech API): hands are busy at the shelf.
import { useEffect, useState } from 'preact/hooks';
import { html } from './html.js';
import { phoneLanguage } from '../words/fetched.js';
import { say } from '../words/say.js';

/** Whether this phone can speak at all. */
const canSpeak = () => 'speechSynthesis' in globalThis && 'SpeechSynthesisUtterance' in globalThis;

/**
 * A button that reads these sentences one after the other, and stops when it is pressed again or left.
 * @param {{sentences: string[]}} props
 */
export function ReadAloud({ sentences }) {
  const [speaking, setSpeaking] = useState(false);
  useEffect(() => () => (canSpeak() ? speechSynthesis.cancel() : undefined), []);
  if (!canSpeak() || !sentences.length) return null;
  const toggle = () => {
    speechSynthesis.cancel();
    if (speaking) return setSpeaking(false);
    const spoken = sentences.map((sentence) => new SpeechSynthesisUtterance(sentence));
    for (const each of spoken) each.lang = phoneLanguage;
    const last = /** @type {SpeechSynthesisUtterance} */ (spoken.at(-1));
    last.onend = () => setSpeaking(false);
    for (const each of spoken) {
      each.onerror = () => setSpeaking(false);
      speechSynthesis.speak(each);
    }
    return setSpeaking(true);
  };
  return html`
    <button type="button" class="button quiet" aria-pressed=${speaking} onClick=${toggle}>
      ${speaking ? say('stand-in-quiet') : say('stand-in-read-aloud')}
    </button>
  `;
}
