import { render } from '@testing-library/svelte';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Design } from '../../src/piece';
import { planDesign } from '../../src/pickup';
import { DiagramBody, drawDiagram, type Drawing, type DrawOptions, type Group } from '../../src/renderer';
import { loadEditing, Sheet, Workbench } from '../../src/ui';
import { sides } from '../bench/designs';

/**
 * What of a large design is made anew for one movement of a corner, counted through measuring, planning, drawing and
 * the page. What is not made anew is the same object as before.
 */

const VIEW = { width: 170, height: 180 };

/** Four pieces of ten bowed edges each; a stitch from every opening, so that counts go by the rows alone. */
function everyOpening(): Design {
  const made = sides(40, 5);
  const pickups = made.pickups.map((pickup) => ({
    ...pickup,
    band: { ...pickup.band, multiple: 1 },
    rates: pickup.along.map(({ piece, edge }) => ({ piece, edge, rate: { kind: 'each' as const } })),
  }));
  return { ...made, pickups };
}

function opened(design: Design): { bench: Workbench; sheet: Sheet; drag: (dx: number, dy?: number) => void } {
  const bench = new Workbench(design, 'test');
  const sheet = new Sheet(bench);
  sheet.resize(VIEW);
  const drag = (dx: number, dy = 0) => bench.preview({ kind: 'move-corners', piece: 'p0', corners: ['e2'], dx, dy });
  return { bench, sheet, drag };
}

/** Every edge of a drawing by its piece and id. */
function edgesOf({ groups }: Drawing): Map<string, Group> {
  const found = new Map<string, Group>();
  const walk = (group: Group) => {
    if (group.name === 'edge') found.set(`${group.data.piece} ${group.data.edge}`, group);
    group.groups.forEach(walk);
  };
  groups.forEach(walk);
  return found;
}

/** The keys under which two maps have different objects. */
function renewed<T>(before: ReadonlyMap<string, T>, after: ReadonlyMap<string, T>): string[] {
  expect([...after.keys()]).toEqual([...before.keys()]);
  return [...after].filter(([key, one]) => one !== before.get(key)).map(([key]) => key);
}

const TOUCHED = ['p0 e1', 'p0 e2'];

/** What the sheet draws with, for a drawing made by nobody but the test. */
function optionsOf(sheet: Sheet): DrawOptions {
  return {
    pickup: 0,
    pieces: sheet.places.map(({ piece }) => piece),
    scale: sheet.view.scale,
    detail: sheet.detail,
    words: { units: 'cm' },
    rulers: sheet.rulers,
    dimensions: sheet.rulers,
    fabric: 'pattern',
  };
}

beforeAll(async () => {
  await loadEditing();
});

describe('one movement of a corner', () => {
  it.each([
    ['to the side', 12, 0],
    ['upwards', 0, 9],
    ['both ways', -7, -4],
  ])('%s has the two edges measured and chosen on that meet in it, and no other', (_, dx, dy) => {
    const { bench, drag } = opened(everyOpening());
    const measured = () =>
      new Map(bench.now.measured.flatMap(({ piece, edges }) => edges.map((edge) => [`${piece.id} ${edge.id}`, edge])));
    const chosen = () =>
      new Map(bench.pickupNow!.edges.map((edge) => [`${edge.piece.id} ${edge.measured.id}`, edge.selection]));
    const before = [measured(), chosen()] as const;
    drag(dx, dy);
    expect(renewed(before[0], measured())).toEqual(TOUCHED);
    expect(renewed(before[1], chosen())).toEqual(TOUCHED);
  });

  it('has those two drawn anew, and the fabric of their piece', () => {
    const { bench, sheet, drag } = opened(everyOpening());
    const before = sheet.drawing;
    for (const [dx, dy] of [
      [12, 0],
      [13, 0],
      [13, 5],
    ] as const) {
      const last = sheet.drawing;
      drag(dx, dy);
      expect(bench.moving).toBe(true);
      expect(renewed(edgesOf(last), edgesOf(sheet.drawing))).toEqual(TOUCHED);
      expect(sheet.drawing.groups.filter((group) => !before.groups.includes(group)).map(({ data }) => data)).toEqual([
        { piece: 'p0' },
      ]);
      const inside = (drawing: Drawing) => new Map(drawing.groups[0]!.groups.map((group) => [group.id, group]));
      expect(renewed(inside(last), inside(sheet.drawing))).toEqual(['fabric-p0', 'edge-p0-e1', 'edge-p0-e2']);
    }
    expect(bench.plan).toBe(bench.made);
  });

  it('has no other element of the page changed', async () => {
    const { sheet, drag } = opened(everyOpening());
    const { container, rerender } = render(DiagramBody, { props: { drawing: sheet.drawing } });
    const seen: MutationRecord[] = [];
    const observer = new MutationObserver((records) => seen.push(...records));
    observer.observe(container, { attributes: true, childList: true, characterData: true, subtree: true });
    drag(12);
    await rerender({ drawing: sheet.drawing });
    await Promise.resolve();
    seen.push(...observer.takeRecords());
    const changed = new Set(seen.map(({ target }) => (target as Element).closest('g')!.id));
    expect([...changed].sort()).toEqual(['edge-p0-e1', 'edge-p0-e2', 'fabric-p0']);
    expect(new Set(seen.map(({ type, attributeName }) => `${type} ${attributeName}`))).toEqual(
      new Set(['attributes d']),
    );
    observer.disconnect();
  });

  it('has those edges chosen on and drawn besides whose count goes with the total', () => {
    const { bench, sheet, drag } = opened(sides(40, 5));
    for (const dx of [10, 11, 14, 20]) {
      const [edges, drawing] = [bench.pickupNow!.edges, edgesOf(sheet.drawing)];
      drag(dx);
      const expected = bench
        .pickupNow!.edges.filter((edge, i) => edge.count !== edges[i]!.count || edge.measured !== edges[i]!.measured)
        .map((edge) => `${edge.piece.id} ${edge.measured.id}`);
      expect(renewed(drawing, edgesOf(sheet.drawing))).toEqual(expected);
      expect(expected).toEqual(expect.arrayContaining(TOUCHED));
    }
  });
});

