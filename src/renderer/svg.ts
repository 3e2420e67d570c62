import { bodyElements, svgElement, type DrawnElement, type TitledOptions } from './elements';
import type { Drawing } from './marks';

/** The drawing as a whole SVG file: strict XML that stands alone, with no script and nothing fetched. */
export function renderSvg(drawing: Drawing, options: TitledOptions): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${writeElement(svgElement(drawing, options))}\n`;
}

/** The drawing's elements alone, to be put into another SVG. */
export function renderSvgBody(drawing: Drawing, options: { readonly idPrefix?: string } = {}): string {
  return bodyElements(drawing, options).map(writeElement).join('\n');
}

/** An element to a line, so that two drawings can be compared line by line. */
export function writeElement({ name, attributes, children, text }: DrawnElement): string {
  const written = Object.entries(attributes).map(
    ([key, value]) => ` ${key}="${escaped(value).replaceAll('"', '&quot;')}"`,
  );
  const inner = children.length > 0 ? `\n${children.map(writeElement).join('\n')}\n` : escaped(text ?? '');
  return `<${name}${written.join('')}>${inner}</${name}>`;
}

function escaped(text: string): string {
  return withoutControls(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** XML 1.0 (section 2.2) has no place for most control characters and for halves of surrogate pairs. */
function withoutControls(text: string): string {
  // Path data and nearly every name are plain: nothing to look for.
  if (!/[^ -~]/.test(text)) return text;
  let clean = '';
  for (const letter of text) {
    const code = letter.codePointAt(0)!;
    const allowed = code === 9 || code === 10 || code === 13 || (code >= 0x20 && code < 0xd800) || code >= 0xe000;
    if (allowed && code !== 0xfffe && code !== 0xffff) clean += letter;
  }
  return clean;
}
