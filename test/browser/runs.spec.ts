import { expect, test, type Page } from '@playwright/test';
import { faultsIn } from './faults';
import { count, drawing, openPage } from './page';

const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });
const said = (page: Page) => page.locator('[aria-live="polite"]').first();
const items = (page: Page) => page.getByRole('list', { name: 'In working order' }).locator(':scope > li');
const more = (page: Page, title: string) => page.getByRole('button', { name: `More: ${title}` });

async function openRun(page: Page): Promise<void> {
  await openPage(page);
  await page.locator('summary', { hasText: 'Where it is picked up' }).click();
  await expect(items(page)).toHaveCount(8);
}

test('the run lists its edges, and the plan follows what is done with them', async ({ page }) => {
  await openRun(page);
  await test.step('in working order, and when one is taken out', async () => {
    await expect(items(page).first()).toContainText('Front, upper left neck');
    await expect(items(page).first()).toContainText('straight down, 8 rows, 2.7 cm');
    const before = await count(page).textContent();
    await more(page, 'Back, center neck').click();
    await page.getByRole('group', { name: 'Back, center neck' }).getByRole('button', { name: 'Take out' }).click();
    await expect(items(page)).toHaveCount(7);
    await expect(count(page)).not.toHaveText(before!);
    await expect(said(page)).toContainText('Back, center neck was taken out.');
    await undo(page).click();
    await expect(count(page)).toHaveText(before!);
  });

  await test.step('a stretch lights up its edge', async () => {
    await items(page).nth(1).hover();
    await expect(drawing(page).locator('polyline.lit')).toHaveAttribute('data-edge', 'neck-curve-left');
  });

  await test.step('a place beyond the edge is refused beside the field', async () => {
    await more(page, 'Front, center neck').click();
    const tools = page.getByRole('group', { name: 'Front, center neck' });
    await tools.getByRole('textbox', { name: 'to' }).fill('120');
    await tools.getByRole('textbox', { name: 'to' }).press('Enter');
    await expect(tools.getByRole('alert')).toContainText('of the edge is needed, so 100% stays.');
    await expect(undo(page)).toBeDisabled();
  });

  await test.step('a border all round is a new pick-up in two presses, and it is shown', async () => {
    await page.getByRole('button', { name: 'New pick-up' }).click();
    await page.getByRole('button', { name: 'All round Front', exact: true }).click();
    await expect(page.getByRole('textbox', { name: 'Name of the pick-up' })).toHaveValue('Pick-up 2');
    await expect(page.getByRole('radio', { name: 'in the round' })).toBeChecked();
    await expect(page.getByRole('combobox', { name: 'Pick-up', exact: true })).toContainText('Pick-up 2');
    await page.getByRole('button', { name: 'Remove pick-up' }).click();
    await expect(items(page)).toHaveCount(8);
  });

  await test.step('a design without a pick-up says how to begin, and begins', async () => {
    await page.getByRole('button', { name: 'Remove pick-up' }).click();
    await expect(page.getByText('A pick-up runs along one edge or several')).toBeVisible();
    await page.getByRole('combobox', { name: 'From here' }).selectOption({ label: 'upper left neck' });
    await page.getByRole('combobox', { name: 'to there' }).selectOption({ label: 'upper right neck' });
    await page.getByRole('button', { name: 'Pick up along them' }).click();
    await expect(items(page)).toHaveCount(5);
    await expect(count(page)).toBeVisible();
  });
});

test('by keys alone a stretch is moved, turned and cut, and the focus stays where the work is', async ({ page }) => {
  await openPage(page);
  await page.locator('summary', { hasText: 'Where it is picked up' }).focus();
  await page.keyboard.press('Enter');
  await more(page, 'Front, left neck curve').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  const tools = page.getByRole('group', { name: 'Front, left neck curve' });
  await expect(tools.getByRole('button', { name: 'Earlier' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(items(page).first()).toContainText('Front, left neck curve');
  await expect(tools.getByRole('button', { name: 'Later' })).toBeFocused();
  await tools.getByRole('button', { name: 'The other way' }).focus();
  await page.keyboard.press('Enter');
  await expect(items(page).first()).toContainText('up to the right');
  await tools.getByRole('textbox', { name: 'From' }).focus();
  await page.keyboard.type('2 cm');
  await page.keyboard.press('Enter');
  await expect(items(page).first()).toContainText(/30\.\d+% to 100% of 9 sts × 14 rows/);
  for (let i = 0; i < 3; i++) await page.keyboard.press('Control+Z');
  await expect(undo(page)).toBeDisabled();
});

test.describe('by touch, at the width of a phone', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } });

  test('all can be reached, and nothing is wider than the page', async ({ page }) => {
    await openPage(page);
    await page.locator('summary', { hasText: 'Where it is picked up' }).tap();
    await more(page, 'Front, left neck curve').tap();
    await page.getByRole('group', { name: 'Front, left neck curve' }).getByRole('button', { name: 'Start here' }).tap();
    await expect(items(page).first()).toContainText('Front, left neck curve');
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  });
});

test('axe finds nothing wrong with the run, wide and narrow', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openRun(page);
  await more(page, 'Front, left neck curve').click();
  await page.getByRole('button', { name: 'New pick-up' }).click();
  for (const width of [1280, 390]) {
    await page.setViewportSize({ width, height: 844 });
    expect(await faultsIn(page), `at ${width} px`).toEqual([]);
  }
});
