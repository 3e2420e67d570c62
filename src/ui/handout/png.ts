import type { Drawing } from '../../renderer';

/** Browsers draw pictures up to about this many dots wide or high, and this many in all. */
const MOST = { side: 16_000, all: 120_000_000 } as const;
const INCH = 25.4;

/** How many dots wide and high a drawing is at some dots to the inch; null where no browser draws that many. */
export function pngSize(
  { width, height }: Pick<Drawing, 'width' | 'height'>,
  dots: number,
): { readonly width: number; readonly height: number } | null {
  const [across, down] = [Math.round((width / INCH) * dots), Math.round((height / INCH) * dots)];
  return across > MOST.side || down > MOST.side || across * down > MOST.all ? null : { width: across, height: down };
}

/**
 * A drawing on white, as a picture of so many dots.
 *
 * @throws Error when the browser can't draw it
 * @throws the signal's reason when it is cancelled before it is drawn
 */
export async function pngOf(
  svg: string,
  { width, height }: { readonly width: number; readonly height: number },
  signal: AbortSignal,
): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image(width, height);
    image.src = address;
    await image.decode();
    signal.throwIfAborted();
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [width, height];
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('There is nothing to draw with.');
    pen.fillStyle = '#ffffff';
    pen.fillRect(0, 0, width, height);
    pen.drawImage(image, 0, 0, width, height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('The picture came out empty.'))), 'image/png');
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}
