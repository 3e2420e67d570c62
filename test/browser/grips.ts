import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page } from '@playwright/test';
import { canvas, edgeLine } from './page';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** What the tests read of a design file. */
export interface File {
  readonly name: string;
  readonly hand: string;
  readonly pieces: readonly {
    readonly id: string;
    readonly outline: readonly {
      readonly id: string;
      readonly from: readonly [number, number];
      readonly path: string;
      readonly handles?: readonly (readonly [number, number])[];
    }[];
  }[];
  readonly pickups: readonly {
    readonly id: string;
    readonly joined?: boolean;
    readonly along: readonly { readonly piece: string; readonly edge: string; readonly backwards?: boolean }[];
  }[];
}

/** A grip of an outline by its name: `corner front cast-on`, `middle front cast-on`, `handle front neck 0`. */
export const grip = (page: Page, name: string): Locator => page.locator(`[data-grip="${name}"]`);

/** Where a grip is on screen. */
export async function spotOf(page: Page, name: string): Promise<Spot> {
  return grip(page, name)
    .locator('.shape')
    .evaluate((shape) => {
      const { x, y, width, height } = shape.getBoundingClientRect();
      return { x: x + width / 2, y: y + height / 2 };
    });
}

/** The column and the row of a grip, counted from the lower left corner of its piece, as its label tells them. */
export async function placeOf(page: Page, name: string): Promise<[column: number, row: number]> {
  const label = (await grip(page, name).getAttribute('aria-label'))!;
  const [, column, row] = /, ([\d.,−-]+) from the left, row ([\d.,−-]+)$/.exec(label)!;
  return [Number(column), Number(row)];
}

/** The size on screen of a stitch and a row of the sample's front, of which 78 stitches are cast on. */
export async function cellOf(page: Page): Promise<{ stitch: number; row: number }> {
  const line = edgeLine(page, 'front', 'cast-on');
  return line.evaluate((path) => {
    const line = path as SVGPathElement;
    const stitch = (line.getTotalLength() * line.getScreenCTM()!.a) / 78;
    // 22 stitches and 30 rows to 10 cm.
    return { stitch, row: (stitch * 22) / 30 };
  });
}

/** Takes the outline's tool up. */
export async function shape(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Shape the outline' }).click();
  await expect(page.locator('[data-grip]').first()).toBeAttached();
}

/** Takes hold of a grip with the mouse and moves it by stitches and rows; it stays in the hand. */
export async function takeBy(page: Page, name: string, stitches: number, rows: number): Promise<Spot> {
  const cell = await cellOf(page);
  const from = await spotOf(page, name);
  const to = { x: from.x + stitches * cell.stitch, y: from.y - rows * cell.row };
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 3 });
  return to;
}

export async function pullBy(page: Page, name: string, stitches: number, rows: number): Promise<void> {
  await takeBy(page, name, stitches, rows);
  await page.mouse.up();
}

/** The document as it would be saved just now. */
export async function documentOf(page: Page): Promise<File> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  return JSON.parse(readFileSync(await (await download).path(), 'utf8')) as File;
}

/** The corner of a piece at which an edge begins. */
export function cornerIn(file: File, piece: string, edge: string): readonly [number, number] {
  return edgeIn(file, piece, edge).from;
}

export function edgeIn(file: File, piece: string, edge: string): File['pieces'][number]['outline'][number] {
  return file.pieces.find(({ id }) => id === piece)!.outline.find(({ id }) => id === edge)!;
}

/** Presses Undo until there is nothing left, and then Redo as often where all is to be made again. */
function rewind(page: Page, again: boolean): Promise<number> {
  return page.evaluate(async (again) => {
    const button = (name: string) =>
      [...document.querySelectorAll('button')].find((one) => one.textContent.trim() === name)!;
    const press = (name: string) => {
      button(name).click();
      return new Promise(requestAnimationFrame);
    };
    let steps = 0;
    for (; !button('Undo').disabled; steps++) await press('Undo');
    for (let i = 0; again && i < steps; i++) await press('Redo');
    return steps;
  }, again);
}

/** The number of steps that can be undone: undoes them all and makes them again. */
export function stepsOf(page: Page): Promise<number> {
  return rewind(page, true);
}

/** Undoes everything. */
export async function undoAll(page: Page): Promise<void> {
  await rewind(page, false);
}

/** Goes on with the Tab key from the drawing until something with such a label has the focus. */
export async function tabTo(page: Page, label: string): Promise<void> {
  await canvas(page).focus();
  for (let i = 0; i < 80; i++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
    if (at.startsWith(label)) return;
  }
  throw new Error(`nothing named ${label} can be reached by the Tab key`);
}

/** Sends touches as the browser gets them from a screen. */
export async function touchOn(page: Page) {
  const session = await page.context().newCDPSession(page);
  return (type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel', ...at: readonly Spot[]): Promise<unknown> =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints: at.map(({ x, y }, id) => ({ x, y, id })) });
}
