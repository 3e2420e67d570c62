import { expect, test, type Page } from '@playwright/test';
import { count, drawing, edgeRow, openPage } from './page';

async function choose(page: Page, ...labels: string[]): Promise<void> {
  await page.getByRole('button', { name: 'Settings' }).click();
  for (const label of labels) await page.getByRole('radio', { name: label, exact: true }).check();
  await page.keyboard.press('Escape');
}

test('lengths are told in inches, colours are no part of the design, and undo and redo go step by step', async ({
  page,
}) => {
  await openPage(page);
  await test.step('each setting is one step that can be undone, but not that of the colours', async () => {
    await choose(page, 'inches', 'dark');
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByRole('columnheader', { name: /Length, cm/ })).toBeVisible();
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });

  await test.step('inches are told on the drawing and beside it, and nothing else changes', async () => {
    await expect(drawing(page).getByText('cm').first()).toBeAttached();
    await choose(page, 'inches');
    await expect(drawing(page).getByText('in', { exact: true }).first()).toBeAttached();
    await expect(page.getByRole('columnheader', { name: /Length, in/ })).toBeVisible();
    await expect(count(page)).toHaveText('84');
  });

  await test.step('both are there after a reload', async () => {
    await page.reload();
    await expect(page.getByRole('columnheader', { name: /Length, in/ })).toBeVisible();
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  });

  await test.step('undo and redo by keys go step by step, wherever the focus is but in half-typed text', async () => {
    const field = edgeRow(page, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ });
    for (const value of ['10', '11']) {
      await field.fill(value);
      await field.press('Enter');
    }
    await page.keyboard.press('Control+z');
    await expect(field).toHaveValue('10');
    await page.keyboard.press('Control+z');
    await expect(field).toHaveValue('12');
    await page.keyboard.press('Control+Shift+z');
    await page.keyboard.press('Control+y');
    await expect(field).toHaveValue('11');
  });
});

test('the settings change words and drawing, each in one step, and are told', async ({ page }) => {
  await openPage(page);
  await test.step('every command stands in one list with its keys', async () => {
    await page.keyboard.press('?');
    const list = page.getByRole('dialog', { name: 'Keys' });
    await expect(list).toContainText('Save the drawing as SVG');
    await expect(list).toContainText('Ctrl Shift Z');
    await expect(list).toContainText('Go to the next edge');
    await page.keyboard.press('Escape');
    await expect(list).toBeHidden();
  });

  await test.step('the words are those of the UK', async () => {
    const summary = page.getByRole('region', { name: 'The count' });
    await expect(summary).toContainText('pick up and knit');
    await choose(page, 'the United Kingdom');
    await expect(summary).toContainText('knit up');
    await expect(summary).not.toContainText('pick up and knit');
  });

  await test.step('a left-handed knitter begins at the other end and works the other way', async () => {
    const first = page.locator('tr[data-edge]').first();
    await expect(first).toHaveAttribute('data-edge', 'neck-straight-left');
    await choose(page, 'a left-handed knitter');
    await expect(first).not.toHaveAttribute('data-edge', 'neck-straight-left');
    await expect(page.getByRole('region', { name: 'The count' })).toContainText('from left to right');
    await expect(count(page)).toHaveText('84');
  });

  await test.step('rulers and measures can be left away', async () => {
    await expect(drawing(page).locator('path.ruler').first()).toBeAttached();
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('checkbox', { name: 'Rulers and measures' }).uncheck();
    await expect(drawing(page).locator('path.ruler')).toHaveCount(0);
  });

  await test.step('the design can be given another name; an empty one is none', async () => {
    const name = page.getByRole('textbox', { name: 'Name of the design' });
    await name.fill('Ada’s jumper');
    await name.press('Enter');
    await expect(page).toHaveTitle(/Ada’s jumper/);
    await name.fill('   ');
    await name.press('Enter');
    await expect(name).toHaveValue('Ada’s jumper');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page).toHaveTitle(/harbour pullover/);
  });
});
