import { expect, type Locator, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The text of a sample design. */
export function sampleText(name: string): string {
  return readFileSync(fileURLToPath(new URL(`../../static/samples/${name}.edgewise.json`, import.meta.url)), 'utf8');
}

/** Takes the browser's own file dialogs away, which no test can reach: files then go in and out the plain way. */
export async function withoutDialogs(page: Page): Promise<void> {
  await page.addInitScript(() => {
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker'])
      Object.defineProperty(window, name, { value: undefined });
  });
}

/** Opens the page and waits until its drawing stands. */
export async function openPage(page: Page, address = './'): Promise<void> {
  await withoutDialogs(page);
  await page.goto(address);
  await expect(drawing(page)).toBeVisible();
}

/** The part of the page that holds the drawing and takes its keys. */
export const canvas = (page: Page): Locator => page.getByRole('application');

/** The drawing itself, which the canvas pans and zooms. */
export const drawing = (page: Page): Locator => canvas(page).locator('svg').first();

/** Sheet mm to one fabric mm. */
export const scaleOf = async (page: Page): Promise<number> => Number(await drawing(page).getAttribute('data-scale'));

/** Left, top, width and height of what is in view, in sheet mm. */
export async function viewOf(page: Page): Promise<[left: number, top: number, width: number, height: number]> {
  const box = await drawing(page).getAttribute('viewBox');
  const [left, top, width, height] = (box ?? '').split(' ').map(Number);
  return [left!, top!, width!, height!];
}

/** The line of an edge on the drawing. */
export const edgeLine = (page: Page, piece: string, edge: string): Locator =>
  drawing(page).locator(`g.edge[data-piece="${piece}"][data-edge="${edge}"] path.outline`);

/** A place on screen on the middle of an edge. */
export async function middleOf(page: Page, piece: string, edge: string): Promise<{ x: number; y: number }> {
  return edgeLine(page, piece, edge).evaluate((path) => {
    const line = path as SVGPathElement;
    const { x, y } = line.getPointAtLength(line.getTotalLength() / 2).matrixTransform(line.getScreenCTM()!);
    return { x, y };
  });
}

/** The row of an edge in the table of edges. */
export const edgeRow = (page: Page, piece: string, edge: string): Locator =>
  page.locator(`tr[data-piece="${piece}"][data-edge="${edge}"]`);

/** The count of the pick-up that is shown. */
export const count = (page: Page): Locator => page.getByTestId('count');

/** Gives the page a design file, as if it had been chosen in the dialog. */
export async function chooseFile(page: Page, name: string, text: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await (await chooser).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Collects what goes wrong inside the page. */
export function faultsOf(page: Page): string[] {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    // The test runner says itself that it keeps service workers away.
    if (message.text() === 'Service Worker registration blocked by Playwright') return;
    if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
  });
  return faults;
}
