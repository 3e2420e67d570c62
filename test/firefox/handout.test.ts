import { SaxesParser } from 'saxes';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { readPdf } from '../handout/pdf/reader';
import { startFirefox, type Firefox } from './firefox';
import { downloaded, downloadedBytes, eventually, howMany, leave, openPage, press, textOf } from './page';

let firefox: Firefox;
beforeAll(async () => {
  firefox = await startFirefox();
});
afterAll(() => firefox.close());

const DIALOG = 'dialog[open].handout';
const SHEETS = `${DIALOG} ol.pages`;

it('composes a handout beside its pages, and saves it as a document and the drawing as SVG', async () => {
  const page = await openPage(firefox);
  await page.keyboard.press('h');
  await page.waitForSelector(`${SHEETS} > li svg`, { visible: true });
  expect(await textOf(page, SHEETS)).toContain('Section by section');

  // The letters of the pages are their own, as wide as they are laid out.
  await eventually(() => page.evaluate(() => document.fonts.check('10px "Edgewise Serif"'))).toBe(true);
  const [drawn] = await page.$$eval(`${SHEETS} text`, (texts) =>
    texts.filter(({ textContent }) => textContent === 'Section by section').map((text) => text.getComputedTextLength()),
  );

  const tick = await page.waitForSelector(
    `${DIALOG} ::-p-xpath(.//label[normalize-space()="Sections, to tick off"]/input)`,
  );
  await tick!.click();
  await eventually(() => textOf(page, SHEETS)).not.toContain('Section by section');
  // Its row goes to the end, and the keys with it.
  await page.keyboard.press(' ');
  await eventually(() => textOf(page, SHEETS)).toContain('Section by section');

  const count = await howMany(page, `${SHEETS} > li svg`);
  await press(page, 'Save as PDF', DIALOG);
  const bytes = await downloadedBytes(firefox, "Maren's harbour pullover - Neckband - handout.pdf");
  const { pages } = await readPdf(bytes);
  expect(pages).toHaveLength(count);
  const heading = pages.flatMap(({ texts }) => texts).find(({ text }) => text === 'Section by section');
  expect(heading!.width).toBeCloseTo(drawn!, 1);
  expect(pages.flatMap(({ fonts }) => fonts).filter(({ embedded }) => !embedded)).toEqual([]);

  await (await page.waitForSelector(`${DIALOG} .settings details details summary`))!.click();
  await press(page, 'Drawing as SVG', DIALOG);
  const svg = await downloaded(firefox, "Maren's harbour pullover - Neckband - drawing.svg");
  let paths = 0;
  const parser = new SaxesParser();
  parser.on('opentag', ({ name }) => void (paths += name === 'path' ? 1 : 0));
  parser.on('error', (error) => expect.fail(error.message));
  parser.write(svg).close();
  expect(paths).toBeGreaterThan(10);

  await page.keyboard.press('Escape');
  await eventually(() => howMany(page, 'dialog[open]')).toBe(0);
  await leave(page);
});
