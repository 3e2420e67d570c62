import { expect, test, type Locator, type Page } from '@playwright/test';
import { chooseFile, openPage, sampleText } from './page';

const shelf = (page: Page): Locator => page.getByRole('dialog', { name: 'Your designs' });
const cards = (page: Page): Locator => shelf(page).getByRole('list', { name: 'Your designs' }).getByRole('listitem');
const card = (page: Page, name: string): Locator => cards(page).filter({ has: page.getByText(name, { exact: true }) });

async function openShelf(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Designs' }).click();
  await expect(shelf(page)).toBeVisible();
}

const vest = sampleText('vest');
const named = (name: string): string => vest.replace(/"name": "[^"]*"/, `"name": "${name}"`);

/** Opens the page and brings designs of the knitter's own in, as files; the last one is on the bench. */
async function withDesigns(page: Page, ...names: string[]): Promise<void> {
  await openPage(page);
  for (const name of names) {
    await chooseFile(page, 'mine.json', named(name));
    await expect(page).toHaveTitle(new RegExp(name));
    await expect(page.locator('.keeps')).toHaveText('kept in this browser');
  }
}

test('an empty shelf says how it is filled, is left in three ways, and has the samples with their pictures', async ({
  page,
}) => {
  await openPage(page);
  for (const leave of [
    () => page.keyboard.press('Escape'),
    () => shelf(page).getByRole('button', { name: 'Close' }).click(),
    () => page.mouse.click(5, 5),
  ]) {
    await openShelf(page);
    await leave();
    await expect(shelf(page)).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'Designs' })).toBeFocused();
  }
  await openShelf(page);
  await expect(shelf(page)).toContainText('Open a sample and change what you like');
  await expect(cards(page)).toHaveCount(0);
  const samples = shelf(page).getByRole('list', { name: 'Samples' }).getByRole('listitem');
  await expect(samples).toHaveCount(6);
  await expect(samples.locator('svg')).toHaveCount(6);
  await samples.getByRole('button', { name: 'Garter blanket' }).click();
  await expect(shelf(page)).toHaveCount(0);
  await expect(page).toHaveTitle(/low-tide blanket/);
});

test('designs are opened, renamed, copied and searched for on it', async ({ page }) => {
  await withDesigns(page, 'Ada', 'Bess');
  await test.step('one is opened, and what was there comes back with undo', async () => {
    await openShelf(page);
    await expect(cards(page)).toHaveCount(2);
    await expect(card(page, 'Bess')).toContainText('open now');
    await expect(card(page, 'Ada').locator('svg path.piece').first()).toBeAttached();
    await card(page, 'Ada').getByRole('button', { name: /^Ada/ }).click();
    await expect(shelf(page)).toHaveCount(0);
    await expect(page).toHaveTitle(/Ada/);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(page).toHaveTitle(/Bess/);
  });

  await test.step('each gets another name in its place, open or not; Escape leaves it', async () => {
    await openShelf(page);
    for (const [old, fresh] of [
      ['Ada', 'Clara'],
      ['Bess', 'Dora'],
    ] as const) {
      await shelf(page)
        .getByRole('button', { name: `Rename ${old}` })
        .click();
      await page.keyboard.type(fresh);
      await page.keyboard.press('Enter');
      await expect(card(page, fresh)).toHaveCount(1);
      await expect(card(page, old)).toHaveCount(0);
      await expect(shelf(page).getByRole('button', { name: `Rename ${fresh}` })).toBeFocused();
    }
    await expect(page).toHaveTitle(/Dora/);
    await shelf(page).getByRole('button', { name: 'Rename Clara' }).click();
    await page.keyboard.type('Nobody');
    await page.keyboard.press('Escape');
    await expect(shelf(page)).toBeVisible();
    await expect(card(page, 'Clara')).toHaveCount(1);
    await page.reload();
    await openShelf(page);
    await expect(card(page, 'Clara')).toHaveCount(1);
    await card(page, 'Clara')
      .getByRole('button', { name: /^Clara/ })
      .click();
    await expect(page).toHaveTitle(/Clara/);
  });

  await test.step('a copy is put beside a design, and changes to one leave the other', async () => {
    await openShelf(page);
    await shelf(page).getByRole('button', { name: 'Duplicate Clara' }).click();
    await expect(card(page, 'Clara, copy')).toHaveCount(1);
    await shelf(page).getByRole('button', { name: 'Duplicate Clara', exact: true }).click();
    await expect(card(page, 'Clara, copy 2')).toHaveCount(1);
    await expect(cards(page)).toHaveCount(4);
    await card(page, 'Clara, copy 2')
      .getByRole('button', { name: /^Clara, copy 2/ })
      .click();
    await expect(page).toHaveTitle(/Clara, copy 2/);
  });

  await test.step('names are searched without regard to capitals and accents', async () => {
    await openShelf(page);
    await shelf(page).getByRole('button', { name: 'Rename Dora' }).click();
    await page.keyboard.type('Gilet à côtes');
    await page.keyboard.press('Enter');
    const search = shelf(page).getByRole('searchbox', { name: 'Search by name' });
    await search.fill('COTES');
    await expect(cards(page)).toHaveCount(1);
    await expect(card(page, 'Gilet à côtes')).toHaveCount(1);
    await search.fill('sleeve');
    await expect(cards(page)).toHaveCount(0);
    await expect(shelf(page).locator('.empty')).toHaveText('No design has “sleeve” in its name.');
    await search.fill('');
    await expect(cards(page)).toHaveCount(4);
  });
});

