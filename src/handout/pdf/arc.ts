/** The two control points and the end of a cubic Bézier curve: x1, y1, x2, y2, x, y. */
export type Cubic = readonly [x1: number, y1: number, x2: number, y2: number, x: number, y: number];

/** An elliptic arc from where the pen stands, as in SVG's path data: the turn in degrees. */
export interface Arc {
  readonly rx: number;
  readonly ry: number;
  readonly turn: number;
  readonly large: boolean;
  readonly sweep: boolean;
  readonly x: number;
  readonly y: number;
}

/** Curves leave the arc by no more than this, in the unit of the path: 1 µm where that is a mm. */
const CLOSENESS = 0.001;
/** How far the curve of a quarter leaves its circle, as a part of the radius; it falls with the angle's sixth power. */
const QUARTER_OFF = 2.73e-4;

/**
 * The curves that stand for an arc. Centre and angles by SVG 1.1, appendix F.6.5 and F.6.6
 * (https://www.w3.org/TR/SVG11/implnote.html#ArcImplementationNotes); of each part of angle t the control points lie
 * 4/3 tan(t/4) of the radius along the tangents. Without a radius it is a straight line, as in SVG; from a place to
 * itself it is nothing.
 */
export function arcCurves(x0: number, y0: number, arc: Arc): Cubic[] {
  const { turn, x, y } = arc;
  if (x0 === x && y0 === y) return [];
  let [rx, ry] = [Math.abs(arc.rx), Math.abs(arc.ry)];
  if (rx === 0 || ry === 0) return [[x0, y0, x, y, x, y]];
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  // Half the chord, on the ellipse's own axes.
  const [halfX, halfY] = [(x0 - x) / 2, (y0 - y) / 2];
  const [px, py] = [cos * halfX + sin * halfY, cos * halfY - sin * halfX];
  // An ellipse too small to reach grows until it does.
  const reach = Math.hypot(px / rx, py / ry);
  if (reach > 1) [rx, ry] = [rx * reach, ry * reach];
  const [ux, uy] = [px / rx, py / ry];
  const chord = ux * ux + uy * uy;
  const off = Math.sqrt(Math.max(0, 1 - chord) / chord) * (arc.large === arc.sweep ? -1 : 1);
  // The centre on the unit circle's plane, seen from the middle of the chord.
  const [mx, my] = [off * uy, -off * ux];
  const start = Math.atan2(uy - my, ux - mx);
  let angle = Math.atan2(-uy - my, -ux - mx) - start;
  if (arc.sweep && angle < 0) angle += 2 * Math.PI;
  if (!arc.sweep && angle > 0) angle -= 2 * Math.PI;
  const [cx, cy] = [cos * rx * mx - sin * ry * my + (x0 + x) / 2, sin * rx * mx + cos * ry * my + (y0 + y) / 2];
  const parts = partsOf(Math.abs(angle), Math.max(rx, ry));
  const step = angle / parts;
  const handle = (4 / 3) * Math.tan(step / 4);
  const place = (u: number, v: number) => [cx + cos * rx * u - sin * ry * v, cy + sin * rx * u + cos * ry * v] as const;
  return Array.from({ length: parts }, (_, i) => {
    const [from, to] = [start + step * i, start + step * (i + 1)];
    const [c0, s0, c1, s1] = [Math.cos(from), Math.sin(from), Math.cos(to), Math.sin(to)];
    const end = i === parts - 1 ? ([x, y] as const) : place(c1, s1);
    return [...place(c0 - handle * s0, s0 + handle * c0), ...place(c1 + handle * s1, s1 - handle * c1), ...end];
  });
}

/** How many curves an arc needs: none over a quarter, and none that strays. */
function partsOf(angle: number, radius: number): number {
  const quarters = angle / (Math.PI / 2);
  const strays = ((radius * QUARTER_OFF) / CLOSENESS) ** (1 / 6);
  return Math.max(1, Math.ceil(quarters * Math.max(1, strays) - 1e-9));
}
