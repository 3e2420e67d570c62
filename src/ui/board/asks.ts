import type { Asked } from '../../text';

/** What an element of the page may ask for, as the first word of its `data-asks`. */
const KINDS = new Set<string>([
  'length',
  'places',
  'wanted',
  'count',
  'stretch',
  'ratio',
  'total',
  'all-wanted',
  'first-row',
  'gaps',
  'free-edge',
  'corner',
  'choice',
  'section',
  'running',
  'after',
] satisfies Asked['of'][]);

/**
 * The number that an element asks the arithmetic of. `data-asks="ratio 3 1"` names its places itself; where it does not,
 * as in `data-asks="count"`, the element's place among those that ask for the same is meant.
 *
 * @returns null where the words ask for nothing
 */
export function askedBy(element: HTMLElement): Asked | null {
  const [of = '', ...numbers] = (element.dataset.asks ?? '').split(' ');
  if (!isKind(of)) return null;
  const [first = placeOf(element), second = 0] = numbers.map(Number);
  switch (of) {
    case 'total':
    case 'all-wanted':
    case 'first-row':
    case 'gaps':
    case 'free-edge':
      return { of };
    case 'corner':
      return { of, corner: first };
    case 'ratio':
      return { of, edge: first, ratio: second };
    case 'choice':
      return { of, choice: first };
    case 'section':
    case 'running':
    case 'after':
      return { of, section: first };
    default:
      return { of, edge: first };
  }
}

function isKind(of: string): of is Asked['of'] {
  return KINDS.has(of);
}

function placeOf(element: HTMLElement): number {
  const alike = element.ownerDocument.querySelectorAll(`[data-asks="${element.dataset.asks ?? ''}"]`);
  return [...alike].indexOf(element);
}
