import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startFirefox, type Firefox } from './firefox';
import {
  chooseFile,
  count,
  eventually,
  howMany,
  isOff,
  keys,
  leave,
  middleOf,
  openPage,
  press,
  scaleOf,
  spotOf,
  textOf,
  undoAll,
  viewOf,
  type Spot,
} from './page';
import { sampleText } from './sample';

let firefox: Firefox;
beforeAll(async () => {
  firefox = await startFirefox();
});
afterAll(() => firefox.close());

const NECK = 'corner front neck-center';

/** The column and the row of a grip, as its label tells them. */
async function placeOf(page: Page, name: string): Promise<[column: number, row: number]> {
  const label = await page.$eval(`[data-grip="${name}"]`, (grip) => grip.getAttribute('aria-label')!);
  const [, column, row] = /, ([\d.,−-]+) from the left, row ([\d.,−-]+)$/.exec(label)!;
  return [Number(column), Number(row)];
}

const gripAt = (page: Page, name: string): Promise<Spot> => spotOf(page, `[data-grip="${name}"] .shape`);

/** Takes the outline's tool up. */
async function shape(page: Page): Promise<void> {
  await press(page, 'Shape the outline');
  await page.waitForSelector(`[data-grip="${NECK}"]`);
}

/** Takes hold of a grip and moves it by stitches and rows of the sample's front; it stays in the hand. */
async function takeBy(page: Page, name: string, stitches: number, rows: number): Promise<void> {
  const { stitch } = await middleOf(page, 'front', 'cast-on', 78);
  const { x, y } = await gripAt(page, name);
  await page.mouse.move(x, y);
  await page.mouse.down();
  // 22 stitches and 30 rows to 10 cm.
  await page.mouse.move(x + stitches * stitch, y - (rows * stitch * 22) / 30, { steps: 3 });
}

/** Goes on with the Tab key until something with such a label has the focus. */
async function tabTo(page: Page, label: string): Promise<void> {
  await page.focus('[role="application"]');
  for (let i = 0; i < 80; i++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
    if (at.startsWith(label)) return;
  }
  throw new Error(`nothing named ${label} can be reached by the Tab key`);
}

it('zooms about the pointer with the wheel, and a drag moves the drawing until Escape puts it back', async () => {
  const page = await openPage(firefox);
  const at = await middleOf(page, 'front', 'neck-curve-left');
  const [scale, fitted] = [await scaleOf(page), await viewOf(page)];
  await page.mouse.move(at.x, at.y);
  for (let i = 0; i < 3; i++) await page.mouse.wheel({ deltaY: -100 });
  await eventually(() => scaleOf(page)).toBeGreaterThan(scale * 1.5);
  const under = await middleOf(page, 'front', 'neck-curve-left');
  expect(Math.hypot(under.x - at.x, under.y - at.y)).toBeLessThan(2);
  await press(page, 'Fit');
  await eventually(() => viewOf(page)).toEqual(fitted);

  await page.mouse.move(400, 600);
  await page.mouse.down();
  await page.mouse.move(460, 560, { steps: 4 });
  const moved = await middleOf(page, 'front', 'neck-curve-left');
  expect(moved.x - at.x).toBeCloseTo(60, 0);
  expect(moved.y - at.y).toBeCloseTo(-40, 0);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  for (const [i, value] of (await viewOf(page)).entries()) expect(value).toBeCloseTo(fitted[i]!, 6);
  await leave(page);
});

it('drags a corner with its twin: the count follows, it is one step, and undo takes it back', async () => {
  const page = await openPage(firefox);
  expect(await count(page)).toBe('84');
  await shape(page);
  await takeBy(page, NECK, 0, -10);
  await eventually(() => count(page)).not.toBe('84');
  const held = await count(page);
  expect(await placeOf(page, NECK)).toEqual([45, 94]);
  expect(await placeOf(page, 'corner front neck-curve-right')).toEqual([33, 94]);
  expect(await isOff(page, 'Undo')).toBe(true);
  await page.mouse.up();
  await eventually(() => howMany(page, '.held')).toBe(0);
  expect(await count(page)).toBe(held);
  await press(page, 'Undo');
  await eventually(() => count(page)).toBe('84');
  expect(await placeOf(page, NECK)).toEqual([45, 104]);
  expect(await isOff(page, 'Undo')).toBe(true);

  // An edge is bent by its middle, and its twin with it.
  await takeBy(page, 'middle front side-left', -5, 0);
  await page.mouse.up();
  await page.waitForSelector('[data-grip="handle front side-left 0"]');
  expect((await placeOf(page, 'middle front side-left'))[0]).toBeCloseTo(73, 0);
  expect((await placeOf(page, 'middle front side-right'))[0]).toBeCloseTo(5, 0);
  expect(await undoAll(page)).toBe(1);

  // A finger moves a corner as a mouse does.
  const { stitch } = await middleOf(page, 'front', 'cast-on', 78);
  const { x, y } = await gripAt(page, NECK);
  const touch = await page.touchscreen.touchStart(x, y);
  await touch.move(x, y + 4 * stitch);
  await touch.move(x, y + (12 * stitch * 22) / 30);
  await touch.end();
  expect(await placeOf(page, NECK)).toEqual([45, 92]);
  expect(await undoAll(page)).toBe(1);
  await leave(page);
});

