import { nearest } from './nearest';
import { placeOf, type Key } from './place';
import type { UnknownField } from './problems';
import { designSchema, type RawDesign } from './schema';

/** As much of a schema as is needed to walk a document beside it. */
interface Node {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Node>>;
  readonly item?: Node;
  readonly wrapped?: Node;
  readonly pipe?: readonly unknown[];
  readonly key?: string;
  readonly options?: readonly unknown[];
  readonly literal?: unknown;
}

function own(value: object, key: string): unknown {
  return Object.hasOwn(value, key) ? (value as Record<string, unknown>)[key] : undefined;
}

/** The schema that holds for `value`: behind a wrapper, behind a first look, or the variant that its key settles. */
function settled(node: Node, value: object): Node {
  if (node.wrapped) return settled(node.wrapped, value);
  const { key, options, pipe } = node;
  if (node.type === 'custom' && pipe) return settled(pipe.at(-1) as Node, value);
  if (key === undefined || options === undefined) return node;
  const fits = ({ entries }: Node) => {
    const choice = entries?.[key];
    return (choice?.wrapped ?? choice)?.literal === own(value, key);
  };
  return (options as readonly Node[]).find(fits) ?? node;
}

/**
 * Every field of a document of the right shape that this version does not know, with the known field it resembles.
 * What stands inside an unknown field is not looked at.
 */
export function findUnknown(raw: RawDesign): UnknownField[] {
  const fields: UnknownField[] = [];
  const walk = (node: Node, value: unknown, keys: readonly Key[]): void => {
    if (typeof value !== 'object' || value === null) return;
    const { entries, item } = settled(node, value);
    if (Array.isArray(value)) {
      if (item) value.forEach((entry, i) => walk(item, entry, [...keys, i]));
      return;
    }
    if (!entries) return;
    for (const [key, inner] of Object.entries(value)) {
      const known = Object.hasOwn(entries, key) ? entries[key] : undefined;
      if (known) walk(known, inner, [...keys, key]);
      else {
        const free = Object.keys(entries).filter((name) => !Object.hasOwn(value, name));
        fields.push({ at: placeOf(raw, [...keys, key]), nearest: nearest(key, free) });
      }
    }
  };
  walk(designSchema, raw, []);
  return fields;
}