test('what is deleted can be brought back while the shelf is open, and is gone after', async ({ page }) => {
  await withDesigns(page, 'Ada', 'Bess');
  await test.step('the design on the bench too: the next one takes its place', async () => {
    await openShelf(page);
    await shelf(page).getByRole('button', { name: 'Delete Bess' }).click();
    await expect(page).toHaveTitle(/Ada/);
    await expect(card(page, 'Ada')).toContainText('open now');
    await shelf(page).getByRole('button', { name: 'Delete Ada' }).click();
    await expect(page).toHaveTitle(/harbour pullover/);
    await expect(cards(page)).toHaveCount(0);
    await shelf(page).getByRole('button', { name: 'Undo' }).click();
    await expect(card(page, 'Ada')).toHaveCount(1);
    // Undo at the bench brings the other one back as well, and it is kept again.
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(page).toHaveTitle(/Bess/);
    await expect(page.locator('.keeps')).toHaveText('kept in this browser');
    await openShelf(page);
    await expect(card(page, 'Bess')).toHaveCount(1);
  });

  await test.step('one that is not open', async () => {
    await expect(cards(page)).toHaveCount(2);
    await shelf(page).getByRole('button', { name: 'Delete Ada' }).click();
    await expect(cards(page)).toHaveCount(1);
    const undo = shelf(page).getByRole('button', { name: 'Undo' });
    await expect(undo).toBeFocused();
    await undo.click();
    await expect(card(page, 'Ada')).toHaveCount(1);
    await expect(card(page, 'Ada').getByRole('button', { name: /^Ada/ })).toBeFocused();
    await shelf(page).getByRole('button', { name: 'Delete Ada' }).click();
    await page.keyboard.press('Escape');
    await openShelf(page);
    await expect(cards(page)).toHaveCount(1);
    await expect(undo).toHaveCount(0);
    await page.reload();
    await openShelf(page);
    await expect(card(page, 'Ada')).toHaveCount(0);
  });
});

test('by keys alone: open it, find, rename, delete, undo, open a design, and the focus comes back', async ({
  page,
}) => {
  await withDesigns(page, 'Ada', 'Bess');
  await page.keyboard.press('Control+Shift+o');
  await expect(shelf(page)).toBeVisible();
  // The search comes with the designs.
  await expect(card(page, 'Ada')).toBeVisible();
  const press = async (...keys: string[]): Promise<void> => {
    for (const key of keys) await page.keyboard.press(key);
  };
  await press('Tab', 'Tab', 'Tab');
  await expect(shelf(page).getByRole('searchbox')).toBeFocused();
  await page.keyboard.type('ada');
  await expect(cards(page)).toHaveCount(1);
  await press('Tab', 'Tab', 'Tab');
  await expect(shelf(page).getByRole('button', { name: 'Rename Ada' })).toBeFocused();
  await press('Enter');
  await page.keyboard.type('Adah');
  await press('Enter');
  await expect(shelf(page).getByRole('button', { name: 'Rename Adah' })).toBeFocused();
  await press('Tab', 'Tab', 'Enter');
  await expect(shelf(page).getByRole('button', { name: 'Undo' })).toBeFocused();
  await press('Enter');
  await expect(card(page, 'Adah').getByRole('button', { name: /^Adah/ })).toBeFocused();
  await press('Enter');
  await expect(shelf(page)).toHaveCount(0);
  await expect(page).toHaveTitle(/Adah/);
});

test('what another tab does is shown, and what it has open is left to it', async ({ page, context }) => {
  await withDesigns(page, 'Ada');
  const other = await context.newPage();
  await openPage(other);
  await chooseFile(other, 'mine.json', named('Bess'));
  await expect(other.locator('.keeps')).toHaveText('kept in this browser');
  await openShelf(page);
  await expect(card(page, 'Bess')).toContainText('open in another tab');
  await shelf(page).getByRole('button', { name: 'Delete Bess' }).click();
  await expect(shelf(page).getByRole('alert')).toContainText('close it there first');
  await expect(cards(page)).toHaveCount(2);
  await openShelf(other);
  await shelf(other).getByRole('button', { name: 'Rename Bess' }).click();
  await other.keyboard.type('Clara');
  await other.keyboard.press('Enter');
  await expect(card(page, 'Clara')).toHaveCount(1);
  // Opened here, it is followed.
  await card(page, 'Clara')
    .getByRole('button', { name: /^Clara/ })
    .click();
  await expect(page).toHaveTitle(/Clara/);
  await expect(page.locator('.lasting')).toContainText('open in another tab');
});

test.describe('by touch on a telephone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test('everything is in reach and nothing runs over the side', async ({ page }) => {
    await withDesigns(page, 'A very long name for a vest that takes no end of words to tell', 'Bess');
    await page.getByRole('button', { name: 'Designs' }).tap();
    await expect(cards(page)).toHaveCount(2);
    expect(await shelf(page).evaluate((dialog) => dialog.scrollWidth - dialog.clientWidth)).toBe(0);
    const small = await shelf(page)
      .getByRole('button')
      .evaluateAll((all) =>
        all.filter((one) => one.getBoundingClientRect().height < 39.5).map((one) => one.textContent),
      );
    expect(small).toEqual([]);
    await shelf(page).getByRole('button', { name: 'Duplicate Bess' }).tap();
    await expect(card(page, 'Bess, copy')).toHaveCount(1);
    await shelf(page).getByRole('button', { name: 'Delete Bess, copy' }).tap();
    await shelf(page).getByRole('button', { name: 'Undo' }).tap();
    await card(page, 'Bess, copy')
      .getByRole('button', { name: /^Bess, copy/ })
      .tap();
    await expect(page).toHaveTitle(/Bess, copy/);
  });
});
