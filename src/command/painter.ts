import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { CommandError } from './problem';

/**
 * Draws an SVG on white as a PNG file, in the dots that it has.
 *
 * @param onStep told before each part of the work that may take long
 */
export type Paint = (svg: string, onStep: () => void) => Uint8Array;

let started: Promise<void> | undefined;

/**
 * What draws pictures with some letters (TrueType files), from the file that the build puts beside the command.
 *
 * @throws CommandError when that file is not there
 */
export async function loadPainter(fonts: readonly Uint8Array[]): Promise<Paint> {
  const { initWasm, Resvg } = await import('@resvg/resvg-wasm');
  const engine = readEngine();
  await (started ??= initWasm(engine));
  return (svg, onStep) => {
    onStep();
    const sheet = new Resvg(svg, { background: '#ffffff', font: { fontBuffers: [...fonts] } });
    try {
      onStep();
      const drawn = sheet.render();
      try {
        onStep();
        return drawn.asPng();
      } finally {
        drawn.free();
      }
    } finally {
      sheet.free();
    }
  };
}

function readEngine(): Uint8Array<ArrayBuffer> {
  const file = new URL('./pictures/resvg.wasm', import.meta.url);
  try {
    return new Uint8Array(readFileSync(file));
  } catch {
    throw new CommandError({ kind: 'no-painter', file: fileURLToPath(file) });
  }
}
