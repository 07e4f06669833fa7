// The messages of this phone's language, asked for before anything else.
import { directionOf, languageOf, localeOf, messagesAddress, SOURCE } from './language.js';

const { build = '', languages = SOURCE } = document.body.dataset;
/** What can be chosen. */
export const languagesThere = languages.split(' ');
/** What this phone speaks. */
export const phoneLanguage = languageOf(localStorage.getItem('language'), navigator.languages, languagesThere);
/** How it writes numbers and days. */
export const phoneLocale = localeOf(phoneLanguage, navigator.languages);

document.documentElement.lang = phoneLanguage;
document.documentElement.dir = directionOf(phoneLanguage);

/**
 * Without a connection a language that was never fetched gives way to one that is kept.
 * @returns {Promise<string>}
 */
async function fetchMessages() {
  for (const each of [phoneLanguage, ...languagesThere.filter((other) => other !== phoneLanguage)]) {
    const response = await fetch(messagesAddress(each, build)).catch(() => undefined);
    if (response?.ok) return response.text();
  }
  throw new Error(`No messages came: ${languages}`);
}

/** Their text. @type {Promise<string>} */
export const messages = fetchMessages();
messages.catch(() => undefined); // awaited by the start
