// The messages of this phone's language: the first part is asked for before anything else, the others with what says
// them.
import { directionOf, languageOf, localeOf, messagesAddress, SOURCE } from './language.js';
import { learn, learnMore } from './say.js';

const { build = '', languages = SOURCE } = document.body.dataset;
/** What can be chosen. */
export const languagesThere = languages.split(' ');
/** For somebody else: a sheet is printed in the language of whoever gets it. */
const asked = new URLSearchParams(location.search).get('in');
/** What this phone speaks. */
export const phoneLanguage = languageOf(asked ?? localStorage.getItem('language'), navigator.languages, languagesThere);

const direction = directionOf(phoneLanguage);
document.documentElement.lang = phoneLanguage;
document.documentElement.dir = direction;

/** @param {string} part @param {string} [language] @returns {Promise<string | undefined>} */
async function fetchPart(part, language = phoneLanguage) {
  const response = await fetch(messagesAddress(language, build, part)).catch(() => undefined);
  return response?.ok ? response.text() : undefined;
}

/**
 * Without a connection a language that was never fetched gives way to one that is kept.
 * @returns {Promise<string>} what is spoken
 */
async function begin() {
  for (const each of [phoneLanguage, ...languagesThere.filter((other) => other !== phoneLanguage)]) {
    const text = await fetchPart('first', each);
    if (text !== undefined) {
      learn(text, localeOf(phoneLanguage, navigator.languages), direction === 'rtl');
      return each;
    }
  }
  throw new Error(`No messages came: ${languages}`);
}

/** Settled as soon as something can be said. */
export const spoken = begin();
spoken.catch(() => undefined); // awaited by the start

/** @type {Map<string, Promise<void>>} */
const heard = new Map();

/**
 * Know the messages of another part; they are asked for once.
 * @param {'catalogue' | 'screens' | 'charts' | 'counting' | 'online'} part
 */
export function hear(part) {
  const found = heard.get(part) ?? fetchMore(part);
  heard.set(part, found);
  found.catch(() => heard.delete(part));
  return found;
}

/** @param {string} part */
async function fetchMore(part) {
  const early = fetchPart(part);
  const language = await spoken;
  const text = await (language === phoneLanguage ? early : fetchPart(part, language));
  if (text === undefined) throw new Error(`No messages came: ${part}`);
  learnMore(text);
}
