import { shelf } from '../units';
import { LIGHT, PATH_LOOK, TEXT_COLOUR } from './palette';
import { SERIF } from './sizes';
import { digits } from './toPath';
import type { Drawing, Group, Mark, PathMark, StitchPattern } from './marks';

/**
 * An element of the drawing as it is written. The writer of files and the component on the page both draw this tree,
 * so they can't differ.
 */
export interface DrawnElement {
  readonly name: 'svg' | 'title' | 'desc' | 'defs' | 'pattern' | 'g' | 'path' | 'text';
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly DrawnElement[];
  readonly text?: string;
}

/** An edge that is lit, as by a row of a table that names it. */
export interface Lit {
  readonly piece: string;
  readonly edge: string;
}

export interface ElementOptions {
  /** Goes before every id, so that two drawings in one page stay apart. */
  readonly idPrefix?: string;
  readonly lit?: Lit | null;
}

export interface TitledOptions extends ElementOptions {
  readonly title: string;
  readonly description: string;
}

const NAMESPACE = 'http://www.w3.org/2000/svg';

/** A whole drawing that stands alone, in true size. */
export function svgElement(drawing: Drawing, options: TitledOptions): DrawnElement {
  const prefix = options.idPrefix ?? '';
  const [width, height] = [digits(drawing.width), digits(drawing.height)];
  const [title, description] = [`${prefix}title`, `${prefix}description`];
  return {
    name: 'svg',
    attributes: {
      xmlns: NAMESPACE,
      class: 'edgewise',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-labelledby': `${title} ${description}`,
    },
    children: [
      { name: 'title', attributes: { id: title }, children: [], text: options.title },
      { name: 'desc', attributes: { id: description }, children: [], text: options.description },
      ...bodyElements(drawing, options),
    ],
  };
}

/** The drawing's own elements, to stand inside any svg element. */
export function bodyElements(drawing: Drawing, options: ElementOptions = {}): DrawnElement[] {
  const prefix = options.idPrefix ?? '';
  const defs = drawing.patterns.map((pattern) => patternElement(pattern, prefix));
  const groups = drawing.groups.map((group) => groupElement(group, prefix, options.lit ?? null));
  return [
    {
      name: 'g',
      attributes: {
        class: 'drawing',
        fill: 'none',
        'font-family': SERIF,
        'stroke-linecap': 'round',
        'stroke-linejoin': 'round',
      },
      // Inside the group, so that the page's colours reach the stitches of a pattern too.
      children: [...(defs.length > 0 ? [{ name: 'defs' as const, attributes: {}, children: defs }] : []), ...groups],
    },
  ];
}

const kept = shelf<Group, DrawnElement>(1);

/** A group that is the same object as before is the same element as before. */
function groupElement(group: Group, prefix: string, lit: Lit | null): DrawnElement {
  return kept(group, [prefix, lit?.piece, lit?.edge], () => newElement(group, prefix, lit));
}

function newElement(group: Group, prefix: string, lit: Lit | null): DrawnElement {
  const { piece, edge } = group.data;
  const isLit = lit !== null && group.name === 'edge' && lit.piece === piece && lit.edge === edge;
  const data = Object.entries(group.data).map(([key, value]) => [`data-${key}`, value] as const);
  return {
    name: 'g',
    attributes: {
      id: prefix + group.id,
      class: isLit ? `${group.name} lit` : group.name,
      ...Object.fromEntries(data),
    },
    children: [
      ...group.marks.map((mark) => markElement(mark, prefix)),
      ...group.groups.map((inner) => groupElement(inner, prefix, lit)),
    ],
  };
}

function markElement(mark: Mark, prefix: string): DrawnElement {
  if (mark.kind === 'path') return pathElement(mark, prefix);
  const { x, y, size, anchor, role, rotate, text } = mark;
  return {
    name: 'text',
    attributes: {
      class: role,
      x: digits(x),
      y: digits(y),
      'font-size': digits(size),
      'text-anchor': anchor,
      fill: LIGHT[TEXT_COLOUR[role]],
      ...(role === 'edge-name' || role === 'start-word' ? { 'font-style': 'italic' } : {}),
      ...(rotate === undefined ? {} : { transform: `rotate(${digits(rotate)} ${digits(x)} ${digits(y)})` }),
    },
    children: [],
    text,
  };
}

function pathElement({ role, d, weight, pattern }: PathMark, prefix: string): DrawnElement {
  const look = PATH_LOOK[role];
  const fill = pattern === undefined ? look.fill && LIGHT[look.fill] : `url(#${prefix}${pattern})`;
  return {
    name: 'path',
    attributes: {
      class: pattern === undefined ? role : 'texture',
      d,
      ...(fill ? { fill } : {}),
      ...(look.stroke ? { stroke: LIGHT[look.stroke], 'stroke-width': digits(weight ?? look.weight) } : {}),
    },
    children: [],
  };
}

const keptPatterns = shelf<StitchPattern, DrawnElement>(1);

function patternElement(pattern: StitchPattern, prefix: string): DrawnElement {
  return keptPatterns(pattern, [prefix], () => ({
    name: 'pattern',
    attributes: {
      id: prefix + pattern.id,
      patternUnits: 'userSpaceOnUse',
      x: digits(pattern.x),
      y: digits(pattern.y),
      width: digits(pattern.width),
      height: digits(pattern.height),
    },
    children: pattern.marks.map((mark) => pathElement(mark, prefix)),
  }));
}
