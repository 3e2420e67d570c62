import type { DesignPlan } from '../pickup';
import { describeDrawing } from './describe';
import { drawDiagram } from './diagram';
import { scaleToFit } from './fit';
import type { DrawOptions } from './options';
import type { Drawing } from './marks';
import { renderSvg } from './svg';

/** Openings on a sheet stand at least this far apart, mm, where the sheet has room for it. */
const APART = 2.2;
/** A file's drawing is not wider or higher than this, mm, for the sake of what opens it. */
const LARGEST = 1200;
/** … and never smaller than a tenth of the fabric's size. */
const LEAST_SCALE = 0.1;
/** The scale where there are no openings to tell apart. */
const PLAIN_SCALE = 0.5;

function fileOptions(plan: DesignPlan, pickup: number | null): Omit<DrawOptions, 'scale'> {
  return {
    pickup,
    detail: 'shape',
    words: { units: plan.design.units },
    rulers: true,
    dimensions: true,
    fabric: 'near-edge',
  };
}

/**
 * The scale of a drawing in a file, in sheet mm to one fabric mm: as small as the openings can be told apart at, true
 * size at most.
 */
export function fileScale(plan: DesignPlan, pickup: number | null): number {
  const points = pickup === null ? [] : (plan.pickups[pickup]?.points ?? []);
  const gaps = points
    .slice(1)
    .map((point, i) => point.alongMm - points[i]!.alongMm)
    .filter((gap) => gap > 0)
    .sort((a, b) => a - b);
  // Three gaps of four are at least this wide.
  const usual = gaps[Math.floor(gaps.length / 4)];
  const readable = usual === undefined ? PLAIN_SCALE : APART / usual;
  const fitting = scaleToFit(plan, fileOptions(plan, pickup), { width: LARGEST, height: LARGEST });
  return Math.max(LEAST_SCALE, Math.min(1, readable, fitting));
}

/** The drawing of a pick-up (null: of the pieces alone) as the page saves it and the command writes it. */
export function fileDrawing(plan: DesignPlan, pickup: number | null): Drawing {
  return drawDiagram(plan, { ...fileOptions(plan, pickup), scale: fileScale(plan, pickup) });
}

/** The same as a whole SVG file. */
export function fileSvg(plan: DesignPlan, pickup: number | null): string {
  return renderSvg(fileDrawing(plan, pickup), describeDrawing(plan, pickup));
}
