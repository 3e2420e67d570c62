import { expect, test } from '@playwright/test';
import { count, drawing, edgeLine, edgeRow, middleOf, openPage } from './page';

const field = 'Count: Front, left neck curve';

test('the fields of the table take what is typed, and Undo takes it back', async ({ page }) => {
  await openPage(page);
  await test.step('a row lights up its edge and an edge its row, by mouse', async () => {
    await edgeRow(page, 'front', 'neck-curve-left').hover();
    await expect(drawing(page).locator('polyline.lit')).toHaveAttribute('data-edge', 'neck-curve-left');
    const { x, y } = await middleOf(page, 'front', 'neck-curve-right');
    await page.mouse.move(x, y);
    await expect(edgeRow(page, 'front', 'neck-curve-right')).toHaveClass(/lit/);
    await expect(edgeLine(page, 'front', 'neck-curve-right')).toBeAttached();
  });

  await test.step('a row lights up its edge by keys alone', async () => {
    await page.mouse.move(5, 5);
    await expect(drawing(page).locator('polyline.lit')).toHaveCount(0);
    await edgeRow(page, 'front', 'neck-curve-right').getByRole('button').first().focus();
    await expect(drawing(page).locator('polyline.lit')).toHaveAttribute('data-edge', 'neck-curve-right');
  });

  await test.step('nonsense keeps the old value, says why beside it, and is no step', async () => {
    const input = page.getByRole('textbox', { name: field });
    await input.fill('plenty');
    await input.press('Enter');
    await expect(edgeRow(page, 'front', 'neck-curve-left')).toContainText('plenty');
    await expect(count(page)).toHaveText('84');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });

  await test.step('Escape puts a half-typed number back', async () => {
    const input = page.getByRole('textbox', { name: field });
    await input.fill('99');
    await input.press('Escape');
    await expect(input).toHaveValue('14');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });

  await test.step('a count that is typed is taken, the plan follows, and one step undoes it', async () => {
    const input = page.getByRole('textbox', { name: field });
    await expect(input).toHaveValue('14');
    await input.fill('16');
    await input.press('Enter');
    await expect(edgeRow(page, 'front', 'neck-curve-left')).toContainText('11% over');
    await expect(page.getByRole('combobox', { name: 'Rate: Front, left neck curve' })).toContainText('16, as given');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(input).toHaveValue('14');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });

  await test.step('a count that is cleared goes by its own rate again', async () => {
    const input = page.getByRole('textbox', { name: field });
    await input.fill('16');
    await input.press('Enter');
    await input.fill('');
    await input.press('Enter');
    await expect(input).toHaveValue('14');
  });

  await test.step('a rate is chosen from the plain ones', async () => {
    const rate = page.getByRole('combobox', { name: 'Rate: Front, upper left neck' });
    const options = await rate.locator('option').allTextContents();
    const ratio = options.find((text) => text.includes('3 of 4'))!;
    await rate.selectOption({ label: ratio });
    await expect(page.getByRole('textbox', { name: 'Count: Front, upper left neck' })).toHaveValue('6');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  });

  await test.step('a length by the tape is taken with a comma, a point or a fraction, and named in the notes', async () => {
    const input = page.getByRole('textbox', { name: 'Length, cm: Front, left neck curve' });
    for (const typed of ['7,5', '7.5', '7½', '7 1/2']) {
      await input.fill(typed);
      await input.press('Enter');
      await expect(input).toHaveValue('7.5');
      await page.getByRole('button', { name: 'Undo' }).click();
    }
    await input.fill('7,5');
    await input.press('Enter');
    await expect(page.getByText('the tape says 7.5 cm').first()).toBeVisible();
  });
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } });

  test('a tap on a row lights up its edge, a tap on an edge its row', async ({ page }) => {
    await openPage(page);
    await edgeRow(page, 'front', 'neck-curve-left').getByRole('button').first().tap();
    await expect(drawing(page).locator('polyline.lit')).toHaveAttribute('data-edge', 'neck-curve-left');
    await page.evaluate(() => scrollTo(0, 0));
    const { x, y } = await middleOf(page, 'front', 'neck-curve-right');
    await page.touchscreen.tap(x, y);
    await expect(edgeRow(page, 'front', 'neck-curve-right')).toHaveClass(/lit/);
  });
});
