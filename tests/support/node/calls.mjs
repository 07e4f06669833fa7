// A module of the phone as TypeScript has to see it: each component of a template is a call, so that its props count.
import { templatesOf, treeOf } from './templates.mjs';

/** @typedef {import('./templates.mjs').Template} Template */
/** @typedef {{type: unknown, props: Record<string, unknown>, children: unknown[]}} Element */

const OF_PREACT = ['key', 'ref'];
/** What a call needs where no prop is given: the component may have none, or only such as may be left out. */
export const DECLARED = 'declare function withoutProps(component: (props: {}) => unknown): unknown;\n';

/**
 * `<${Icon} name="add" />` becomes `Icon({name: "add"})`, what stands within a component its `children`. The rest of
 * the module stays as it is, and on its line.
 * @param {string} source
 */
export function withCalls(source) {
  const templates = templatesOf(source);
  let text = '';
  let line = 1;
  putPart(0, source.length);
  return text;

  /** @param {string} piece */
  function write(piece) {
    text += piece;
    line += linesIn(piece);
  }

  /** @param {number} wanted the line of the module that what follows stands on */
  function reach(wanted) {
    write('\n'.repeat(Math.max(0, wanted - line)));
  }

  /** A part of the module with the templates in it. @param {number} start @param {number} end */
  function putPart(start, end) {
    let at = start;
    for (const template of templates) {
      if (template.start < at || template.end > end) continue;
      write(source.slice(at, template.start));
      putTemplate(template);
      at = template.end;
    }
    write(source.slice(at, end));
  }

  /** @param {Template} template */
  function putTemplate(template) {
    const standing = template.slots.map((_, i) => new Slot(i));
    const tree = treeOf(template, standing, (type, props, ...children) => ({ type, props: props ?? {}, children }));
    write('html`${[');
    putList([tree].flat(), putNode);
    reach(template.line + linesIn(source.slice(template.start, template.end)));
    write(']}`');

    /** @param {unknown} node an element, or what stands beside elements */
    function putNode(node) {
      if (!isElement(node)) return putValue(node);
      const component = node.type instanceof Slot;
      const names = Object.keys(node.props);
      const aside = names.filter((name) => !component || OF_PREACT.includes(name));
      write('html`${[');
      putList(aside, (name) => putValue(node.props[name]));
      if (component) {
        const props = names.filter((name) => !aside.includes(name));
        putCall(node, props);
      } else {
        putList(node.children, putNode);
      }
      write(']}`');
    }

    /** @param {Element} component @param {string[]} names of its props */
    function putCall({ type, props, children }, names) {
      const given = names.length + children.length > 0;
      if (!given) write('withoutProps(');
      putValue(type);
      if (!given) return write(')');
      write('({');
      putList(names, (name) => {
        write(name.startsWith('...') ? '...' : `${/^\w+$/.test(name) ? name : JSON.stringify(name)}: `);
        putValue(props[name]);
      });
      if (children.length) {
        write('children: [');
        putList(children, putNode);
        write(']');
      }
      write('})');
    }

    /** @param {unknown} value an expression, a text with or without expressions in it, or true */
    function putValue(value) {
      if (value instanceof Slot) return putSlot(value.place);
      if (typeof value !== 'string') return write(String(value));
      value.split(Slot.MARK).forEach((part, i) => {
        if (i) write(' + ');
        if (i % 2) putSlot(Number(part));
        else write(JSON.stringify(part));
      });
    }

    /** @param {number} place */
    function putSlot(place) {
      const slot = template.slots[place];
      if (!slot) throw new Error(`the template of line ${template.line} has no expression ${place}`);
      reach(slot.line);
      const before = source.slice(slot.start, slot.end);
      const plain = /^\w+$/.test(before);
      if (!plain) write('(');
      putPart(slot.start, slot.end);
      if (!plain) write(')');
    }
  }

  /** @template Item @param {Item[]} items @param {(item: Item) => void} put */
  function putList(items, put) {
    for (const item of items) {
      put(item);
      write(', ');
    }
  }
}

/** Stands in for an expression: htm copies a spread's own names to the props, and joins a text's parts. */
class Slot {
  static MARK = '\0';

  /** @param {number} place */
  constructor(place) {
    Object.defineProperty(this, 'place', { value: place });
    Object.defineProperty(this, `...${place}`, { value: this, enumerable: true });
  }

  toString() {
    return `${Slot.MARK}${this.place}${Slot.MARK}`;
  }
}

/** @param {unknown} node @returns {node is Element} */
function isElement(node) {
  return typeof node === 'object' && node !== null && 'children' in node;
}

/** @param {string} text */
function linesIn(text) {
  return text.split('\n').length - 1;
}
