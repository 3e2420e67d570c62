import { withDots, type PictureSize } from '../../handout';

/**
 * A drawing on white, as a picture of so many dots, which tells how many of them go to the inch.
 *
 * @throws Error when the browser can't draw it
 * @throws the signal's reason when it is cancelled before it is drawn
 */
export async function pngOf(
  svg: string,
  { width, height }: PictureSize,
  dots: number,
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
    const drawn = await new Promise<Blob>((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('The picture came out empty.'))), 'image/png');
    });
    return new Blob([withDots(new Uint8Array(await drawn.arrayBuffer()), dots)], { type: 'image/png' });
  } finally {
    URL.revokeObjectURL(address);
  }
}
