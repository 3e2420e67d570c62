import { SaxesParser } from 'saxes';

export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: XmlElement[];
  text: string;
}

/**
 * Reads a whole file by saxes, a strict parser by others (XML 1.0 with namespaces): the first thing that is not well
 * formed is thrown. Every element must lie in the namespace of SVG.
 */
export function readStrictXml(text: string): XmlElement {
  const parser = new SaxesParser({ xmlns: true });
  const open: XmlElement[] = [];
  const roots: XmlElement[] = [];
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('doctype', () => {
    throw new Error('a document type');
  });
  parser.on('processinginstruction', ({ target }) => {
    throw new Error(`an instruction to ${target}`);
  });
  parser.on('opentag', ({ name, uri, attributes }) => {
    if (uri !== 'http://www.w3.org/2000/svg') throw new Error(`${name} lies in the namespace "${uri}"`);
    const values = Object.entries(attributes).map(([key, { value }]) => [key, value]);
    const element: XmlElement = { name, attributes: Object.fromEntries(values), children: [], text: '' };
    open.at(-1)?.children.push(element);
    if (open.length === 0) roots.push(element);
    open.push(element);
  });
  parser.on('text', (words) => {
    const element = open.at(-1);
    if (element) element.text += words;
  });
  parser.on('closetag', () => {
    open.pop();
  });
  parser.write(text).close();
  const [root] = roots;
  if (!root) throw new Error('no element at all');
  return root;
}

/** An element and all that stand in it. */
export function allOf(element: XmlElement): XmlElement[] {
  return [element, ...element.children.flatMap(allOf)];
}

/** What of a drawing should not leave the page: scripts, looks by style, pictures, anything fetched; [] when it is clean. */
export function foreignIn(root: XmlElement): string[] {
  const plain = ['svg', 'title', 'desc', 'g', 'path', 'text'];
  return allOf(root).flatMap(({ name, attributes }) => [
    ...(plain.includes(name) ? [] : [name]),
    ...Object.entries(attributes)
      .filter(([key]) => key !== 'xmlns')
      .filter(([key, value]) => /^(on|style|href|src|xlink)/i.test(key) || /url\(|^\s*(\w+:)?\/\//i.test(value))
      .map(([key, value]) => `${key}="${value}"`),
  ]);
}

/** Strokes of the paths of some classes: each begins with a move. */
export function strokesOf(elements: readonly XmlElement[], classes: readonly string[]): number {
  return elements
    .filter(({ name, attributes }) => name === 'path' && classes.includes(attributes.class ?? ''))
    .reduce((sum, { attributes }) => sum + (attributes.d?.match(/[Mm]/g)?.length ?? 0), 0);
}
