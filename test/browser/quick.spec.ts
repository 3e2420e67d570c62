import { expect, test, type Page } from '@playwright/test';
import { QUICK_CASES } from '../published/quickCases';
import { faultsIn } from './faults';
import { count, faultsOf, openPage } from './page';

const dialog = (page: Page) => page.getByRole('dialog', { name: 'A quick question' });
const answer = (page: Page) => dialog(page).getByRole('region', { name: 'The answer' });
const field = (page: Page, name: string) => dialog(page).getByLabel(name, { exact: true });
const shows = (id: string) => QUICK_CASES.find((one) => one.id === id)!.shows;

test('three cases by the keyboard alone, each answered as it is typed, and one becomes a design', async ({ page }) => {
  const faults = faultsOf(page);
  await openPage(page);
  await page.keyboard.press('q');
  await expect(field(page, 'Stitches to place')).toBeFocused();

  await test.step('71 stitches over 88 rows', async () => {
    await page.keyboard.type('71');
    await page.keyboard.press('Tab');
    await page.keyboard.type('88');
    for (const words of shows('71 over 88')) await expect(answer(page)).toContainText(words);
    await expect(answer(page).getByRole('table', { name: 'Sections' }).locator('td.running').last()).toHaveText('71');
  });

  await test.step('115 stitches from 32 chains', async () => {
    await field(page, 'Stitches to place').focus();
    await page.keyboard.type('115');
    await page.keyboard.press('Tab');
    await page.keyboard.type('32');
    await page.keyboard.press('Tab');
    await page.keyboard.type('chains');
    for (const words of shows('too few chains')) await expect(answer(page)).toContainText(words);
    // A long strip is scrolled by keys, from where the work begins.
    await expect(dialog(page).getByRole('group', { name: 'The strip, every place drawn' })).toBeVisible();
  });

  await test.step('131 stitches decreased by 39, in the round', async () => {
    await dialog(page).getByRole('button', { name: 'Increase or decrease' }).focus();
    await page.keyboard.press('Enter');
    await field(page, 'Stitches on the needle').focus();
    await page.keyboard.type('131');
    await field(page, 'Worked').focus();
    await page.keyboard.type('in the round');
    for (const words of shows('131 less 39')) await expect(answer(page)).toContainText(words);
  });

  await test.step('what has no answer leaves the last one, greyed', async () => {
    await field(page, 'How many stitches').fill('90');
    await expect(dialog(page)).toContainText('since each takes two: ask for 65 at most.');
    await expect(answer(page)).toContainText(shows('131 less 39')[0]!);
    await expect(dialog(page).getByRole('button', { name: 'Make it a design' })).toBeDisabled();
    await field(page, 'How many stitches').fill('39');
  });

  await test.step('one press makes it a design, and the one that was there comes back', async () => {
    await dialog(page).getByRole('button', { name: 'Make it a design' }).click();
    await expect(dialog(page)).toHaveCount(0);
    await expect(page).toHaveTitle(/^131 stitches decreased by 39/);
    await expect(count(page)).toHaveText('92');
    await page.keyboard.press('Control+z');
    await expect(page).toHaveTitle(/pullover/);
  });
  expect(faults).toEqual([]);
});

test('on a telephone it fits from side to side, has no fault that axe finds, and is there from the new design', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.setViewportSize({ width: 360, height: 740 });
  await openPage(page);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.getByRole('button', { name: /Ask a quick question/ }).click();
  await expect(answer(page)).toContainText('Pick up 4, skip 1');
  const fits = () => dialog(page).evaluate((element) => element.scrollWidth <= element.clientWidth);
  expect(await fits()).toBe(true);
  await field(page, 'Counted in').selectOption({ label: 'stitches' });
  await expect(answer(page)).toContainText('88 stitches');
  expect(await fits()).toBe(true);
  await field(page, 'Stitches to place').fill('lots');
  await expect(dialog(page)).toContainText('“lots” is not a number');
  // With a strip, its tables and a field at fault; then a row, in the dark.
  expect(await faultsIn(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  await dialog(page).getByRole('button', { name: 'Increase or decrease' }).click();
  expect(await faultsIn(page)).toEqual([]);
  expect(await fits()).toBe(true);
  await page.keyboard.press('Escape');
  await expect(dialog(page)).toHaveCount(0);
});
