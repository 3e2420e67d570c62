import { expect, test, type Locator, type Page } from '@playwright/test';
import { faultsIn } from './faults';
import { faultsOf, openPage } from './page';

const view = (page: Page): Locator => page.getByRole('dialog', { name: 'At the needles' });
const button = (page: Page, name: string | RegExp): Locator => view(page).getByRole('button', { name });
const onNeedle = (page: Page): Locator => view(page).getByTestId('on-needle');
const now = (page: Page): Locator => view(page).getByTestId('now');
const step = (page: Page): Locator => view(page).locator('g.over');

/** How long a page may take to come up, ms. */
const COMING = { timeout: 20_000 } as const;

async function open(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'At the needles' }).click();
  await expect(step(page)).toBeAttached();
}

/** The buttons and fields of the view that can be pressed, and are smaller than 48 px or not wholly in sight. */
const tooSmall = (page: Page): Promise<string[]> =>
  view(page).evaluate((dialog) =>
    [...dialog.querySelectorAll('button, input')].flatMap((one) => {
      const { width, height, left, top, right, bottom } = one.getBoundingClientRect();
      const inSight = left >= 0 && top >= 0 && right <= innerWidth + 0.5 && bottom <= innerHeight + 0.5;
      return width >= 48 && height >= 48 && inSight
        ? []
        : [`${one.textContent}: ${width} × ${height} at ${left}, ${top}`];
    }),
  );

/** Whether what is lit lies in sight, as a part of the drawing. */
const litInSight = (page: Page): Promise<boolean> =>
  step(page).evaluate((group) => {
    const lit = group.querySelector('.now')!.getBoundingClientRect();
    const sheet = group.closest('svg')!.getBoundingClientRect();
    return lit.left >= sheet.left && lit.right <= sheet.right && lit.top >= sheet.top && lit.bottom <= sheet.bottom;
  });

test.describe('on a telephone', () => {
  test.use({ viewport: { width: 360, height: 740 }, hasTouch: true });

  test('one hand goes through a pick-up: targets, drawing, miscount, rotation, reload, a killed tab', async ({
    page,
    context,
  }) => {
    const faults = faultsOf(page);
    await openPage(page);
    await open(page);
    await expect(onNeedle(page)).toHaveText('0');
    await expect(now(page)).toContainText('2, skip 1, twice; then 2');
    expect(await tooSmall(page)).toEqual([]);
    for (let n = 1; n <= 6; n++) {
      await button(page, 'Done').tap();
      await expect(step(page)).toHaveAttribute('data-step', String(n));
      await expect.poll(() => litInSight(page)).toBe(true);
    }
    await expect(onNeedle(page)).toHaveText('32');
    await expect(step(page).locator('.done')).toHaveAttribute('d', /^M.*L/);
    expect(await tooSmall(page)).toEqual([]);
    expect(await faultsIn(page)).toEqual([]);

    await button(page, /another count/).tap();
    await button(page, 'One fewer').tap();
    await button(page, 'One fewer').tap();
    await expect(view(page)).toContainText('2 too few: 32 are planned here.');
    const ways = view(page).getByRole('group', { name: 'How to put it right' }).getByRole('button');
    await expect(ways).toHaveCount(2);
    const boxes = await Promise.all([ways.nth(0).boundingBox(), ways.nth(1).boundingBox()]);
    expect(boxes[0]!.y).toBe(boxes[1]!.y);
    expect(await tooSmall(page)).toEqual([]);
    expect(await faultsIn(page)).toEqual([]);
    await ways.nth(0).tap();
    await expect(onNeedle(page)).toHaveText('30');
    await button(page, 'Done').tap();
    await expect(step(page)).toHaveAttribute('data-step', '7');
    const [count, words] = [await onNeedle(page).textContent(), await now(page).textContent()];
    const isThere = async (at: Page) => {
      await expect(onNeedle(at)).toHaveText(count!, COMING);
      await expect(now(at)).toHaveText(words!);
    };

    await page.setViewportSize({ width: 740, height: 360 });
    await isThere(page);
    expect(await tooSmall(page)).toEqual([]);
    await expect.poll(() => litInSight(page)).toBe(true);
    await page.reload();
    await isThere(page);
    // A tab that is killed says nothing to its page; the next one goes on.
    const next = await context.newPage();
    await page.close({ runBeforeUnload: false });
    await next.goto('./');
    await isThere(next);
    await button(next, 'Leave').tap();
    await expect(view(next)).toHaveCount(0);
    await next.reload();
    await expect(next.getByRole('application')).toBeVisible(COMING);
    await open(next);
    await isThere(next);
    expect(faults).toEqual([]);
  });
});

test('by keys, in the dark: on, back, away and there again; the drawing does not glide where motion is unwanted', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  await openPage(page);
  await page.locator('body').press('k');
  await expect(step(page)).toBeAttached();
  await page.keyboard.press('Space');
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowRight');
  await expect(step(page)).toHaveAttribute('data-step', '3');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Backspace');
  await expect(step(page)).toHaveAttribute('data-step', '0');
  // Back is of no use here, and the keys still go on.
  await page.keyboard.press('Space');
  await expect(step(page)).toHaveAttribute('data-step', '1');
  const motion = await view(page)
    .locator('g.sheet')
    .evaluate((sheet) => getComputedStyle(sheet).transitionDuration);
  expect(motion).toBe('0s');
  expect(await faultsIn(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(view(page)).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await page.locator('body').press('k');
  await expect(step(page)).toHaveAttribute('data-step', '1');
});
