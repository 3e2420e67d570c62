import { many, wrong, type BadFile } from './bad';

const gauge = { stitches: 22, rows: 30 };

export const BAD_HANDOUTS: readonly BadFile[] = [
  wrong('handout', 'A4', 'wrong-type', 'handout', '"A4" stands where an object'),
  wrong('handout', [], 'wrong-type', 'handout', 'a list stands where an object'),
  wrong('handout', { paper: 'A5' }, 'not-one-of', 'handout.paper', '"A5"', 'choose "A4" or "Letter"'),
  wrong('handout', { paper: 'letter' }, 'not-one-of', 'handout.paper', 'did you mean "Letter"?'),
  wrong('handout', { orientation: 90 }, 'not-one-of', 'handout.orientation', 'choose "portrait" or "landscape"'),
  wrong('handout', { diagram: 'big' }, 'not-one-of', 'handout.diagram', 'choose "fitted" or "true-size"'),
  wrong('handout', { version: 'answer' }, 'not-one-of', 'handout.version', 'did you mean "answers"?'),
  wrong('handout', { note: 3 }, 'wrong-type', 'handout.note', '3 stands where text'),
  wrong('handout', { note: 'x'.repeat(2001) }, 'too-long', 'handout.note', '2001 letters', 'at most 2000', 'shorter'),
  wrong('handout', { blocks: 'title' }, 'wrong-type', 'handout.blocks', 'a list in square brackets'),
  wrong('handout', { blocks: ['title', 'edge'] }, 'not-one-of', 'handout.blocks[1]', 'did you mean "edges"?'),
  wrong(
    'handout',
    { blocks: ['title', 'ruler', 'title'] },
    'block-twice',
    'handout.blocks[2]',
    'the block "title" stands in this list twice',
    'take one of the two out',
  ),
  wrong(
    'handout',
    { gauges: many(7, () => gauge) },
    'too-many',
    'handout.gauges',
    '7 gauges and at most 6',
    'leave some out',
  ),
  wrong('handout', { gauges: [{ stitches: 22 }] }, 'missing', 'handout.gauges[0]', '"rows" is missing'),
  wrong(
    'handout',
    { gauges: [{ stitches: 22, rows: 301 }, gauge] },
    'gauge-bounds',
    'handout.gauges[0].rows',
    '301 rows over 10 cm is more than 300',
    'correct the gauge',
  ),
];
