import { planDesign, type DesignPlan } from '../../src/pickup';
import { drawDiagram, type Drawing, type DrawOptions, type Group, type Mark, type PathRole } from '../../src/renderer';
import { design, type Raw } from '../pickup/builders';

const GAUGE = { stitches: 18, rows: 24 };

const NECK_STEPS = [
  { stitches: -3, every: 2, times: 1 },
  { stitches: -2, every: 2, times: 1 },
  { stitches: -1, every: 2, times: 2 },
  { stitches: 0, every: 4, times: 1 },
];

const straight = (id: string, from: readonly [number, number], fields: Raw = {}): Raw => ({
  id,
  from,
  path: 'straight',
  ...fields,
});

/** A front with a round neck worked by its schedule: 10 bound off, then 3, 2, 1, 1 on every second row each side. */
export function steppedFront(selvage = 'plain', fabric = 'stockinette'): Raw {
  return {
    id: 'front',
    name: 'Front',
    gauge: GAUGE,
    fabric,
    symmetric: true,
    outline: [
      straight('cast-on', [-18, 0]),
      straight('side-left', [18, 0], { selvage }),
      straight('shoulder-left', [18, 30]),
      { id: 'neck-left', from: [12, 30], path: 'stepped', steps: NECK_STEPS },
      straight('neck-front', [5, 18]),
      { id: 'neck-right', from: [-5, 18], path: 'stepped', steps: NECK_STEPS },
      straight('shoulder-right', [-12, 30]),
      straight('side-right', [-18, 30], { selvage }),
    ],
  };
}

/** A front with a curved neck of the given half width and depth. */
export function curvedFront(halfWidth = 12, depth = 20, gauge: Raw = GAUGE): Raw {
  const top = depth + 20;
  const flat = Math.max(1, Math.round(halfWidth / 3));
  const side = halfWidth + 10;
  return {
    id: 'front',
    name: 'Front',
    gauge,
    symmetric: true,
    outline: [
      straight('cast-on', [-side, 0]),
      straight('side-left', [side, 0]),
      straight('shoulder-left', [side, top - 4]),
      {
        id: 'neck-left',
        from: [halfWidth, top],
        path: 'curve',
        handles: [
          [halfWidth, top - depth / 2],
          [(halfWidth + flat) / 2, top - depth],
        ],
      },
      straight('neck-front', [flat, top - depth]),
      {
        id: 'neck-right',
        from: [-flat, top - depth],
        path: 'curve',
        handles: [
          [-(halfWidth + flat) / 2, top - depth],
          [-halfWidth, top - depth / 2],
        ],
      },
      straight('shoulder-right', [-halfWidth, top]),
      straight('side-right', [-side, top - 4]),
    ],
  };
}

/** A front with a V neck. */
export function vFront(halfWidth = 12, depth = 40, gauge: Raw = { stitches: 20, rows: 28 }): Raw {
  const top = depth + 30;
  const side = halfWidth + 14;
  return {
    id: 'front',
    name: 'Front',
    gauge,
    symmetric: true,
    outline: [
      straight('cast-on', [-side, 0]),
      straight('side-left', [side, 0]),
      straight('shoulder-left', [side, top - 6]),
      straight('neck-left', [halfWidth, top]),
      straight('neck-right', [0, top - depth]),
      straight('shoulder-right', [-halfWidth, top]),
      straight('side-right', [-side, top - 6]),
    ],
  };
}

export function neckband(edges: readonly string[], fields: Raw = {}): Raw {
  return {
    id: 'neckband',
    name: 'Neckband',
    along: edges.map((edge) => ({ piece: 'front', edge })),
    sections: { by: 'length', parts: 4, counts: 'exact' },
    ...fields,
  };
}

/** A small square with every kind of horizontal edge and selvage, as `edges` has them. */
export function square(stitches: number, rows: number, edges: Record<string, Raw> = {}, fields: Raw = {}): Raw {
  return {
    id: 'square',
    name: 'Square',
    gauge: { stitches: 20, rows: 28 },
    outline: [
      straight('bottom', [0, 0], edges.bottom),
      straight('right', [stitches, 0], edges.right),
      straight('top', [stitches, rows], edges.top),
      straight('left', [0, rows], edges.left),
    ],
    ...fields,
  };
}

export function around(fields: Raw = {}, edges: readonly string[] = ['bottom', 'right', 'top', 'left']): Raw {
  return {
    id: 'border',
    name: 'Border',
    along: edges.map((edge) => ({ piece: 'square', edge })),
    ...fields,
  };
}

export function planOf(pieces: Raw | readonly Raw[], pickups: Raw | readonly Raw[] = [], fields: Raw = {}): DesignPlan {
  return planDesign(design(pieces, pickups, { name: 'Swatch', ...fields }));
}

/** Draws with everything on, at half size, unless told otherwise. */
export function draw(plan: DesignPlan, options: Partial<DrawOptions> = {}): Drawing {
  return drawDiagram(plan, {
    pickup: plan.pickups.length > 0 ? 0 : null,
    scale: 0.5,
    detail: 'shape',
    words: { units: 'cm' },
    rulers: true,
    dimensions: true,
    fabric: 'near-edge',
    ...options,
  });
}

export function groupsOf(drawing: Drawing): Group[] {
  const all = (group: Group): Group[] => [group, ...group.groups.flatMap(all)];
  return drawing.groups.flatMap(all);
}

export function marksOf(drawing: Drawing): Mark[] {
  return groupsOf(drawing).flatMap((group) => group.marks);
}

/** Path data of one role, of one edge or of all. */
export function dataOf(drawing: Drawing, role: PathRole, edge?: string): string {
  return groupsOf(drawing)
    .filter((group) => edge === undefined || group.data.edge === edge)
    .flatMap((group) => group.marks)
    .map((mark) => (mark.kind === 'path' && mark.role === role ? mark.d : ''))
    .join('');
}

/** How many separate strokes path data holds. */
export function strokesIn(d: string): number {
  return d.match(/M/g)?.length ?? 0;
}

export function textsOf(drawing: Drawing, role: string): string[] {
  return marksOf(drawing).flatMap((mark) => (mark.kind === 'text' && mark.role === role ? [mark.text] : []));
}

/** The first number pairs of every stroke. */
export function startsOf(d: string): [number, number][] {
  return [...d.matchAll(/M(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}
