import { describe, expect, test } from 'vitest';
import { planCsv, planDocument, type PlanDocument } from '../../src/text';
import { planSample } from '../samples/sample';

/** A small reader of RFC 4180 tables. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    row.push(quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'));
    if (end === ',') continue;
    rows.push(row);
    row = [];
  }
  return rows;
}

describe('planCsv', () => {
  const document = planDocument(planSample('vest'));

  test('has a head and a row for every opening, with the numbers of the document', () => {
    const [head, ...rows] = readCsv(planCsv(document));
    expect(head).toEqual([
      'pickup',
      'n',
      'piece',
      'edge',
      'opening',
      'used',
      'column',
      'row',
      'xMm',
      'yMm',
      'alongMm',
      'section',
    ]);
    const points = document.pickups.flatMap((pickup) => pickup.points.map((point) => ({ id: pickup.id, point })));
    expect(rows).toHaveLength(points.length);
    rows.forEach((row, i) => {
      const { id, point } = points[i]!;
      expect(row.slice(0, 6)).toEqual([
        id,
        point.n === null ? '' : `${point.n}`,
        point.piece,
        point.edge,
        point.opening,
        `${point.used}`,
      ]);
      expect(row.slice(6).map(Number)).toEqual([
        point.column,
        point.row,
        point.xMm,
        point.yMm,
        point.alongMm,
        point.section,
      ]);
    });
  });

  test('quotes what would break the table', () => {
    const odd = 'neck, "left"\nside';
    const pickup = { ...document.pickups[0]!, id: odd, points: document.pickups[0]!.points.slice(0, 1) };
    const text = planCsv({ ...document, pickups: [pickup] } satisfies PlanDocument);
    expect(text).toContain('"neck, ""left""\nside",1,');
    expect(readCsv(text)[1]![0]).toBe(odd);
  });
});
