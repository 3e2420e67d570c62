/**
 * What of the sheet is in view: its scale (sheet mm to one fabric mm) and the sheet place of the view's upper left
 * corner, mm. The drawing is laid out anew for each scale, since labels and gaps keep their size.
 */
export interface Viewport {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

export type Spot = readonly [x: number, y: number];

/** Smallest and largest scale: a blanket of ten metres on a phone, and a stitch as large as a hand. */
export const SCALE = { least: 0.01, most: 12 } as const;

/** One press of a zoom key, and one notch of a wheel. */
export const ZOOM_STEP = 1.25;

/** The scale after zooming by `factor`, within its limits. */
export function zoomed(scale: number, factor: number): number {
  return Math.min(SCALE.most, Math.max(SCALE.least, scale * factor));
}

/** Moves the view so that the drawing follows the hand by (dx, dy) sheet mm. */
export function panned(view: Viewport, dx: number, dy: number): Viewport {
  return { ...view, left: view.left - dx, top: view.top - dy };
}

/**
 * The view at a new scale in which what was at `before` on the old sheet, and is at `after` on the new one, stays where
 * it is on screen.
 */
export function keptUnder(view: Viewport, scale: number, before: Spot, after: Spot): Viewport {
  return { scale, left: view.left + after[0] - before[0], top: view.top + after[1] - before[1] };
}

/** The view with a sheet of this size in its middle. */
export function centred(scale: number, sheet: Size, view: Size): Viewport {
  return { scale, left: (sheet.width - view.width) / 2, top: (sheet.height - view.height) / 2 };
}
