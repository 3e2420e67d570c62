/** The eight bytes that a PNG file begins with, and the chunk after them (IHDR), which always has this length. */
const HEAD = 8 + 12 + 13;
const METRES_TO_THE_INCH = 0.0254;
/** Bytes of a chunk beside its data: its length, its type, its sum. */
const FRAME = 12;

/**
 * A PNG file that tells how large it is meant to be: the same file with the chunk pHYs, dots to the metre (PNG, third
 * edition, 11.3.4.3: https://www.w3.org/TR/png-3/#11pHYs). One that it had is replaced.
 */
export function withDots(png: Uint8Array, dotsToTheInch: number): Uint8Array<ArrayBuffer> {
  const chunk = new Uint8Array(FRAME + 9);
  const view = new DataView(chunk.buffer);
  const dots = Math.round(dotsToTheInch / METRES_TO_THE_INCH);
  view.setUint32(0, 9);
  chunk.set(lettersOf('pHYs'), 4);
  view.setUint32(8, dots);
  view.setUint32(12, dots);
  // The unit is the metre.
  chunk[16] = 1;
  view.setUint32(17, sumOf(chunk.subarray(4, 17)));
  const kept = chunksAfterHead(png).filter((one) => typeOf(one) !== 'pHYs');
  const pieces = [png.subarray(0, HEAD), chunk, ...kept];
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

function chunksAfterHead(png: Uint8Array): Uint8Array[] {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  const chunks: Uint8Array[] = [];
  for (let at = HEAD; at < png.length; at += chunks.at(-1)!.length) {
    chunks.push(png.subarray(at, at + FRAME + view.getUint32(at)));
  }
  return chunks;
}

function typeOf(chunk: Uint8Array): string {
  return String.fromCharCode(...chunk.subarray(4, 8));
}

function lettersOf(type: string): number[] {
  return Array.from(type, (letter) => letter.charCodeAt(0));
}

/** The sum that proves a chunk, CRC-32 (PNG, third edition, annex D: https://www.w3.org/TR/png-3/#D-CRCAppendix). */
function sumOf(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
