import { describe, expect, it } from 'vitest';
import { edgeAt, gridToSheet, placeOf, pointAt } from '../../src/renderer';
import { curvedFront, draw, neckband, planOf } from './designs';

const plan = planOf(curvedFront(), neckband(['neck-left', 'neck-front', 'neck-right']));
const drawing = draw(plan, { scale: 1 });

describe('the edge under a place', () => {
  it('is each edge along its own line, at no distance', () => {
    for (const { piece, edge, line } of drawing.edges) {
      const i = 2 * Math.floor(line.length / 4 - 0.5);
      const middle = [(line[i]! + line[i + 2]!) / 2, (line[i + 1]! + line[i + 3]!) / 2] as const;
      expect(edgeAt(drawing, middle, 2)).toEqual({ piece, edge, distance: expect.closeTo(0, 9) });
    }
  });

  it('is found within reach and not beyond it', () => {
    const place = drawing.places[0]!;
    const [x, y] = gridToSheet(place, 22, 10);
    expect(edgeAt(drawing, [x + 3, y], 4)).toEqual({
      piece: 'front',
      edge: 'side-left',
      distance: expect.closeTo(3, 6),
    });
    expect(edgeAt(drawing, [x + 3, y], 2.9)).toBeNull();
  });

  it('is the nearest of two', () => {
    const place = drawing.places[0]!;
    const [x, y] = gridToSheet(place, 22, 0);
    expect(edgeAt(drawing, [x - 5, y - 1], 10)!.edge).toBe('cast-on');
    expect(edgeAt(drawing, [x - 1, y - 5], 10)!.edge).toBe('side-left');
  });
});

describe('the opening under a place', () => {
  it('is each opening at its own place', () => {
    for (const { point, x, y } of drawing.points) {
      expect(pointAt(drawing, [x, y], 1)).toEqual({ point, distance: 0 });
    }
    expect(drawing.points).toHaveLength(plan.pickups[0]!.points.length);
  });

  it('is none far from all', () => {
    expect(pointAt(drawing, [0, 0], 1)).toBeNull();
  });
});

describe('the room of an edge or a piece', () => {
  it('holds every place of its line', () => {
    for (const { piece, edge, line } of drawing.edges) {
      const box = placeOf(drawing, piece, edge)!;
      for (let i = 0; i < line.length; i += 2) {
        expect(line[i]).toBeGreaterThanOrEqual(box.x);
        expect(line[i]).toBeLessThanOrEqual(box.x + box.width + 1e-9);
        expect(line[i + 1]).toBeGreaterThanOrEqual(box.y);
        expect(line[i + 1]).toBeLessThanOrEqual(box.y + box.height + 1e-9);
      }
    }
  });

  it('is the fabric for a whole piece, and nothing for what is not there', () => {
    expect(placeOf(drawing, 'front')).toEqual(drawing.places[0]!.box);
    expect(placeOf(drawing, 'front', 'nothing')).toBeNull();
    expect(placeOf(drawing, 'nothing')).toBeNull();
  });
});
