// Which language a phone speaks: as chosen on it, else the first of its own that there is. Pure; the worker asks, too.

/** Messages are written in this one; what another lacks is said in it. */
export const SOURCE = 'en';
/** Written from right to left; the last is the pseudo-language. */
const RIGHT_TO_LEFT = /^(ar|ckb|dv|fa|he|ps|sd|ug|ur|yi)\b|-XB$/;

/** Accented, longer and mirrored: tests choose it, and it is offered to nobody. Server: languages/pseudo.py. */
const PSEUDO = 'en-XB';

/** @param {string} tag of BCP 47 */
export const bare = (tag) => tag.split('-')[0] ?? tag;

/**
 * The language to speak.
 * @param {string | null | undefined} chosen on this phone @param {readonly string[]} wanted the phone's own, best first
 * @param {readonly string[]} there
 */
export function languageOf(chosen, wanted, there) {
  if (chosen && (there.includes(chosen) || chosen === PSEUDO)) return chosen;
  for (const tag of wanted) {
    const found = there.find((each) => each === tag) ?? there.find((each) => each === bare(tag));
    if (found) return found;
  }
  return SOURCE;
}

/**
 * How numbers and days are written: as the phone's own region does in this language.
 * @param {string} language @param {readonly string[]} wanted
 */
export const localeOf = (language, wanted) => wanted.find((tag) => bare(tag) === bare(language)) ?? language;

/** @param {string} language */
export const directionOf = (language) => (RIGHT_TO_LEFT.test(language) ? 'rtl' : 'ltr');

/** Where the worker reads what was chosen on the phone: it sees no other storage at once. */
export const CHOICE = { cache: 'language', address: '/language' };

/** Where a part of a language is: `first` is there before anything is said. @param {string} language
 * @param {string} build @param {string} part as the server parts them, languages/phone_parts.py
 */
export const messagesAddress = (language, build, part) => `/static/${build}/words/${language}/${part}.ftl`;