describe('what is drawn while a corner moves', () => {
  it('are the edges that a drawing made afresh has', () => {
    const { bench, sheet, drag } = opened(sides(40, 5));
    for (const [dx, dy] of [
      [12, 0],
      [25, 8],
    ] as const) {
      drag(dx, dy);
      const afresh = planDesign(structuredClone(bench.now.design));
      const layout = { width: sheet.drawing.width, height: sheet.drawing.height, places: sheet.places };
      const whole = drawDiagram(afresh, { ...optionsOf(sheet), layout });
      expect(edgesOf(sheet.drawing)).toEqual(edgesOf(whole));
      expect(sheet.drawing.points).toEqual(whole.points);
      expect(sheet.drawing.edges).toEqual(whole.edges);
    }
  });

  it('keeps every piece and the view where they are', () => {
    const { sheet, drag } = opened(sides(40, 5));
    const [view, places] = [sheet.view, sheet.places.map(({ x, y }) => [x, y])];
    drag(60);
    expect(sheet.view).toEqual(view);
    expect(sheet.drawing.places.map(({ x, y }) => [x, y])).toEqual(places);
    expect(sheet.drawing.places[0]!.box.width).toBeGreaterThan(sheet.places[0]!.box.width);
  });

  it('has the count of the very moment, and all that is written when the hand rests', () => {
    const { bench, sheet, drag } = opened(sides(40, 5));
    const before = bench.pickup!;
    const labels = sheet.drawing.lettering;
    drag(40);
    expect(bench.pickup).toBe(before);
    expect(bench.pickupNow!.wanted).toBeGreaterThan(before.wanted);
    expect(sheet.drawing.lettering).toBe(labels);
    bench.rest();
    expect(bench.moving).toBe(false);
    expect(bench.pickup).toBe(bench.pickupNow);
    expect(sheet.drawing.lettering).not.toEqual(labels);
    drag(41);
    expect(bench.moving).toBe(true);
    bench.preview(null);
    expect(bench.pickup).toBe(before);
    expect(sheet.drawing.lettering).toBe(labels);
  });

  it('is followed by all that is written once the hand has rested for a while', async () => {
    const { bench, drag } = opened(sides(4));
    drag(10);
    drag(20);
    expect(bench.plan).toBe(bench.made);
    await expect.poll(() => bench.plan === bench.now && bench.plan !== bench.made).toBe(true);
  });
});

describe('what is drawn after the corner was let go', () => {
  it('is what a drawing made afresh is', () => {
    const { bench, sheet, drag } = opened(sides(40, 5));
    for (const dx of [3, 9, 17, 40, 38]) drag(dx, 2);
    bench.rest();
    drag(30, 4);
    bench.breakOff = () => bench.preview(null);
    expect(bench.change({ kind: 'move-corners', piece: 'p0', corners: ['e2'], dx: 30, dy: 4 })).toEqual({ ok: true });
    expect(bench.moving).toBe(false);
    const afresh = planDesign(structuredClone(bench.design));
    expect(bench.plan).toEqual(afresh);
    expect(sheet.drawing).toEqual(drawDiagram(afresh, optionsOf(sheet)));
  });
});
