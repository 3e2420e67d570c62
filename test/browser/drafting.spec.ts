import { expect, test, type Locator, type Page } from '@playwright/test';
import { documentOf, stepsOf, type File, type Spot } from './grips';
import { canvas, faultsOf, openPage } from './page';

const bar = (page: Page): Locator => page.getByRole('group', { name: 'A piece from nothing' });
const corners = (page: Page): Locator => page.locator('.corner');

async function fromNothing(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.locator('[data-starter="nothing"]').click();
  await expect(page.locator('[data-grip="cursor"]')).toBeFocused();
}

const outline = (file: File) => file.pieces[0]!.outline.map(({ from }) => from);

test.use({ hasTouch: true });

for (const how of ['mouse', 'touch'] as const) {
  test(`from nothing by ${how}: corners are pressed, and the first one closes the outline`, async ({ page }) => {
    await openPage(page);
    await fromNothing(page);
    const box = (await canvas(page).boundingBox())!;
    const at = (dx: number, dy: number): Spot => ({ x: box.x + 200 + dx, y: box.y + 420 - dy });
    const press = ({ x, y }: Spot) => (how === 'mouse' ? page.mouse.click(x, y) : page.touchscreen.tap(x, y));

    await press(at(0, 0));
    await expect(corners(page)).toHaveCount(1);
    // A little beside the row or the column of a corner is on it.
    await press(at(240, 3));
    await press(at(237, 160));
    await press(at(120, 220));
    await press(at(3, 158));
    await expect(corners(page)).toHaveCount(5);
    await page.getByRole('button', { name: 'Take back' }).click();
    await expect(corners(page)).toHaveCount(4);
    if (how === 'mouse') {
      await page.mouse.move(at(0, 160).x, at(0, 160).y);
      await expect(bar(page).locator('strong')).toHaveText(/^\d+ sts × \d+ rows, [\d.]+ cm$/);
    }
    await press(at(3, 158));
    await press(at(2, 2));
    await expect(bar(page)).toHaveCount(0);
    await expect(page).toHaveTitle(/New design/);

    const [a, b, c, d, e] = outline(await documentOf(page));
    expect(a).toEqual([0, 0]);
    expect(b![1]).toBe(0);
    expect(c![0]).toBe(b![0]);
    expect(d![1]).toBeGreaterThan(c![1]);
    expect(e).toEqual([0, c![1]]);
    expect(b![0]).toBeGreaterThan(20);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page).toHaveTitle(/pullover/);
  });
}

test('from nothing by the keys alone: a crossing is refused, corners are taken back, and it is closed', async ({
  page,
}) => {
  const faults = faultsOf(page);
  await openPage(page);
  const before = await documentOf(page);
  await canvas(page).focus();
  await page.keyboard.press('n');
  const nothing = page.locator('[data-starter="nothing"]');
  await expect(nothing).toBeVisible();
  for (let i = 0; i < 20 && !(await nothing.evaluate((one) => one === document.activeElement)); i++) {
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Enter');
  const cursor = page.locator('[data-grip="cursor"]');
  await expect(cursor).toBeFocused();
  const go = async (...keys: string[]) => {
    for (const key of keys) await page.keyboard.press(key);
  };
  const [right, left, up, down] = ['Right', 'Left', 'Up', 'Down'].map((way) => `Shift+Arrow${way}`) as [
    string,
    string,
    string,
    string,
  ];

  // A bow: from corner to corner across, and back across.
  await go('Enter', right, right, up, up, 'Enter', down, down, 'Enter', left, left, up, up, 'Enter');
  await expect(corners(page)).toHaveCount(4);
  await expect(cursor).toHaveAttribute(
    'aria-label',
    'Next corner: at the start, 20 rows up. 4 corners so far. Enter puts one here.',
  );
  await go('Enter');
  await expect(bar(page).getByRole('alert')).toContainText('meets itself');
  await expect(corners(page)).toHaveCount(4);
  expect(await stepsOf(page)).toBe(0);
  expect(await documentOf(page)).toEqual(before);

  // Three are taken back, each by another key, and it goes on as a house.
  await cursor.focus();
  await go('Delete', 'Backspace', 'Control+z');
  await expect(corners(page)).toHaveCount(1);
  await expect(bar(page).getByRole('alert')).toHaveCount(0);
  await go(
    down,
    down,
    right,
    right,
    'ArrowLeft',
    'Enter',
    up,
    up,
    'Enter',
    left,
    up,
    'Enter',
    left,
    down,
    'ArrowRight',
    'Enter',
  );
  await expect(corners(page)).toHaveCount(5);
  await go(down, down, 'ArrowRight', 'ArrowLeft');
  await expect(cursor).toHaveAttribute('aria-label', /^Next corner: at the start, at the foot\. 5 corners/);
  await go('Enter');
  await expect(page).toHaveTitle(/New design/);
  expect(outline(await documentOf(page))).toEqual([
    [0, 0],
    [19, 0],
    [19, 20],
    [9, 30],
    [0, 20],
  ]);
  expect(await stepsOf(page)).toBe(1);
  expect(faults).toEqual([]);
});

test('a piece that is not finished is left, and nothing has changed', async ({ page }) => {
  await openPage(page);
  const before = await documentOf(page);
  await fromNothing(page);
  await page.keyboard.press('Enter');
  await expect(bar(page).getByRole('button', { name: 'Close the outline' })).toBeDisabled();
  await bar(page).getByRole('button', { name: 'Leave it' }).click();
  await expect(corners(page)).toHaveCount(0);
  expect(await documentOf(page)).toEqual(before);
  expect(await stepsOf(page)).toBe(0);
});
