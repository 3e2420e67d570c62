import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { KeyInput, Page } from 'puppeteer-core';
import { expect } from 'vitest';
import { address, type Firefox } from './firefox';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** How long the page may take for what is to become of something, ms: a slow machine is given time. */
const patience = { timeout: 20_000, interval: 50 };

/** Waits until `look` finds what is expected. */
export const eventually = <T>(look: () => Promise<T> | T) => expect.poll(look, patience);

/** What went wrong inside each page. */
const faults = new WeakMap<Page, string[]>();

/** Opens the page in a browser that has never seen it, and waits until its drawing stands. */
export async function openPage({ browser }: Firefox, hash = ''): Promise<Page> {
  const page = await (await browser.createBrowserContext()).newPage();
  const seen: string[] = [];
  faults.set(page, seen);
  page.on('pageerror', (error) => seen.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warn') seen.push(message.text());
  });
  await page.goto(`${address()}${hash}`);
  await drawn(page);
  return page;
}

/** Waits until the drawing stands. */
export async function drawn(page: Page): Promise<void> {
  await page.waitForSelector('[role="application"] svg', { visible: true });
}

/** Leaves the page and forgets its browser; nothing may have gone wrong in it. */
export async function leave(page: Page): Promise<void> {
  const seen = faults.get(page)!;
  await page.browserContext().close();
  expect(seen).toEqual([]);
}

export async function textOf(page: Page, selector: string): Promise<string | null> {
  return page.evaluate((asked) => document.querySelector(asked)?.textContent.trim() ?? null, selector);
}

/** The number of elements that such a selector finds. */
export const howMany = (page: Page, selector: string): Promise<number> =>
  page.evaluate((asked) => document.querySelectorAll(asked).length, selector);

export const count = (page: Page): Promise<string | null> => textOf(page, '[data-testid="count"]');

/** Presses a button by its words with the mouse. */
export async function press(page: Page, words: string, within = 'body'): Promise<void> {
  const selector = `${within} ::-p-xpath(.//button[normalize-space()="${words}"])`;
  await (await page.waitForSelector(selector, { visible: true }))!.click();
}

export const isOff = (page: Page, words: string): Promise<boolean> =>
  page.evaluate(
    (asked) => [...document.querySelectorAll('button')].find((one) => one.textContent.trim() === asked)!.disabled,
    words,
  );

/** Presses keys together, as `Control z`. */
export async function keys(page: Page, together: string): Promise<void> {
  const all = together.split(' ') as KeyInput[];
  const last = all.pop()!;
  for (const key of all) await page.keyboard.down(key);
  await page.keyboard.press(last);
  for (const key of all.reverse()) await page.keyboard.up(key);
}

/** Undoes everything; resolves to the number of steps that there were. */
export function undoAll(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const undo = [...document.querySelectorAll('button')].find((one) => one.textContent.trim() === 'Undo')!;
    let steps = 0;
    for (; !undo.disabled; steps++) {
      undo.click();
      await new Promise(requestAnimationFrame);
    }
    return steps;
  });
}

/** Where the middle of an element is on screen. */
export function spotOf(page: Page, selector: string): Promise<Spot> {
  return page.evaluate((asked) => {
    const { x, y, width, height } = document.querySelector(asked)!.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  }, selector);
}

/** A place on screen on the middle of an edge, and the size of one of its stitches there if it has so many. */
export function middleOf(page: Page, piece: string, edge: string, stitches = 1): Promise<Spot & { stitch: number }> {
  return page.evaluate(
    (asked, stitches) => {
      const line = document.querySelector<SVGPathElement>(asked)!;
      const matrix = line.getScreenCTM()!;
      const { x, y } = line.getPointAtLength(line.getTotalLength() / 2).matrixTransform(matrix);
      return { x, y, stitch: (line.getTotalLength() * matrix.a) / stitches };
    },
    `g.edge[data-piece="${piece}"][data-edge="${edge}"] path.outline`,
    stitches,
  );
}

/** Left, top, width and height of what is in view, in sheet mm. */
export function viewOf(page: Page): Promise<number[]> {
  return page.evaluate(() =>
    document.querySelector('[role="application"] svg')!.getAttribute('viewBox')!.split(' ').map(Number),
  );
}

/** Sheet mm to one fabric mm. */
export const scaleOf = (page: Page): Promise<number> =>
  page.evaluate(() => Number(document.querySelector('[role="application"] svg')!.getAttribute('data-scale')));

/** Gives the page a design file through the browser's own dialog. */
export async function chooseFile(page: Page, path: string): Promise<void> {
  const [chooser] = await Promise.all([page.waitForFileChooser(), press(page, 'Open')]);
  await chooser.accept([path]);
}

/** Types into a field over what was there, and takes it. */
export async function fill(page: Page, field: string, text: string): Promise<void> {
  await page.waitForSelector(field, { visible: true });
  await page.focus(field);
  await keys(page, 'Control a');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** The only file in the folder of downloads, which is then taken out of it. */
export async function downloadedBytes({ downloads }: Firefox, name: string): Promise<Buffer> {
  const path = join(downloads, name);
  await eventually(() => existsSync(path) && !readdirSync(downloads).some((one) => one.endsWith('.part'))).toBe(true);
  let bytes = Buffer.alloc(0);
  await eventually(() => (bytes = readFileSync(path)).length).toBeGreaterThan(0);
  rmSync(path);
  return bytes;
}

/** Its text. */
export async function downloaded(firefox: Firefox, name: string): Promise<string> {
  return (await downloadedBytes(firefox, name)).toString();
}
