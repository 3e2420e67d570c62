import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { DEFAULT_HANDOUT } from '../../src/piece';
import { readPdf, type ReadPage } from '../handout/pdf/reader';
import { SAMPLES } from '../samples/sample';
import { chooseFile, faultsOf, openPage, sampleText } from './page';

/** The two documents may differ by the rounding of their numbers, mm. */
const SLACK = 0.1;

const EXERCISE = { paper: 'Letter', orientation: 'landscape', version: 'exercise', ink: 'black' } as const;

/** The document that the page makes itself. */
async function made(page: Page): Promise<readonly ReadPage[]> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as PDF' }).press('Enter');
  return (await readPdf(readFileSync(await (await download).path()))).pages;
}

/** The document that the browser prints. */
async function printed(page: Page): Promise<readonly ReadPage[]> {
  await page.evaluate(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', '');
  });
  await page.getByRole('button', { name: 'Print', exact: true }).press('Enter');
  await expect(page.locator('html[data-printed]')).toBeAttached();
  const { pages } = await readPdf(await page.pdf({ preferCSSPageSize: true }));
  await page.evaluate(() => {
    dispatchEvent(new Event('afterprint'));
    document.documentElement.removeAttribute('data-printed');
  });
  await expect(page.locator('.printed-pages')).toHaveCount(0);
  return pages;
}

/** All that can be read on a page in its order, without the room between words: it is no letter in a document. */
const lettersOf = ({ texts }: ReadPage): string =>
  texts
    .map(({ text }) => text)
    .join('')
    .replaceAll(/\s/gu, '');

/** Where each letter that begins a text of both documents stands, with how many letters are before it. */
function startsOf({ texts }: ReadPage): Map<number, { readonly x: number; readonly y: number }> {
  const starts = new Map<number, { x: number; y: number }>();
  let before = 0;
  for (const { text, x, y } of texts) {
    if (!/^\s/u.test(text)) starts.set(before, { x, y });
    before += text.replaceAll(/\s/gu, '').length;
  }
  return starts;
}

/** Texts and lines that are not whole on the page, in words. */
function beyond({ width, height, texts, paths }: ReadPage): string[] {
  const out = (left: number, top: number, right: number, bottom: number) =>
    left < -SLACK || top < -SLACK || right > width + SLACK || bottom > height + SLACK;
  const lost = texts.filter(({ x, y, width: long, size, angle }) => {
    const turn = (angle * Math.PI) / 180;
    const corners = [0, long].flatMap((along) =>
      [-size, size / 4].map((down) => [
        x + along * Math.cos(turn) - down * Math.sin(turn),
        y + along * Math.sin(turn) + down * Math.cos(turn),
      ]),
    );
    const [xs, ys] = [0, 1].map((i) => corners.map((corner) => corner[i]!)) as [number[], number[]];
    return out(Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys));
  });
  const cut = paths.filter(({ left, top, right, bottom }) => out(left, top, right, bottom));
  return [...lost.map(({ text }) => text), ...cut.map(({ left, top }) => `a line from ${left}, ${top}`)];
}

/** The longest level lines that end left of the words "100 mm", mm: the bar that stands beside them. */
function barOf(pages: readonly ReadPage[]): number {
  for (const { texts, paths } of pages) {
    const word = texts.find(({ text }) => text.startsWith('100 mm'));
    if (!word) continue;
    const level = paths.filter(
      ({ top, bottom, right }) => bottom - top < 0.05 && Math.abs(bottom - word.y) < 0.5 && right < word.x,
    );
    return Math.max(...level.map(({ left, right }) => right - left));
  }
  return NaN;
}

/** What has to be true of each of the two documents. */
function expectDocument(pages: readonly ReadPage[], count: number, size: readonly [number, number]): void {
  expect(pages).toHaveLength(count);
  for (const page of pages) {
    expect(page.width).toBeCloseTo(size[0], 0);
    expect(page.height).toBeCloseTo(size[1], 0);
    expect(page.images).toBe(0);
    expect(page.fonts.length).toBeGreaterThan(0);
    expect(page.fonts.filter(({ embedded }) => !embedded)).toEqual([]);
    expect(beyond(page)).toEqual([]);
  }
  expect(Math.abs(barOf(pages) - 100)).toBeLessThan(0.2);
}

test('the handout of every sample is the same printed by the browser and made in the page', async ({ page }) => {
  const faults = faultsOf(page);
  await openPage(page);
  const dialog = page.getByRole('dialog', { name: 'Handout' });
  // By its place: to look for roles among all that is drawn takes its time.
  const sheets = page.locator('dialog[open] ol.pages > li');
  for (const [i, sample] of SAMPLES.entries()) {
    await test.step(sample, async () => {
      const design = JSON.parse(sampleText(sample)) as { name: string };
      // Every second one as a teacher would change it; so the border of the blanket, whose fabric alone takes as long as
      // all others, is drawn without it.
      const changed = i % 2 === 0;
      const file = changed ? { ...design, handout: { ...DEFAULT_HANDOUT, ...EXERCISE } } : design;
      await chooseFile(page, `${sample}.edgewise.json`, JSON.stringify(file));
      await expect(page).toHaveTitle(new RegExp(design.name.replaceAll(/[.*+?]/g, '.')));
      await page.keyboard.press('h');
      await expect(sheets.first().locator('svg')).toHaveAttribute('viewBox', changed ? /^0 0 279.4 / : /^0 0 210 /);
      const count = await sheets.count();
      const [own, theirs] = [await made(page), await printed(page)];
      const size = changed ? ([279.4, 215.9] as const) : ([210, 297] as const);
      expectDocument(own, count, size);
      expectDocument(theirs, count, size);
      for (const [n, one] of own.entries()) {
        const other = theirs[n]!;
        expect(lettersOf(other)).toBe(lettersOf(one));
        const [here, there] = [startsOf(one), startsOf(other)];
        const both = [...here].filter(([at]) => there.has(at));
        expect(both.length).toBeGreaterThan(here.size / 2);
        const moved = both.filter(([at, { x, y }]) => {
          const { x: left, y: down } = there.get(at)!;
          return Math.hypot(left - x, down - y) > SLACK;
        });
        expect(moved).toEqual([]);
      }
      await page.keyboard.press('Escape');
      await expect(dialog).toBeHidden();
    });
  }
  expect(faults).toEqual([]);
});
