// The language that is chosen on a phone: kept for the page, for the worker, and with its messages for a day without a
// connection.
import { say } from './say.js';
import { CHOICE, languageOf, messagesAddress } from './language.js';
import { languagesThere } from './fetched.js';

/**
 * Speak this language from the next start on.
 * @param {string} tag empty for the phone's own
 * @returns {Promise<void>} rejects, and leaves it as it was, where its messages cannot be fetched
 */
export async function keepLanguage(tag) {
  const { build = '', words = '' } = document.body.dataset;
  const language = languageOf(tag, navigator.languages, languagesThere);
  const parts = words.split(' ').map((part) => messagesAddress(language, build, part));
  const answers = await Promise.all(parts.map((address) => fetch(address).catch(() => undefined)));
  if (!answers.every((answer) => answer?.ok)) throw new Error(say('part-needs-server'));
  if (tag) localStorage.setItem('language', tag);
  else localStorage.removeItem('language');
  if (!('caches' in globalThis)) return; // then there is no worker either
  const shell = `shell-${build}`;
  if (await caches.has(shell)) {
    const cache = await caches.open(shell);
    await Promise.all(answers.map((answer, at) => answer && cache.put(parts[at] ?? '', answer)));
  }
  const choice = await caches.open(CHOICE.cache);
  if (tag) await choice.put(CHOICE.address, new Response(tag));
  else await choice.delete(CHOICE.address);
}
