// Everything that the app says, by the ids of its messages (Fluent, docs/languages.md). Nothing is said before `learn`.
import { FluentBundle, FluentNumber, FluentResource } from '../vendor/fluent/index.js';
import { SOURCE } from './language.js';
import { apart, degrees, volume } from './measures.js';
import { rounded, speak, weekDay } from './shown.js';
import { voice } from './voice.js';

/**
 * @typedef {import('../messages.d.ts').Messages} Messages
 * @typedef {import('../messages.d.ts').Group} Group what the ids of some messages begin with; codes follow
 */

/** Where the next message begins: further lines of one are indented. */
const NEXT = /\n(?=[a-z-])/;
/** What a message says by another one. */
const NAMED = /\{\s*([a-z][\w-]*)\s*[.}]/g;
const PARAMETER = /\$([a-zA-Z][\w-]*)/g;
/** What an argument that is missing shows as. */
const MISSING = '?';

/** The text of each message, until it is first said: reading all of them would take longer than a start may. */
let sources = /** @type {Map<string, string>} */ (new Map());
let bundle = /** @type {FluentBundle | undefined} */ (undefined);
/** What each message is told, by its id. @type {Map<string, Record<string, string>>} */
let asked = new Map();

/**
 * Speak from now on by these messages.
 * @param {string} text of one language in Fluent, without comments @param {string} [locale] how it writes numbers
 * @param {boolean} [isolate] whether names stand apart from the direction of their sentence
 */
export function learn(text, locale = SOURCE, isolate = false) {
  speak(locale);
  voice.language = locale;
  sources = new Map();
  bundle = new FluentBundle(locale, {
    useIsolating: isolate,
    functions: {
      DEGREES: ([of], { unit }) => degrees(Number(of), unit?.valueOf() !== 'none'),
      DEGREES_APART: ([of]) => apart(Number(of)),
      VOLUME: ([of]) => volume(Number(of)),
    },
  });
  asked = new Map();
  learnMore(text);
}

/** Know more messages of the same language. @param {string} text */
export function learnMore(text) {
  for (const source of text.split(NEXT)) sources.set(source.slice(0, source.search(/[ =]/)), source);
  for (const id of sources.keys()) if (id.startsWith('-')) read(id);
}

/** Let the bundle know a message, and those that it names. @param {string} id */
function read(id) {
  const source = sources.get(id);
  if (!source || !bundle) return;
  sources.delete(id);
  bundle.addResource(new FluentResource(source));
  asked.set(id, Object.fromEntries(Array.from(source.matchAll(PARAMETER), ([, name]) => [name ?? '', MISSING])));
  for (const [, named] of source.matchAll(NAMED)) read(named ?? '');
}

/** @param {string} path an id, or an id, a dot and the name of an attribute */
function patternOf(path) {
  const [id = '', attribute] = path.split('.');
  read(id);
  const message = bundle?.getMessage(id);
  return (attribute === undefined ? message?.value : message?.attributes[attribute]) ?? null;
}

const ISO_DAY = /^\d{4}-\d\d-\d\d$/;

/**
 * A figure rounded first, so that the plural form fits what is shown; a day in words.
 * @param {unknown} value
 */
function shown(value) {
  if (typeof value === 'number') return new FluentNumber(...rounded(value));
  if (typeof value === 'string' && ISO_DAY.test(value)) return weekDay(value);
  return typeof value === 'boolean' ? String(value) : value;
}

/** @param {string} path @param {Record<string, unknown>} args @returns {string | null} */
function format(path, args) {
  const pattern = patternOf(path);
  if (pattern === null || !bundle) return null;
  const told = Object.fromEntries(Object.entries(args).map(([name, value]) => [name, shown(value)]));
  return bundle.formatPattern(pattern, { ...asked.get(path.split('.')[0] ?? ''), ...told }, []);
}

/**
 * A message in words.
 * @template {keyof Messages} I
 * @param {I} id @param {Messages[I] extends null ? [] : [Messages[I]]} args
 * @returns {string} the id itself where there is no such message
 */
export const say = (id, ...args) => format(id, args[0] ?? {}) ?? id;

/** A code as it ends an id. @param {string} code */
const ending = (code) =>
  code
    .replaceAll(/[^a-zA-Z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '')
    .toLowerCase();

/** @param {Group} group @param {string} code */
const pathOf = (group, code) => `${group}-${ending(code)}`;

/** Where the words for a code are, or those of its attribute. @param {Group} group @param {string} code
 * @param {string} attribute
 */
const pathTo = (group, code, attribute) => pathOf(group, code) + (attribute && `.${attribute}`);

/** Whether there are words for a code. @param {Group} group @param {string | null | undefined} code
 * @param {string} [attribute]
 */
export const isSaid = (group, code, attribute = '') =>
  Boolean(code) && patternOf(pathTo(group, String(code), attribute)) !== null;

/**
 * The words for a code; the code itself where there are none, as of a newer server.
 * @param {Group} group @param {string} code @param {Record<string, unknown>} [args] @param {string} [attribute]
 * @returns {string}
 */
export function sayOf(group, code, args = {}, attribute = '') {
  const told = Object.fromEntries(Object.entries(args).map(([name, value]) => [name, worded(name, value)]));
  return format(pathTo(group, code, attribute), told) ?? code.replaceAll('_', ' ');
}

/** Arguments that are codes themselves, with the attribute of their words. @type {Record<string, [Group, string?]>} */
const CODES = { need: ['need'], fault: ['fault', 'inside'], food: ['food'] };

/** @param {string} name of an argument @param {unknown} value @returns {unknown} */
function worded(name, value) {
  if (typeof value !== 'string') return value;
  if (name === 'source' && value === 'common practice') return say('source-common-practice');
  const [group, attribute] = CODES[name] ?? [];
  return group && isSaid(group, value) ? sayOf(group, value, {}, attribute) : value;
}

/**
 * A word and what it stands for.
 * @param {string} label @param {string} value @param {string} [second] what is said of it besides
 */
export const labelled = (label, value, second) =>
  second === undefined
    ? say('part-labelled', { label, value })
    : say('part-labelled-twice', { label, first: value, second });

/** The words for a code, or nothing. @param {Group} group @param {string | null | undefined} code
 * @param {string} [attribute]
 */
export const sayIf = (group, code, attribute = '') =>
  code && isSaid(group, code, attribute) ? sayOf(group, code, {}, attribute) : '';

/**
 * Codes with their words, to choose from.
 * @template {string} C
 * @param {Group} group @param {readonly C[]} codes @returns {Array<[C, string]>}
 */
export const choicesOf = (group, codes) => codes.map((code) => [code, sayOf(group, code)]);

voice.say = (id) => format(id, {}) ?? id;
