// Formats the phone's modules: node tests/support/node/format.mjs [--check] [FILE ...]
//
// Prettier lays out JavaScript and the markup in html`…` templates. Two things it cannot know are added here:
// * htm's components (<${Sheet} …>…</${Sheet}>) stand in as elements of the same width, because their tags are
//   expressions to Prettier and an expression never closes a tag;
// * htm drops white space that holds a line break, so a space that matters must not become one. Each template is
//   parsed by htm before and after; a file whose tree would change is refused. Write such a space as ${' '}.
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'acorn';
import { full } from 'acorn-walk';
import htm from 'htm';
import prettier from 'prettier';

const STYLE = { parser: 'babel', printWidth: 120, singleQuote: true, htmlWhitespaceSensitivity: 'ignore' };
const WIDEST = 120;
const root = new URL('../../../pwa/', import.meta.url).pathname;

const check = process.argv.includes('--check');
const named = process.argv.slice(2).filter((word) => word !== '--check');
const files = named.length ? named : modulesBelow(root);
let wrong = 0;

for (const file of files) {
  const before = readFileSync(file, 'utf8');
  const after = await formatted(before);
  const moved = firstChangedTree(before, after);
  if (moved) complain(file, `line ${moved}: a space beside an element would be lost; write it as \${' '}`);
  else if (after !== before && check) complain(file, 'is not formatted; run: node tests/support/node/format.mjs');
  else if (after !== before) writeFileSync(file, after);
  after.split('\n').forEach((line, i) => {
    if (line.length > WIDEST) complain(file, `line ${i + 1} has ${line.length} characters, ${WIDEST} are allowed`);
  });
}
console.log(`${files.length} modules, ${wrong} complaints`);
process.exitCode = wrong ? 1 : 0;

/** @param {string} folder */
function modulesBelow(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.js') && !name.startsWith('vendor'))
    .sort()
    .map((name) => join(folder, name));
}

/** @param {string} source */
async function formatted(source) {
  const standing = source.replace(/<(\/?)\$\{([A-Za-z]+)\}/g, '<$1cc-$2');
  const laid = await prettier.format(standing, STYLE);
  return laid.replace(/<(\/?)cc-([A-Za-z]+)/g, '<$1${$2}');
}

/** The line of the first template whose tree differs, or 0. @param {string} before @param {string} after */
function firstChangedTree(before, after) {
  const [olds, news] = [trees(before), trees(after)];
  const changed = olds.find(({ tree }, i) => tree !== news[i]?.tree);
  return changed?.line ?? 0;
}

/** Every html template of a module as htm sees it; an expression counts by its place. @param {string} source */
function trees(source) {
  /** @type {Array<{line: number, start: number, tree: string}>} */
  const found = [];
  full(parse(source, { ecmaVersion: 'latest', sourceType: 'module', locations: true }), (/** @type {any} */ node) => {
    if (node.type !== 'TaggedTemplateExpression' || node.tag.name !== 'html') return;
    const strings = node.quasi.quasis.map((/** @type {any} */ part) => part.value.cooked);
    const values = node.quasi.expressions.map((/** @type {any} */ each) => (each.type === 'Literal' ? each.value : '#'));
    const tree = htm.call(element, Object.assign(strings, { raw: strings }), ...values);
    found.push({ line: node.loc.start.line, start: node.start, tree: JSON.stringify(tree) });
  });
  return found.sort((a, b) => a.start - b.start);
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
  console.error(`${file.replace(root, 'pwa/')}: ${what}`);
}
