import type { DesignPlan, MeasuredPiece, PickupPlan } from '../pickup';
import { setUp } from './drawnPiece';
import { drawFabric } from './fabric';
import { trackOf, type Track } from './frame';
import { edgeGroup, leafGroup, pieceGroup } from './groups';
import { idMaker } from './ids';
import { layOut, standing } from './layout';
import { letter } from './lettering';
import { alongEdges, drawEdges, tracesOf, type Along } from './pickup';
import type { DrawOptions } from './options';
import type { Drawing, Group, StitchPattern } from './marks';

/**
 * Draws a plan as a list of marks in sheet mm. A group in which nothing has changed since it was last drawn is the same
 * object again, so that who shows the drawing can pass it over.
 *
 * @throws RangeError when there is no such pick-up
 */
export function drawDiagram(plan: DesignPlan, options: DrawOptions): Drawing {
  const pickup = options.pickup === null ? null : plan.pickups[options.pickup];
  if (pickup === undefined) throw new RangeError(`There is no pick-up number ${options.pickup} in this plan.`);
  const chosen = chosenPieces(plan, pickup, options.pieces);
  const layout = options.layout ? standing(chosen, options.layout) : layOut(chosen, options);
  const pieces = chosen.map((measured, i) => setUp(measured, layout.places[i]!));
  const tracks = pickup?.edges.map((edge): Track | null => {
    const piece = pieces.find(({ measured }) => measured.piece.id === edge.stretch.piece);
    return piece ? trackOf(edge, plan.design.hand, piece.lengths[edge.measured.index]!) : null;
  });
  const drawn = pickup && tracks ? drawEdges(pickup, tracks, pieces, options) : [];
  const along: Along = pickup ? alongEdges(pickup, drawn) : () => [];
  const picked = chosen.map(({ piece }) => edgesPicked(pickup, piece.id));
  const lettering = options.lettering ?? letter({ pickup, layout, pieces, picked, drawn, along, options });

  const newId = idMaker();
  const patterns: StitchPattern[] = [];
  const groups = pieces.map((piece, i): Group => {
    const { measured, place } = piece;
    const id = measured.piece.id;
    const fabric = drawFabric(place, measured, picked[i]!, options, newId(`stitch-${id}`));
    if (fabric.pattern) patterns.push(fabric.pattern);
    const own = newId(`piece-${id}`);
    const children = [
      leafGroup('fabric', newId(`fabric-${id}`), fabric.marks),
      ...(lettering.pieces[i] ?? []).map(({ name, marks }) => leafGroup(name, newId(`${name}-${id}`), marks)),
      ...measured.edges.map((edge) =>
        edgeGroup(edge, newId(`edge-${id}-${edge.id}`), {
          place,
          picked: picked[i]!.has(edge.id),
          detail: options.detail,
          points: along(id, edge.id),
        }),
      ),
    ];
    return pieceGroup(measured, own, children);
  });
  const over = lettering.over.map(({ name, marks }) => leafGroup(name, newId(name), marks));
  let points: Drawing['points'] | null = null;
  return {
    width: layout.width,
    height: layout.height,
    groups: [...groups, ...over],
    patterns,
    places: layout.places,
    edges: pieces.flatMap((piece) => piece.traces),
    // Made when they are first asked for: while an edge moves nobody does.
    get points() {
      return (points ??= pickup ? tracesOf(pickup, drawn) : []);
    },
    lettering,
  };
}

/** The pieces that are drawn, in the order of the document. */
export function chosenPieces(
  plan: DesignPlan,
  pickup: PickupPlan | null,
  ids: readonly string[] | undefined,
): readonly MeasuredPiece[] {
  const wanted = ids ?? (pickup ? pickup.edges.map((edge) => edge.stretch.piece) : null);
  return wanted === null ? plan.measured : plan.measured.filter(({ piece }) => wanted.includes(piece.id));
}

/** The ids of the edges of a piece that a pick-up runs along. */
function edgesPicked(pickup: PickupPlan | null, piece: string): ReadonlySet<string> {
  return new Set(pickup?.edges.filter((edge) => edge.stretch.piece === piece).map((edge) => edge.measured.id));
}
