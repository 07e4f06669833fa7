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
  const { build = '' } = document.body.dataset;
  const address = messagesAddress(languageOf(tag, navigator.languages, languagesThere), build);
  const response = await fetch(address).catch(() => undefined);
  if (!response?.ok) throw new Error(say('part-needs-server'));
  if (tag) localStorage.setItem('language', tag);
  else localStorage.removeItem('language');
  if (!('caches' in globalThis)) return; // then there is no worker either
  const shell = `shell-${build}`;
  if (await caches.has(shell)) await (await caches.open(shell)).put(address, response);
  const choice = await caches.open(CHOICE.cache);
  if (tag) await choice.put(CHOICE.address, new Response(tag));
  else await choice.delete(CHOICE.address);
}