it('puts a corner back when the pointer is taken away, on Escape, on a lost focus, and where lines cross', async () => {
  const page = await openPage(firefox);
  await shape(page);
  const view = await viewOf(page);
  const breaks: Readonly<Record<string, () => Promise<unknown>>> = {
    pointercancel: () =>
      page.$eval('[role="application"]', (host) =>
        host.dispatchEvent(new PointerEvent('pointercancel', { pointerId: 0, pointerType: 'mouse', bubbles: true })),
      ),
    Escape: () => page.keyboard.press('Escape'),
    'lost focus': () => page.evaluate(() => window.dispatchEvent(new Event('blur'))),
  };
  for (const [what, broken] of Object.entries(breaks)) {
    await takeBy(page, NECK, 1, -8);
    expect(await howMany(page, '.held'), what).toBeGreaterThan(0);
    await broken();
    await eventually(() => howMany(page, '.held')).toBe(0);
    await page.mouse.move(500, 500);
    await page.mouse.up();
    expect(await placeOf(page, NECK), what).toEqual([45, 104]);
    expect(await viewOf(page), what).toEqual(view);
    expect(await isOff(page, 'Undo'), what).toBe(true);
  }

  await takeBy(page, 'corner front neck-curve-left', 7, 6);
  await page.waitForSelector('.crossing circle');
  await page.mouse.up();
  await eventually(() => howMany(page, '.crossing')).toBe(0);
  expect(await placeOf(page, 'corner front neck-curve-left')).toEqual([54, 118]);
  expect(await isOff(page, 'Undo')).toBe(true);
  await leave(page);
});

it('is worked by the keys alone: a corner is reached, nudged, set by numbers, and all undone', async () => {
  const page = await openPage(firefox);
  await page.focus('[role="application"]');
  await page.keyboard.press('e');
  await page.waitForSelector(`[data-grip="${NECK}"]`);
  await tabTo(page, 'Front: Corner 8 of 14, where center neck begins');
  await page.keyboard.press('ArrowLeft');
  await keys(page, 'Shift ArrowDown');
  expect(await placeOf(page, NECK)).toEqual([44, 94]);
  await page.keyboard.press('Enter');
  await page.waitForSelector('form input');
  await page.keyboard.type('47');
  await page.keyboard.press('Tab');
  await page.keyboard.type('100');
  await page.keyboard.press('Enter');
  await eventually(() => placeOf(page, NECK)).toEqual([47, 100]);
  const focused = await page.evaluate(() => document.activeElement?.getAttribute('data-grip'));
  expect(focused).toBe(NECK);
  for (let i = 0; i < 3; i++) await keys(page, 'Control z');
  await eventually(() => placeOf(page, NECK)).toEqual([45, 104]);
  expect(await isOff(page, 'Undo')).toBe(true);
  await leave(page);
});

it('takes the edges of a pick-up in the order in which they are pressed', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'edgewise-choose-'));
  try {
    const path = join(folder, 'bare.json');
    writeFileSync(
      path,
      JSON.stringify({ ...(JSON.parse(sampleText('pullover')) as object), name: 'Bare', pickups: [] }),
    );
    const page = await openPage(firefox);
    await chooseFile(page, path);
    await eventually(() => page.title()).toMatch(/^Bare/);
    await press(page, 'Choose edges');
    await page.waitForSelector('[data-choose="front neck-center"]');
    const chosen = ['neck-curve-left', 'neck-center', 'neck-curve-right'];
    for (const [i, edge] of chosen.entries()) {
      const { x, y } = await middleOf(page, 'front', edge);
      await page.mouse.click(x, y);
      await eventually(() => textOf(page, `[data-choose="front ${edge}"] text`)).toBe(`${i + 1}`);
    }
    await eventually(() => count(page)).toMatch(/^\d+$/);
    const before = await count(page);
    await tabTo(page, 'Front, center neck');
    await page.keyboard.press('Enter');
    await eventually(() => count(page)).not.toBe(before);
    await leave(page);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
