// Formats what is JavaScript or a style sheet: node tests/support/node/format.mjs [--check] [FILE ...]
//
// Prettier lays out JavaScript, style sheets and the markup in html`…` templates. Three things are added to it:
// * htm's components (<${Sheet} …>…</${Sheet}>) stand in as elements of the same width, because their tags are
//   expressions to Prettier and an expression never closes a tag;
// * htm drops white space that holds a line break, so a space that matters must not become one. Each template is
//   parsed by htm before and after; a file whose tree would change is refused. Write such a space as ${' '};
// * a line begins one element.
//
// A file that was found well laid out is known by its content, as long as this program and what it uses are the same.
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import prettier from 'prettier';
import { digest, keep, placeOf, tools } from './kept.mjs';
import { templatesOf, treeOf } from './templates.mjs';

const WIDEST = 120;
const SCRIPT = { parser: 'babel', printWidth: WIDEST, singleQuote: true, htmlWhitespaceSensitivity: 'ignore' };
const SHEET = { parser: 'css', printWidth: WIDEST };
const TWO_ELEMENTS = /^\s*<[a-z$].*<[a-z$]/; // a line that begins with a tag stands in a template
const root = new URL('../../../', import.meta.url).pathname;
const OTHERS = ['vendor', 'node_modules'];

const check = process.argv.includes('--check');
const named = process.argv.slice(2).filter((word) => word !== '--check');
const files = named.length
  ? named.map((name) => resolve(name))
  : [...below(join(root, 'pwa')), ...below(join(root, 'tests'))];
const judges = digest(prettier.version, tools('format.mjs', 'templates.mjs', 'kept.mjs', 'package-lock.json'));
const known = wellLaidOut();
const good = new Set();
let wrong = 0;

for (const file of files) {
  const before = readFileSync(file, 'utf8');
  const name = digest(judges, file.replace(root, ''), before);
  if (known.has(name)) {
    good.add(name);
    continue;
  }
  const complaints = wrong;
  const after = await formatted(file, before);
  const hasTemplates = file.startsWith(join(root, 'pwa')) && file.endsWith('.js');
  const moved = hasTemplates && after !== before ? firstChangedTree(before, after) : 0;
  if (moved) complain(file, `line ${moved}: a space beside an element would be lost; write it as \${' '}`);
  else if (after !== before && check) complain(file, 'is not formatted; run: node tests/support/node/format.mjs');
  else if (after !== before) writeFileSync(file, after);
  after.split('\n').forEach((line, i) => {
    if (line.length > WIDEST) complain(file, `line ${i + 1} has ${line.length} characters, ${WIDEST} are allowed`);
    if (TWO_ELEMENTS.test(line)) complain(file, `line ${i + 1} begins two elements: give each a line of its own`);
  });
  if (after === before && wrong === complaints) good.add(name);
}
if (!named.length) keep('well-laid-out', [...good].join('\n'));
console.log(`${files.length} files, ${wrong} complaints`);
process.exitCode = wrong ? 1 : 0;

/** The names of contents that were found good. @returns {Set<string>} */
function wellLaidOut() {
  const place = placeOf('well-laid-out');
  return new Set(existsSync(place) ? readFileSync(place, 'utf8').split('\n') : []);
}

/** The files of a folder that are ours to lay out. @param {string} folder @returns {string[]} */
function below(folder) {
  return readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => !OTHERS.includes(name))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      if (entry.isDirectory()) return below(join(folder, entry.name));
      return /\.(js|mjs|css)$/.test(entry.name) ? [join(folder, entry.name)] : [];
    });
}

/** @param {string} file @param {string} source */
async function formatted(file, source) {
  if (file.endsWith('.css')) return prettier.format(source, SHEET);
  if (file.startsWith(join(root, 'tests/bench')) && file.endsWith('.js')) return expressions(source);
  const standing = source.replace(/<(\/?)\$\{([A-Za-z]+)\}/g, '<$1cc-$2');
  const laid = await prettier.format(standing, SCRIPT);
  return laid.replace(/<(\/?)cc-([A-Za-z]+)/g, '<$1${$2}');
}

/** Function expressions for a page, parted by lines of comment; none ends in a semicolon. @param {string} source */
async function expressions(source) {
  const parts = source.split(/^(\/\/ .*\n)/m).filter((part) => part.trim());
  const laid = parts.map(async (part) =>
    part.startsWith('// ') ? part : (await prettier.format(part, SCRIPT)).replace(/;\n$/, '\n'),
  );
  return (await Promise.all(laid)).join('');
}

/** The line of the first template whose tree differs, or 0. @param {string} before @param {string} after */
function firstChangedTree(before, after) {
  const [olds, news] = [trees(before), trees(after)];
  const changed = olds.find(({ tree }, i) => tree !== news[i]?.tree);
  return changed?.line ?? 0;
}

/** Every html template of a module as htm sees it; an expression counts by its place. @param {string} source */
function trees(source) {
  return templatesOf(source).map((template) => {
    const values = template.literals.map((literal) => literal ?? '#');
    return { line: template.line, tree: JSON.stringify(treeOf(template, values, element)) };
  });
}

/** @param {unknown} type @param {unknown} props @param {...unknown} children neighbouring texts are one */
function element(type, props, ...children) {
  /** @type {unknown[]} */
  const joined = [];
  for (const child of children) {
    const last = joined.at(-1);
    if (typeof child === 'string' && typeof last === 'string') joined[joined.length - 1] = last + child;
    else joined.push(child);
  }
  return { type, props, children: joined };
}

/** @param {string} file @param {string} what */
function complain(file, what) {
  wrong += 1;
  console.error(`${file.replace(root, '')}: ${what}`);
}
