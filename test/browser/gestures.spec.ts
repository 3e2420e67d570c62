import { expect, test, type Page } from '@playwright/test';
import { cellOf, documentOf, pullBy, shape, spotOf, stepsOf, takeBy, touchOn, undoAll, type File } from './grips';
import { canvas, drawing, openPage, scaleOf, viewOf } from './page';

const HELD = 'corner front neck-center';

const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true });

/** All is as it was: the document, the tool, the view, and nothing sticks to the pointer. */
async function expectAsBefore(page: Page, before: File, view: readonly number[]): Promise<void> {
  await page.mouse.move(420, 420);
  await expect(page.locator('.held, .follows, .hint, .crossing, .pane')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Shape the outline' })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator(`[data-grip="${HELD}"]`)).toBeAttached();
  expect(await documentOf(page)).toEqual(before);
  for (const [i, value] of (await viewOf(page)).entries()) expect(value).toBeCloseTo(view[i]!, 6);
}

test('a movement of the mouse that is broken off puts all back and makes no step', async ({ page }) => {
  await openPage(page);
  await shape(page);
  const before = await documentOf(page);
  const view = await viewOf(page);
  const host = canvas(page);

  const breaks: readonly (readonly [string, () => Promise<unknown>])[] = [
    ['pointercancel', () => host.dispatchEvent('pointercancel', { pointerId: 1, pointerType: 'mouse' })],
    // The browser tells of it with the next movement.
    [
      'lost capture',
      () => host.evaluate((element) => element.releasePointerCapture(1)).then(() => page.mouse.move(430, 430)),
    ],
    ['the window loses the focus', () => page.evaluate(() => window.dispatchEvent(new Event('blur')))],
    ['Escape', () => page.keyboard.press('Escape')],
    ['undo', () => page.keyboard.press('Control+z')],
    ['the tool is put down and taken up', () => page.keyboard.press('e').then(() => page.keyboard.press('e'))],
  ];
  for (const [what, broken] of breaks) {
    await test.step(what, async () => {
      await takeBy(page, HELD, 1, -8);
      await expect(page.locator('.held').first()).toBeAttached();
      await broken();
      await expect(page.locator('.held')).toHaveCount(0);
      // What the hand still does with the button down is for nothing, and so is letting go.
      await page.mouse.move(500, 500);
      await page.mouse.up();
      await expectAsBefore(page, before, view);
      await expect(undo(page)).toBeDisabled();
    });
  }

  await test.step('undo in a movement leaves the step before it', async () => {
    await pullBy(page, HELD, 0, -5);
    const once = await documentOf(page);
    await takeBy(page, HELD, 0, -6);
    await page.keyboard.press('Control+z');
    await page.mouse.up();
    await expectAsBefore(page, once, view);
    expect(await stepsOf(page)).toBe(1);
    // With nothing in the hand it undoes that step.
    await page.keyboard.press('Control+z');
    await expectAsBefore(page, before, view);
  });

  await test.step('Delete while the mouse holds a corner waits until it has let go', async () => {
    await takeBy(page, HELD, 0, -8);
    await page.keyboard.press('Delete');
    await page.mouse.up();
    expect(await stepsOf(page)).toBe(1);
    await undoAll(page);
    await expectAsBefore(page, before, view);
  });

  await test.step('a movement that leaves the drawing and ends outside is one step, and nothing sticks', async () => {
    await takeBy(page, 'corner front side-left', 1, 0);
    await page.mouse.move(1000, 500, { steps: 3 });
    await page.mouse.up();
    await page.mouse.move(900, 300);
    await page.mouse.move(420, 420);
    expect(await stepsOf(page)).toBe(1);
    await undoAll(page);
    await expectAsBefore(page, before, view);
  });

  await test.step('a press outside that is let go on the drawing is nothing', async () => {
    const { x, y } = await spotOf(page, HELD);
    await page.mouse.move(1000, 720);
    await page.mouse.down();
    await page.mouse.move(x, y, { steps: 3 });
    await page.mouse.up();
    await expectAsBefore(page, before, view);
    await expect(undo(page)).toBeDisabled();
  });

  await test.step('neither the button on the right nor the one in the middle takes a corner', async () => {
    const { x, y } = await spotOf(page, HELD);
    for (const button of ['middle', 'right'] as const) {
      await page.mouse.move(x, y);
      await page.mouse.down({ button });
      await page.mouse.move(x + 20, y + 30, { steps: 3 });
      await page.keyboard.press('Escape');
      await page.mouse.up({ button });
    }
    await expectAsBefore(page, before, view);
    await expect(undo(page)).toBeDisabled();
  });
});

/** Turns the wheel over a place, a notch at a time, faster than a hand could. */
async function wheel(page: Page, at: { x: number; y: number }, notches: readonly number[]): Promise<void> {
  await canvas(page).evaluate(
    (host, { at, notches }) => {
      for (const notch of notches) {
        host.dispatchEvent(
          new WheelEvent('wheel', {
            deltaY: -100 * notch,
            clientX: at.x,
            clientY: at.y,
            bubbles: true,
            cancelable: true,
          }),
        );
      }
    },
    { at, notches },
  );
}

test('a slip of two pixels makes no step at any zoom, and 500 steps of zoom each way lead back', async ({ page }) => {
  await openPage(page);
  await shape(page);
  const before = await documentOf(page);
  const fitted = await viewOf(page);
  const scale = await scaleOf(page);
  const notches = (to: number) => Math.round(Math.log(to / scale) / Math.log(1.25));

  for (const [to, least, most] of [
    [0.1, 0.08, 0.12],
    [1, 0.9, 1.15],
    [12, 12, 12],
  ] as const) {
    await test.step(`at about ${to}`, async () => {
      const turns = to === 12 ? 24 : notches(to);
      await wheel(
        page,
        await spotOf(page, HELD),
        Array.from({ length: Math.abs(turns) }, () => Math.sign(turns)),
      );
      await expect.poll(() => scaleOf(page)).toBeGreaterThanOrEqual(least);
      expect(await scaleOf(page)).toBeLessThanOrEqual(most);
      const view = await viewOf(page);
      const { x, y } = await spotOf(page, HELD);
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + 2, y);
      await expect(page.locator('.held')).toHaveCount(0);
      await page.mouse.up();
      await expect(undo(page)).toBeDisabled();
      await expectAsBefore(page, before, view);
      await page.keyboard.press('0');
      await expect.poll(() => viewOf(page)).toEqual(fitted);
    });
  }

  await test.step('500 steps in and out by turns', async () => {
    const at = await spotOf(page, HELD);
    await wheel(
      page,
      at,
      Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 1 : -1)),
    );
    const view = await viewOf(page);
    for (const [i, value] of view.entries()) expect(value).toBeCloseTo(fitted[i]!, 6);
    expect(await scaleOf(page)).toBeCloseTo(scale, 9);
  });

  await test.step('500 steps in, 500 out, and fitted again', async () => {
    const at = await spotOf(page, HELD);
    await wheel(
      page,
      at,
      Array.from({ length: 500 }, () => 1),
    );
    await expect.poll(() => scaleOf(page)).toBe(12);
    await wheel(
      page,
      at,
      Array.from({ length: 500 }, () => -1),
    );
    await expect.poll(() => scaleOf(page)).toBe(0.01);
    for (const value of await viewOf(page)) expect(Number.isFinite(value)).toBe(true);
    await canvas(page).focus();
    await page.keyboard.press('0');
    await expect.poll(() => viewOf(page)).toEqual(fitted);
    await expect(drawing(page)).toHaveAttribute('data-detail', 'shape');
    await expectAsBefore(page, before, fitted);
    await expect(undo(page)).toBeDisabled();
  });
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, viewport: { width: 1280, height: 800 } });

  test('a finger taken away by the system, a second finger, and a key in mid-movement', async ({ page }) => {
    await openPage(page);
    await shape(page);
    const before = await documentOf(page);
    const view = await viewOf(page);
    const touch = await touchOn(page);
    const cell = await cellOf(page);
    const from = await spotOf(page, HELD);
    const to = { x: from.x, y: from.y + 8 * cell.row };
    const hold = async () => {
      await touch('touchStart', from);
      await touch('touchMove', { x: from.x, y: from.y + 4 * cell.row });
      await touch('touchMove', to);
      await expect(page.locator('.held').first()).toBeAttached();
    };

    await test.step('taken away', async () => {
      await hold();
      await touch('touchCancel');
      await expectAsBefore(page, before, view);
      await expect(undo(page)).toBeDisabled();
    });

    await test.step('a second finger lets go of the corner and looks at the drawing', async () => {
      await hold();
      const other = { x: to.x + 120, y: to.y };
      await touch('touchStart', to, other);
      await expect(page.locator('.held')).toHaveCount(0);
      const scale = await scaleOf(page);
      await touch('touchMove', { x: to.x - 60, y: to.y }, { x: other.x + 60, y: other.y });
      await expect.poll(() => scaleOf(page)).toBeCloseTo(2 * scale, 1);
      await touch('touchEnd');
      await page.getByRole('button', { name: 'Fit', exact: true }).tap();
      await expectAsBefore(page, before, view);
      await expect(undo(page)).toBeDisabled();
    });

    await test.step('Delete takes the corner out, and the hand that held it holds nothing', async () => {
      await page.locator(`[data-grip="${HELD}"]`).focus();
      await hold();
      await page.keyboard.press('Delete');
      await expect(page.locator(`[data-grip="${HELD}"]`)).toHaveCount(0);
      await touch('touchMove', { x: to.x + 40, y: to.y + 40 });
      await touch('touchEnd');
      expect(await stepsOf(page)).toBe(1);
      await undoAll(page);
      await expectAsBefore(page, before, view);
    });

    await test.step('a finger that trembles is a press', async () => {
      await touch('touchStart', from);
      await touch('touchMove', { x: from.x + 4, y: from.y + 3 });
      await touch('touchEnd');
      await expect(page.locator(`[data-grip="${HELD}"]`)).toHaveAttribute('aria-pressed', 'true');
      await expectAsBefore(page, before, view);
      await expect(undo(page)).toBeDisabled();
    });
  });
});
