/**
 * Builds XML 1.0 documents. Everything is escaped here and nowhere else; letters that XML cannot hold at all are
 * left out. Names are ours, never a stranger's, so a wrong one throws.
 */

export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number | boolean | undefined>>;
  readonly children: readonly XmlNode[];
}
export type XmlNode = XmlElement | string;

/** NCName of Namespaces in XML, kept to ASCII. */
export const NC_NAME = /^[A-Za-z_][A-Za-z0-9._-]*$/;
const NAME = /^[A-Za-z_][A-Za-z0-9._-]*(:[A-Za-z_][A-Za-z0-9._-]*)?$/;

/** Control letters, halves of surrogate pairs, and the two that are no letters. */
const FORBIDDEN = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu;

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\t': '&#9;',
  '\n': '&#10;',
  '\r': '&#13;',
};

const escaped = (text: string, marks: RegExp) =>
  text.replace(FORBIDDEN, '').replace(marks, (mark) => ENTITIES[mark]!);

/** el('p', { class: 'note' }, 'a < b') */
export function el(
  name: string,
  attributes: XmlElement['attributes'] = {},
  ...children: readonly XmlNode[]
): XmlElement {
  for (const used of [name, ...Object.keys(attributes)])
    if (!NAME.test(used)) throw new Error(`no name for XML: ${used}`);
  return { name, attributes, children };
}

function write(node: XmlNode): string {
  if (typeof node === 'string') return escaped(node, /[&<>\r]/g);
  const attributes = Object.entries(node.attributes)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${escaped(String(value), /[&<>"\t\n\r]/g)}"`)
    .join('');
  const inner = node.children.map(write).join('');
  return inner === '' ? `<${node.name}${attributes}/>` : `<${node.name}${attributes}>${inner}</${node.name}>`;
}

/** The document, in UTF-8. */
export const writeXml = (root: XmlElement): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${write(root)}\n`;
