import { bad, many, wrong, type BadFile } from './bad';
import { GOOD } from './good';

const good = JSON.stringify(GOOD);
const deep = `${'['.repeat(70)}${']'.repeat(70)}`;

/** Texts that are no JSON, or no object. */
const SYNTAX: BadFile[] = [
  bad('an empty file', '', 'not-json', '', 'line 1, column 1', 'empty', 'choose a design'),
  bad('only spaces', ' \n ', 'not-json', '', 'line 2, column 2', 'empty'),
  bad('a file cut short', good.slice(0, 300), 'not-json', '', 'line 1, column 301', 'get it again'),
  bad('a comma left over', '{\n  "format": "edgewise",\n}', 'not-json', '', 'line 2, column 23', 'take it out'),
  bad('a comma missing', '{"a": 1\n "b": 2}', 'not-json', '', 'line 2, column 2', 'missing comma'),
  bad('a comment', '{\n  "a": 1, // note\n}', 'not-json', '', 'line 2, column 11', 'take the comment out'),
  bad('single quotes', "{'a': 1}", 'not-json', '', 'line 1, column 2', 'double quotes'),
  bad('a bare name', '{a: 1}', 'not-json', '', 'line 1, column 2', 'double quotes'),
  bad('a comma in a number', '{"a": .5}', 'not-json', '', 'line 1, column 7', 'with a point'),
  bad('a number with a leading 0', '[012]', 'not-json', '', 'line 1, column 3', 'as JSON writes it'),
  bad('a line break in a text', '["a\nb"]', 'not-json', '', 'line 1, column 4', 'close it'),
  bad('something behind the end', '{} {}', 'not-json', '', 'line 1, column 4', 'does not belong'),
  bad(
    'more than 4 MiB',
    JSON.stringify({ ...GOOD, note: 'é'.repeat(2 ** 21) }),
    'too-large',
    '',
    'has 4.01 MiB',
    'split',
  ),
  bad('nested too deep', `{"format": "edgewise", "version": 1, "x": ${deep}}`, 'too-deep', 'x', 'take out'),
  bad('a list', '[]', 'wrong-type', '', 'holds a list', 'choose a file'),
  bad('a number', '3', 'wrong-type', '', 'holds 3', 'choose a file'),
  bad('nothing', 'null', 'wrong-type', '', 'holds null', 'choose a file'),
];

/** What stands at the top of a document. */
const WHOLE: BadFile[] = [
  wrong('format', undefined, 'not-edgewise', 'format', 'nothing', 'choose a file'),
  wrong('format', 'other', 'not-edgewise', 'format', '"other"', 'choose a file'),
  wrong('format', 'edgewise-plan', 'not-edgewise', 'format', 'a plan', 'open the design file'),
  wrong('version', undefined, 'no-version', 'version', 'write "version": 1'),
  wrong('version', '1', 'bad-version', 'version', '"1"', 'write 1'),
  wrong('version', 0, 'bad-version', 'version', 'write 1'),
  wrong('version', 2, 'future-version', 'version', 'written by a later version', 'update the program'),
  wrong('units', 'mm', 'not-one-of', 'units', '"mm" is not known here; choose "cm" or "in"'),
  wrong('terms', 'AU', 'not-one-of', 'terms', 'choose "US" or "UK"'),
  wrong('hand', 'rihgt', 'not-one-of', 'hand', 'did you mean "right"', 'choose'),
  wrong('name', 3, 'wrong-type', 'name', '3 stands where text', 'put that there'),
  wrong('pieces', undefined, 'missing', '', '"pieces" is missing', 'add it'),
  wrong('pieces', {}, 'wrong-type', 'pieces', 'a list in square brackets'),
  wrong('pieces', [], 'too-few', 'pieces', 'no pieces', 'at least 1 piece'),
  wrong(
    'pieces',
    many(25, (i) => ({ ...GOOD.pieces[2], id: `p${i}` })),
    'too-many',
    'pieces',
    '25 pieces',
    'leave some out',
  ),
  wrong(
    'pickups',
    many(25, (i) => ({ ...GOOD.pickups[1], id: `p${i}` })),
    'too-many',
    'pickups',
    '25 pick-ups',
    'leave some out',
  ),
];

export const BAD_TEXTS: readonly BadFile[] = [...SYNTAX, ...WHOLE];
