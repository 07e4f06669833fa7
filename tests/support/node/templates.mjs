// The html`…` templates of a module, as acorn finds them and as htm reads them.
import { parse } from 'acorn';
import { full } from 'acorn-walk';
import htm from 'htm';

/**
 * A template: where it stands, its strings, and where in the module each of its expressions begins and ends. What
 * stands between the braces counts, so a comment with a type before an expression belongs to it.
 * @typedef {{start: number, end: number, line: number, strings: string[], literals: Array<string | null>,
 *   slots: Array<{start: number, end: number, line: number}>}} Template
 */

/** Every template of a module, by its place; one inside another comes after it. @param {string} source */
export function templatesOf(source) {
  /** @type {Template[]} */
  const found = [];
  full(parse(source, { ecmaVersion: 'latest', sourceType: 'module', locations: true }), (/** @type {any} */ node) => {
    if (node.type !== 'TaggedTemplateExpression' || node.tag.name !== 'html') return;
    const { quasis, expressions } = node.quasi;
    found.push({
      start: node.start,
      end: node.end,
      line: node.loc.start.line,
      strings: quasis.map((/** @type {any} */ part) => part.value.cooked),
      literals: expressions.map((/** @type {any} */ each) => (each.type === 'Literal' ? each.value : null)),
      slots: expressions.map((/** @type {any} */ _, /** @type {number} */ i) => ({
        start: quasis[i].end + '${'.length,
        end: quasis[i + 1].start - '}'.length,
        line: quasis[i].loc.end.line,
      })),
    });
  });
  return found.sort((a, b) => a.start - b.start);
}

/**
 * What htm makes of a template: one node, or several beside each other.
 * @param {Template} template @param {unknown[]} values what stands in for its expressions
 * @param {(type: unknown, props: Record<string, unknown> | null, ...children: unknown[]) => unknown} element
 */
export function treeOf({ strings }, values, element) {
  return htm.call(element, Object.assign([...strings], { raw: strings }), ...values);
}
