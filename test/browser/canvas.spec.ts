import { expect, test, type Page } from '@playwright/test';
import {
  canvas,
  chooseFile,
  drawing,
  edgeLine,
  edgeRow,
  middleOf,
  openPage,
  sampleText,
  scaleOf,
  viewOf,
} from './page';

const EDGE = ['front', 'neck-curve-left'] as const;

/** Where an edge lies on screen. */
async function screenBox(page: Page, piece: string, edge: string) {
  const box = await edgeLine(page, piece, edge).boundingBox();
  return box!;
}

test('the drawing is zoomed, moved and fitted, and can not be lost', async ({ page }) => {
  await openPage(page);
  await test.step('the wheel zooms about the pointer: what was under it stays there', async () => {
    const at = await middleOf(page, ...EDGE);
    const before = await scaleOf(page);
    await page.mouse.move(at.x, at.y);
    for (let i = 0; i < 4; i++) await page.mouse.wheel(0, -100);
    await expect.poll(() => scaleOf(page)).toBeGreaterThan(before * 1.5);
    const after = await middleOf(page, ...EDGE);
    expect(Math.hypot(after.x - at.x, after.y - at.y)).toBeLessThan(2);
    for (let i = 0; i < 4; i++) await page.mouse.wheel(0, 100);
    await expect.poll(() => scaleOf(page)).toBeCloseTo(before, 6);
  });

  await test.step('zoomed in, the stitches themselves are drawn; zoomed out, the shape', async () => {
    await expect(drawing(page)).toHaveAttribute('data-detail', 'shape');
    await page.getByRole('button', { name: 'Picked edges' }).click();
    for (let i = 0; i < 6; i++) await page.getByRole('button', { name: 'Zoom in' }).click();
    await expect(drawing(page)).toHaveAttribute('data-detail', 'stitches');
    await expect(drawing(page).locator('path.knit').first()).toBeAttached();
    // Only what is in view is built: the piece has nearly ten thousand stitches.
    const data = await drawing(page)
      .locator('path.knit')
      .evaluateAll((paths) => paths.map((path) => path.getAttribute('d')!));
    const stitches = data.join('').split('M').length - 1;
    expect(stitches).toBeGreaterThan(50);
    expect(stitches).toBeLessThan(6000);
    await page.getByRole('button', { name: 'Fit', exact: true }).click();
    await expect(drawing(page)).toHaveAttribute('data-detail', 'shape');
  });

  await test.step('a drag moves the drawing with the hand, and Escape puts it back', async () => {
    const box = await screenBox(page, ...EDGE);
    const from = await viewOf(page);
    await page.mouse.move(400, 600);
    await page.mouse.down();
    await page.mouse.move(460, 560, { steps: 4 });
    const moved = await screenBox(page, ...EDGE);
    expect(moved.x - box.x).toBeCloseTo(60, 0);
    expect(moved.y - box.y).toBeCloseTo(-40, 0);
    await page.keyboard.press('Escape');
    for (const [i, value] of (await viewOf(page)).entries()) expect(value).toBeCloseTo(from[i]!, 6);
    // The finger that is still down moves nothing any more.
    await page.mouse.move(500, 500);
    await page.mouse.up();
    for (const [i, value] of (await viewOf(page)).entries()) expect(value).toBeCloseTo(from[i]!, 6);
  });

  await test.step('keys zoom, move and fit once the drawing has the focus', async () => {
    await canvas(page).focus();
    const scale = await scaleOf(page);
    await page.keyboard.press('+');
    await expect.poll(() => scaleOf(page)).toBeCloseTo(scale * 1.25, 6);
    await page.keyboard.press('-');
    await expect.poll(() => scaleOf(page)).toBeCloseTo(scale, 6);
    const [left, top] = await viewOf(page);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowDown');
    const [right, down] = await viewOf(page);
    expect(right).toBeGreaterThan(left);
    expect(down).toBeGreaterThan(top);
    await page.keyboard.press('0');
    for (const edge of ['cast-on', 'shoulder-left', 'side-right']) {
      await expect(edgeLine(page, 'front', edge)).toBeInViewport({ ratio: 1 });
    }
    await page.keyboard.press('1');
    await expect.poll(() => scaleOf(page)).toBeGreaterThan(scale);
    await expect(edgeLine(page, ...EDGE)).toBeInViewport({ ratio: 1 });
  });

  await test.step('the pieces of a pick-up are seen one at a time, or all together', async () => {
    await page.keyboard.press('0');
    await expect(edgeLine(page, 'back', 'neck-center')).toHaveCount(0);
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await expect(edgeLine(page, 'back', 'neck-center')).toBeInViewport({ ratio: 1 });
    await expect(edgeLine(page, 'front', 'neck-center')).toHaveCount(0);
    await page.getByRole('button', { name: 'All', exact: true }).click();
    for (const piece of ['front', 'back']) {
      for (const edge of ['cast-on', 'neck-center']) {
        await expect(edgeLine(page, piece, edge)).toBeInViewport({ ratio: 1 });
      }
    }
  });

  await test.step('a drawing can not be lost out of sight', async () => {
    await canvas(page).focus();
    for (let i = 0; i < 60; i++) await page.keyboard.press('ArrowLeft');
    const [left, , width] = await viewOf(page);
    expect(left + width).toBeGreaterThan(20);
  });

  await test.step('what is left as it was is drawn as it was: the view stays when a count changes', async () => {
    await canvas(page).focus();
    await page.keyboard.press('0');
    await page.keyboard.press('+');
    await page.keyboard.press('ArrowRight');
    const view = await viewOf(page);
    const field = edgeRow(page, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ });
    await field.fill('11');
    await field.press('Enter');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
    expect(await viewOf(page)).toEqual(view);
  });

  await test.step('a large blanket can be zoomed into', async () => {
    await chooseFile(page, 'blanket.json', sampleText('blanket'));
    await expect(page).toHaveTitle(/blanket/);
    const scale = await scaleOf(page);
    await page.mouse.move(400, 400);
    for (let i = 0; i < 10; i++) await page.mouse.wheel(0, -100);
    await expect.poll(() => scaleOf(page)).toBeGreaterThan(scale * 5);
  });
});

