import { expect, test } from '@playwright/test';
import { canvas, edgeRow, middleOf, openPage } from './page';

test('the arithmetic behind a number: at rest over it, by a press, by keys, and on the drawing', async ({ page }) => {
  await openPage(page);
  const board = page.getByRole('tooltip');
  const wanted = edgeRow(page, 'front', 'neck-curve-left').locator('[data-asks="wanted"]');
  // The words come after the first drawing: the pointer asks until they are there.
  await expect(async () => {
    await page.mouse.move(5, 5);
    await wanted.hover();
    await expect(board).toBeVisible({ timeout: 1500 });
  }).toPass();
  await expect(board).toContainText('Front, left neck curve: wanted');
  await expect(board).toContainText('6.55 cm × 2.2 stitches to the cm = 14.4, so 14');
  await page.mouse.move(5, 5);
  await expect(board).toBeHidden();

  const total = page.getByRole('button', { name: '84', exact: true });
  await total.click();
  await expect(board).toContainText('21 × 4 = 84, 0.6% short');
  await page.mouse.move(5, 5);
  await expect(board).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(board).toBeHidden();

  await total.focus();
  await page.keyboard.press('Enter');
  await expect(board).toContainText('Neckband: why 84');
  await expect(total).toHaveAccessibleDescription(/21 × 4 = 84/);
  await page.keyboard.press('Enter');
  await expect(board).toBeHidden();

  const { x, y } = await middleOf(page, 'front', 'neck-curve-left');
  await page.mouse.move(x, y);
  await expect(canvas(page).locator('..').locator('.readout')).toContainText('× 2.2 stitches to the cm = 14.4, so 14');
});

test.describe('with a finger', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } });

  test('a tap tells, a tap elsewhere ends it, and an edge that is chosen has all its sums under it', async ({
    page,
  }) => {
    await openPage(page);
    const board = page.getByRole('tooltip');
    await expect(async () => {
      await page.getByTestId('count').tap();
      await expect(board).toBeVisible({ timeout: 1000 });
    }).toPass();
    const box = await board.boundingBox();
    expect(box!.x).toBeGreaterThanOrEqual(0);
    expect(box!.x + box!.width).toBeLessThanOrEqual(390);
    await page.getByRole('heading', { name: 'Neckband' }).tap();
    await expect(board).toBeHidden();
    await edgeRow(page, 'front', 'neck-curve-left').getByRole('button', { name: 'left neck curve' }).tap();
    await expect(page.getByRole('definition').filter({ hasText: 'Along the curve: 6.5 cm' })).toBeVisible();
  });
});
