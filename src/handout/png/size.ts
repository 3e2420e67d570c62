/** How many dots wide and high a picture is. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** A picture may be this many dots wide or high, and this many in all: what browsers draw, and other programs open. */
const MOST = { side: 16_000, all: 120_000_000 } as const;
const INCH = 25.4;

/** How many dots a sheet (mm) makes at some dots to the inch; null where they are more than a picture may have. */
export function pngSize(sheet: PictureSize, dots: number): PictureSize | null {
  const [width, height] = [dotsOf(sheet.width, dots), dotsOf(sheet.height, dots)];
  return width > MOST.side || height > MOST.side || width * height > MOST.all ? null : { width, height };
}

/** The most dots to the inch, whole ones, at which a sheet (mm) makes a picture. */
export function mostDots(sheet: PictureSize): number {
  const { width, height } = sheet;
  let most = Math.ceil(INCH * Math.min(MOST.side / Math.max(width, height), Math.sqrt(MOST.all / (width * height))));
  // Whole dots are rounded, so that the last of them may fit or not.
  while (pngSize(sheet, most) === null) most--;
  return most;
}

function dotsOf(mm: number, dots: number): number {
  return Math.max(1, Math.round((mm / INCH) * dots));
}
