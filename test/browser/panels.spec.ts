import { expect, test, type Page } from '@playwright/test';
import { chooseFile, count, drawing, openPage, sampleText } from './page';

async function unfold(page: Page, title: string): Promise<void> {
  await page.locator('summary', { hasText: title }).click();
}

test('the panels divide, check and mend what is planned', async ({ page }) => {
  await openPage(page);
  await test.step('off at a marker, both ways of mending are told', async () => {
    await unfold(page, 'Off at a marker');
    const have = page.getByRole('textbox', { name: 'I have' });
    await have.fill('12');
    await have.press('Enter');
    await expect(page.getByText('16').first()).toBeVisible();
    const before = await page.locator('details[open]').last().innerText();
    await page.getByRole('radio', { name: 'over all that remain' }).check();
    expect(await page.locator('details[open]').last().innerText()).not.toBe(before);
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });

  await test.step('a fitting count beside the first is one press away, and so is the way back', async () => {
    const choices = page.getByRole('group', { name: 'Counts that fit' });
    await choices.getByRole('button', { name: /^88/ }).click();
    await expect(count(page)).toHaveText('88');
    await choices.getByRole('button', { name: 'the nearest that fits' }).click();
    await expect(count(page)).toHaveText('84');
  });

  await test.step('a total out of reach keeps the last good plan and gives the reason', async () => {
    const target = page.getByRole('textbox', { name: 'Wanted by the pattern' });
    await target.fill('4000');
    await target.press('Enter');
    await expect(page.getByText('more increases than stitches').first()).toBeVisible();
    await expect(count(page)).toHaveText('84');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByText('more increases than stitches')).toHaveCount(0);
  });

  await test.step('sections are divided anew and still sum to the count', async () => {
    await unfold(page, 'Sections');
    const parts = page.getByRole('textbox', { name: 'Parts' });
    await parts.fill('8');
    await parts.press('Enter');
    const rows = page.getByRole('table', { name: 'Sections' }).locator('tbody tr');
    await expect(rows).toHaveCount(8);
    await expect(rows.last()).toContainText('84');
  });

  await test.step('what a pattern states gets its verdict and its likely cause', async () => {
    await unfold(page, 'Check a pattern');
    const stated = page.getByRole('textbox', { name: 'In all' });
    await stated.fill('60');
    await stated.press('Enter');
    await expect(page.getByText('will pucker').first()).toBeVisible();
    const sections = page.getByRole('textbox', { name: 'By section' });
    await sections.fill('14, 14, 14');
    await sections.press('Enter');
    await expect(page.getByText('add up to 42').first()).toBeVisible();
  });

  await test.step('a demanded total off the multiple is taken, and said to be off', async () => {
    const target = page.getByRole('textbox', { name: 'Wanted by the pattern' });
    await target.fill('86');
    await target.press('Enter');
    await expect(count(page)).toHaveText('86');
    await expect(page.getByText('is not a multiple of 4').first()).toBeVisible();
  });
});

test('the instructions are copied, a piece gets another gauge, and another pick-up is shown', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openPage(page);
  await test.step('the written instructions are copied whole', async () => {
    await page.getByRole('button', { name: 'Copy' }).click();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toContain('84 stitches in all');
    expect(copied).toContain('pick up and knit 14 from 14 rows and 5 stitches');
  });

  await test.step('a change of gauge keeps the size when asked, and the corners stay whole', async () => {
    await unfold(page, 'Pieces');
    const front = page.getByRole('group', { name: 'Front: Gauge' });
    const width = () => drawing(page).locator('text.dimension-text').first();
    await expect(width()).toHaveText('35.5 cm · 78 sts');
    await page.getByRole('radio', { name: 'the size' }).check();
    const stitches = front.getByRole('textbox', { name: 'Stitches' });
    await stitches.fill('24');
    await stitches.press('Enter');
    await expect(width()).toHaveText(/^35\.[0-9] cm · 8[456] sts$/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(stitches).toHaveValue('22');
    await page.getByRole('radio', { name: 'the stitches and rows' }).check();
    await stitches.fill('24');
    await stitches.press('Enter');
    await expect(width()).toHaveText('32.5 cm · 78 sts');
  });

  await test.step('another pick-up of the same design is shown by choosing it, with keys alone', async () => {
    await chooseFile(page, 'vest.edgewise.json', sampleText('vest'));
    const chooser = page.getByRole('combobox', { name: 'Pick-up' });
    await expect(count(page)).toHaveText('106');
    await chooser.focus();
    await page.keyboard.press('ArrowDown');
    await expect(count(page)).toHaveText('88');
  });
});
