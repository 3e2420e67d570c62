import * as v from 'valibot';
import { nearest } from './nearest';
import { placeOf, type Key } from './place';
import { DesignError, type ListOf, type Problem } from './problems';
import { designSchema, type RawDesign } from './schema';

type Issue = v.InferIssue<typeof designSchema> | v.BaseIssue<unknown>;

const EXPECTED = {
  string: 'text',
  number: 'number',
  boolean: 'yes-no',
  array: 'list',
  strict_tuple: 'list',
  loose_object: 'object',
  variant: 'object',
  custom: 'object',
} as const;

const LISTS: readonly string[] = ['pieces', 'outline', 'steps', 'pickups', 'along', 'gauges'] satisfies ListOf[];

function isList(key: unknown): key is ListOf {
  return typeof key === 'string' && LISTS.includes(key);
}

/** The choices as the schema library writes them: `("a" | "b")`, or `"a"` alone. */
function optionsOf(expected: string): (string | number)[] {
  const words = expected.match(/"[^"]*"|[\d.]+/g) ?? [];
  return words.map((word) => JSON.parse(word) as string | number);
}

/** Other words of the trade for what a document says in its own (common practice, most of them from the UK). */
const SYNONYMS: ReadonlyMap<string, string> = new Map([
  ['cast-off', 'bound-off'],
  ['castoff', 'bound-off'],
  ['bind-off', 'bound-off'],
  ['bindoff', 'bound-off'],
  ['held', 'live'],
  ['waste-yarn', 'provisional'],
  ['chain', 'slipped'],
  ['slip', 'slipped'],
  ['stocking-stitch', 'stockinette'],
  ['st-st', 'stockinette'],
  ['moss', 'seed'],
  ['moss-stitch', 'seed'],
  ['ribbing', 'rib'],
]);

/** The option that a word stands for or is like, or null. */
function optionMeant(word: unknown, options: readonly string[]): string | null {
  if (typeof word !== 'string') return null;
  const other = SYNONYMS.get(
    word
      .trim()
      .toLowerCase()
      .replace(/[\s_]+/g, '-'),
  );
  return other !== undefined && options.includes(other) ? other : nearest(word, options);
}

/** What an issue of the schema library means, with its place in `raw`. */
function problemOf(raw: unknown, issue: Issue): Problem {
  const keys = (issue.path ?? []).map((item) => item.key as Key);
  const at = placeOf(raw, keys);
  const last = issue.path?.at(-1);
  const key = keys.at(-1);
  const found = issue.input;
  const outer = placeOf(raw, keys.slice(0, -1));

  if (last && Array.isArray(last.input)) {
    // A list where an object was wanted has no fields to find missing.
    if (typeof key === 'string') return { kind: 'wrong-type', at: outer, expected: 'object', found: last.input };
    if (found === undefined || issue.expected === 'never') {
      return { kind: 'wrong-count', at: outer, expected: 2, found: last.input.length };
    }
  }
  if (found === undefined && typeof key === 'string') return { kind: 'missing', at: outer, field: key };

  const bounds = (min: number | null, max: number | null, beyond = false): Problem => ({
    kind: 'out-of-bounds',
    at,
    found: found as number,
    min,
    max,
    beyond,
  });
  const requirement = (issue as { requirement?: unknown }).requirement;
  switch (issue.type) {
    case 'picklist':
    case 'literal':
    case 'variant': {
      if (issue.expected === 'Object') break;
      const options = optionsOf(issue.expected ?? '');
      const words = options.filter((option) => typeof option === 'string');
      return {
        kind: 'not-one-of',
        at,
        options,
        found,
        nearest: optionMeant(found, words),
      };
    }
    case 'finite':
      return bounds(null, null);
    case 'integer':
      return { kind: 'not-whole', at, found: found as number };
    case 'min_value':
      return bounds(requirement as number, null);
    case 'max_value':
      return bounds(null, requirement as number);
    case 'gt_value':
      return bounds(requirement as number, null, true);
    case 'min_length':
    case 'max_length': {
      if (typeof found === 'string') {
        return { kind: 'too-long', at, found: found.length, limit: requirement as number };
      }
      const list = isList(key) ? key : 'outline';
      const kind = issue.type === 'min_length' ? 'too-few' : 'too-many';
      return { kind, at, list, found: (found as unknown[]).length, limit: requirement as number };
    }
  }
  const expected = EXPECTED[issue.type as keyof typeof EXPECTED];
  return { kind: 'wrong-type', at, expected, found };
}

/** Whether a raw document is of the schema's shape. */
export function hasShape(raw: unknown): boolean {
  return v.is(designSchema, raw);
}

/**
 * Takes a raw document for one of the schema's shape, as it is: nothing is changed or left out.
 * @throws DesignError for the first thing that is not of that shape.
 */
export function assertShape(raw: unknown): asserts raw is RawDesign {
  const result = v.safeParse(designSchema, raw, { abortEarly: true });
  if (!result.success) throw new DesignError(problemOf(raw, result.issues[0]));
}
