import { expect, test } from '@playwright/test';
import { canvas, count, openPage } from './page';

const WIDTHS = [320, 390, 768, 999, 1000, 1280, 1440, 2560];

test('at any width nothing scrolls sideways, and the drawing and the count are in sight', async ({ page }) => {
  for (const width of WIDTHS) {
    await test.step(`at ${width} px`, async () => {
      await page.setViewportSize({ width, height: 844 });
      await openPage(page);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
      await expect(canvas(page)).toBeInViewport({ ratio: 0.7 });
      await expect(count(page)).toBeInViewport();
      const box = (await canvas(page).boundingBox())!;
      expect(box.width).toBeGreaterThan(width * 0.4);
      expect(box.height).toBeGreaterThan(280);
    });
  }
});

test('on a phone the page scrolls past the drawing, and targets are large enough for a thumb', async ({ browser }) => {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  const page = await context.newPage();
  await openPage(page);
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeGreaterThan(844);
  const box = (await canvas(page).boundingBox())!;
  expect(box.height).toBeLessThan(844 * 0.7);
  const small = await page
    .locator('button:visible, select:visible, input:visible, summary:visible')
    .evaluateAll((all) =>
      all
        .filter((element) => !element.matches('[type="radio"], [type="checkbox"], .hidden'))
        .map((element) => ({ element, box: element.getBoundingClientRect() }))
        .filter(({ box }) => box.height < 39.5)
        .map(({ element, box }) => `${element.outerHTML.slice(0, 80)} ${box.height}`),
    );
  expect(small).toEqual([]);
  await context.close();
});
