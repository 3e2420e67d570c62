import { expect, test } from '@playwright/test';
import { faultsOf, count, openPage } from './page';

test('from an empty shelf to a round-neck front with its neckband count in three presses', async ({ page }) => {
  const faults = faultsOf(page);
  await openPage(page);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.locator('[data-starter="round-neck"]').click();
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByRole('status')).toHaveText(/^Neckband: \d+ stitches$/);
  const told = /\d+/.exec((await dialog.getByRole('status').textContent())!)![0];
  await dialog.getByRole('button', { name: 'Begin' }).click();
  await expect(dialog).toBeHidden();
  await expect(count(page)).toHaveText(told);
  await expect(page.getByRole('heading', { name: 'Neckband' })).toBeVisible();
  expect(faults.filter((fault) => !fault.includes('preload'))).toEqual([]);
});

test('measures are typed as people write numbers, and what contradicts itself is said and not begun', async ({
  page,
}) => {
  await openPage(page);
  await page.keyboard.press('n');
  await page.locator('[data-starter="round-neck"]').click();
  const dialog = page.getByRole('dialog');
  const depth = dialog.getByLabel('Neck depth');
  await depth.fill('5,5');
  await depth.press('Enter');
  await expect(depth).toHaveValue('5.5');
  await depth.fill('7½');
  await depth.press('Enter');
  await expect(depth).toHaveValue('7.5');
  const neck = dialog.getByLabel('Neck width');
  await neck.fill('40');
  await neck.press('Enter');
  await expect(dialog.getByRole('alert')).toContainText('wider than the chest');
  await expect(dialog.getByRole('button', { name: 'Begin' })).toBeDisabled();
  await neck.fill('nonsense');
  await neck.press('Enter');
  await expect(neck).toHaveValue('40.0');
});

test('a piece can stand beside those of the design', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.locator('[data-starter="sleeve"]').click();
  await page.getByRole('dialog').getByRole('button', { name: 'Add it to this design' }).click();
  await page.getByRole('button', { name: 'Shape the outline' }).click();
  await expect(page.getByRole('button', { name: 'Sleeve', exact: true })).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Sleeve', exact: true })).toBeHidden();
});

test('from nothing, a piece is drawn by its corners, by the pointer or by the keys alone', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.locator('[data-starter="nothing"]').click();
  await expect(page.locator('[data-grip="cursor"]')).toBeFocused();
  const steps = [
    ['Enter'],
    [...Array<string>(3).fill('Shift+ArrowRight'), 'Enter'],
    [...Array<string>(4).fill('Shift+ArrowUp'), 'Enter'],
    [...Array<string>(3).fill('Shift+ArrowLeft'), 'Enter'],
  ];
  for (const key of steps.flat()) await page.keyboard.press(key);
  await page.getByRole('button', { name: 'Close the outline' }).click();
  await expect(page.getByRole('textbox', { name: 'Name of the design' })).toHaveValue('New design');
  await expect(page.getByText('No pick-up is planned on this design.')).toBeVisible();
  await expect(page.locator('[data-drawing]')).toContainText('30 sts');
});

test('edges of a pick-up are chosen on the drawing, by the keys too', async ({ page }) => {
  await openPage(page);
  const before = Number(await count(page).textContent());
  await page.getByRole('button', { name: 'Choose edges' }).click();
  const side = page.locator('[data-choose="front side-left"]');
  await expect(side).toHaveAttribute('aria-pressed', 'false');
  await side.focus();
  await page.keyboard.press('Enter');
  await expect(side).toHaveAttribute('aria-pressed', 'true');
  await expect.poll(async () => Number(await count(page).textContent())).toBeGreaterThan(before);
  await page.keyboard.press('Enter');
  await expect(side).toHaveAttribute('aria-pressed', 'false');
  await expect(count(page)).toHaveText(String(before));
});