test('an edge, a row and an opening are told by pointer, by focus and by keys', async ({ page }) => {
  await openPage(page);
  await test.step('an edge under the pointer lights up with its row, and is told in words', async () => {
    const { x, y } = await middleOf(page, 'front', 'side-left');
    await page.mouse.move(x, y);
    await expect(canvas(page).locator('polyline[data-edge="side-left"]')).toHaveCount(1);
    await expect(page.getByText('Front, left side', { exact: true })).toBeVisible();
    const on = await middleOf(page, ...EDGE);
    await page.mouse.move(on.x, on.y);
    await expect(canvas(page).locator(`polyline[data-edge="${EDGE[1]}"]`)).toHaveCount(1);
    await expect(edgeRow(page, ...EDGE)).toHaveClass(/\blit\b/);
    await page.mouse.move(5, 5);
    await expect(canvas(page).locator('polyline')).toHaveCount(0);
  });

  await test.step('a row lights up its edge on the drawing, by pointer and by focus', async () => {
    await edgeRow(page, ...EDGE).hover();
    await expect(canvas(page).locator(`polyline[data-edge="${EDGE[1]}"]`)).toHaveCount(1);
    await edgeRow(page, 'front', 'neck-center').getByRole('textbox').first().focus();
    await page.mouse.move(5, 5);
    await expect(canvas(page).locator('polyline[data-edge="neck-center"]')).toHaveCount(1);
  });

  await test.step('an opening under the pointer is told: its number and where the needle goes', async () => {
    await page.getByRole('button', { name: 'Picked edges' }).click();
    // The first path of the used openings begins on the left of its first dot.
    const dot = await drawing(page)
      .locator(`g.edge[data-edge="${EDGE[1]}"] path.used`)
      .evaluate((path) => {
        const line = path as SVGPathElement;
        const [, x, y, r] = /^M([\d.-]+),([\d.-]+)a([\d.]+)/.exec(line.getAttribute('d')!)!.map(Number);
        const spot = new DOMPoint(x! + r!, y).matrixTransform(line.getScreenCTM()!);
        return { x: spot.x, y: spot.y };
      });
    await page.mouse.move(dot.x, dot.y);
    await expect(page.getByText(/^Front, left neck curve: stitch 7 of 84, in (row|stitch) \d+/)).toBeVisible();
  });

  await test.step('square brackets go from edge to edge along the pick-up and are told aloud', async () => {
    await page.mouse.move(5, 5);
    await canvas(page).focus();
    await page.keyboard.press('Escape');
    await expect(canvas(page).locator('polyline')).toHaveCount(0);
    await page.keyboard.press(']');
    await expect(canvas(page).locator('polyline[data-edge="neck-straight-left"]')).toHaveCount(1);
    await expect(page.locator('[aria-live]')).toContainText('Front, upper left neck: 6 stitches from 8 rows');
    await page.keyboard.press(']');
    await expect(canvas(page).locator(`polyline[data-edge="${EDGE[1]}"]`)).toHaveCount(1);
    await page.keyboard.press('[');
    await page.keyboard.press('[');
    await expect(canvas(page).locator('polyline[data-piece="back"]')).toHaveCount(1);
    await page.keyboard.press('Escape');
    await expect(canvas(page).locator('polyline')).toHaveCount(0);
  });

  await test.step('full stop and comma go from point to point, Home and End to the first and last', async () => {
    const told = page.locator('.readout');
    for (const [key, edge, n] of [
      ['Home', 'upper left neck', 1],
      ['.', 'upper left neck', 2],
      [',', 'upper left neck', 1],
      [',', 'left neck slope', 84],
      ['.', 'upper left neck', 1],
      ['End', 'left neck slope', 84],
    ] as const) {
      await page.keyboard.press(key);
      await expect(told).toContainText(`${edge}: stitch ${n} of 84`);
      await expect(page.locator('[aria-live]').first()).toContainText(`stitch ${n} of 84`);
      await expect(canvas(page).locator('circle.found')).toBeInViewport();
    }
    await page.keyboard.press('Escape');
    await expect(told).toHaveCount(0);
    await expect(canvas(page).locator('circle.found')).toHaveCount(0);
  });
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  type Touch = (
    type: 'touchStart' | 'touchMove' | 'touchEnd',
    ...at: (readonly [number, number])[]
  ) => Promise<unknown>;

  /** Sends touches as the browser gets them from a screen. */
  async function touchOn(page: Page): Promise<Touch> {
    const session = await page.context().newCDPSession(page);
    return (type, ...at) =>
      session.send('Input.dispatchTouchEvent', { type, touchPoints: at.map(([x, y], id) => ({ x, y, id })) });
  }

  test('one finger moves the drawing, two zoom it, a tap chooses an edge', async ({ page }) => {
    await openPage(page);
    const touch = await touchOn(page);
    const box = (await canvas(page).boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const before = await viewOf(page);
    await touch('touchStart', [x, y]);
    await touch('touchMove', [x + 20, y + 5]);
    await touch('touchMove', [x + 40, y + 10]);
    await touch('touchEnd');
    const panned = await viewOf(page);
    expect(panned[0]).toBeLessThan(before[0]);
    const scale = await scaleOf(page);
    await touch('touchStart', [x - 40, y], [x + 40, y]);
    await touch('touchMove', [x - 60, y], [x + 60, y]);
    await touch('touchMove', [x - 80, y], [x + 80, y]);
    await touch('touchEnd');
    expect(await scaleOf(page)).toBeCloseTo(scale * 2, 1);

    await test.step('a second finger that joins a drag goes on from there', async () => {
      await touch('touchStart', [x, y]);
      await touch('touchMove', [x + 30, y]);
      const dragged = await viewOf(page);
      await touch('touchStart', [x + 30, y], [x + 90, y]);
      expect(await viewOf(page)).toEqual(dragged);
      await touch('touchEnd');
    });

    await test.step('a tap chooses an edge, and the drawing stays where it is', async () => {
      await page.getByRole('button', { name: 'Picked edges' }).tap();
      const at = await middleOf(page, 'front', 'neck-center');
      await page.touchscreen.tap(at.x, at.y);
      await expect(canvas(page).locator('polyline[data-edge="neck-center"]')).toHaveCount(1);
      expect(await page.evaluate(() => scrollY)).toBe(0);
    });
  });
});
