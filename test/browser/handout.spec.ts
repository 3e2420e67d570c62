import { expect, test, type Download, type Locator, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { readPdf, type ReadPage } from '../handout/pdf/reader';
import { faultsIn } from './faults';
import { faultsOf, openPage } from './page';

/** Presses a button that saves a file, and takes the file. */
async function saved(page: Page, button: Locator): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent('download');
  await button.press('Enter');
  const file: Download = await download;
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

const wordsOf = (pages: readonly ReadPage[]) =>
  pages
    .flatMap(({ texts }) => texts.map(({ text }) => text))
    .join(' ')
    .replace(/\s+/gu, ' ');

test('a handout is composed by keys, saved in every way, and put aside', async ({ page }) => {
  const faults = faultsOf(page);
  await openPage(page);
  const dialog = page.getByRole('dialog', { name: 'Handout' });
  const sheets = dialog.getByRole('list', { name: 'The pages' }).getByRole('listitem');

  await test.step('the button and the key H open it, Escape closes it', async () => {
    await page.getByRole('button', { name: 'Handout' }).click();
    await expect(
      sheets
        .first()
        .getByText('Maren’s harbour pullover')
        .or(sheets.first().getByText("Maren's harbour pullover"))
        .first(),
    ).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();
    await page.keyboard.press('h');
    await expect(dialog).toBeVisible();
    await expect(dialog.getByText(/^\d+ pages?$/)).toBeVisible();
    expect(await faultsIn(page)).toEqual([]);
  });

  await test.step('keys alone change what is printed', async () => {
    await dialog.getByRole('radio', { name: 'A4' }).focus();
    await page.keyboard.press('ArrowRight');
    await expect(dialog.getByRole('radio', { name: 'Letter' })).toBeChecked();
    await expect(sheets.first().locator('svg')).toHaveAttribute('viewBox', '0 0 215.9 279.4');
    const sections = dialog.getByRole('checkbox', { name: 'Sections, to tick off' });
    await expect(sheets.getByText('Section by section')).toHaveCount(1);
    await sections.focus();
    await page.keyboard.press('Space');
    await expect(sheets.getByText('Section by section')).toHaveCount(0);
    await dialog.getByRole('checkbox', { name: 'Ruler to check the print' }).focus();
    await page.keyboard.press('Alt+ArrowUp');
    await expect(dialog.getByRole('checkbox', { name: 'Ruler to check the print' })).toBeFocused();
  });

  const count = await sheets.count();

  await test.step('the document has the pages, with their words as text', async () => {
    const { name, bytes } = await saved(page, dialog.getByRole('button', { name: 'Save as PDF' }));
    expect(name).toBe("Maren's harbour pullover - Neckband - handout.pdf");
    const { pages } = await readPdf(bytes);
    expect(pages).toHaveLength(count);
    expect(wordsOf(pages)).toContain('Edge by edge');
    expect(wordsOf(pages)).toContain('Neckband: 84 stitches');
  });

  await test.step('drawing, openings and words are saved under names that say what they are', async () => {
    await dialog.getByText('Save or copy in other forms').click();
    const way = (name: string) => saved(page, dialog.getByRole('button', { name, exact: true }));
    const svg = await way('Drawing as SVG');
    expect(svg.name).toBe("Maren's harbour pullover - Neckband - drawing.svg");
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg.bytes.toString())!.map(Number);

    await dialog.getByRole('combobox', { name: 'Dots to the inch' }).selectOption('150');
    const png = await way('Drawing as PNG');
    expect(png.name).toBe("Maren's harbour pullover - Neckband - drawing.png");
    // Width and height stand in the first chunk of the file (PNG specification, 11.2.2).
    expect(png.bytes.subarray(1, 4).toString()).toBe('PNG');
    expect(Math.abs(png.bytes.readUInt32BE(16) - (width! / 25.4) * 150)).toBeLessThanOrEqual(1);
    expect(Math.abs(png.bytes.readUInt32BE(20) - (height! / 25.4) * 150)).toBeLessThanOrEqual(1);
    // … and the second tells its true size in dots to the metre (11.3.4.3): 150 / 0.0254.
    expect(png.bytes.subarray(37, 41).toString()).toBe('pHYs');
    expect(png.bytes.readUInt32BE(41)).toBe(5906);

    const csv = await way('All openings as CSV');
    expect(csv.name).toBe("Maren's harbour pullover - Neckband - plan.csv");
    const [head, ...rows] = csv.bytes
      .toString()
      .trimEnd()
      .split('\r\n')
      .map((row) => row.split(','));
    const n = head!.indexOf('n');
    expect(rows.filter((row) => row[n] !== '')).toHaveLength(84);

    const text = await way('Instructions as text');
    expect(text.name).toBe("Maren's harbour pullover - Neckband - instructions.txt");
    expect(text.bytes.toString()).toMatch(/pick up/i);
    expect(text.bytes.toString()).toContain('84');
  });

  await test.step('on a phone in the dark nothing scrolls sideways, and axe finds nothing', async () => {
    await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
    await page.setViewportSize({ width: 390, height: 844 });
    const over = await dialog.evaluate((box) =>
      [box, ...box.querySelectorAll('*')]
        .filter(
          (one) =>
            one instanceof HTMLElement &&
            one.scrollWidth > one.clientWidth + 1 &&
            getComputedStyle(one).overflowX !== 'visible' &&
            one.clientWidth > 1,
        )
        .map((one) => one.outerHTML.slice(0, 80)),
    );
    expect(over).toEqual([]);
    expect(await dialog.evaluate((box) => box.scrollWidth)).toBeLessThanOrEqual(390);
    expect(await faultsIn(page)).toEqual([]);
  });

  await test.step('Escape closes it, and undo takes back one setting after the other', async () => {
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.keyboard.press('h');
    await expect(sheets.getByText('Section by section')).toHaveCount(1);
    await expect(dialog.getByRole('radio', { name: 'Letter' })).toBeChecked();
  });
  expect(faults).toEqual([]);
});
