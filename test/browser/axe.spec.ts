import { expect, test, type Page } from '@playwright/test';
import { faultsIn } from './faults';
import { grip, shape, spotOf } from './grips';
import { openPage } from './page';

async function openAll(page: Page): Promise<void> {
  await page.locator('details').evaluateAll((all) => all.forEach((one) => one.setAttribute('open', '')));
}

for (const width of [390, 1280]) {
  test(`axe finds nothing wrong at ${width} px, in light and dark, with everything open`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.setViewportSize({ width, height: 844 });
    await openPage(page);
    await openAll(page);
    const grounds = new Set<string>();
    for (const colorScheme of ['light', 'dark'] as const) {
      await test.step(colorScheme, async () => {
        await page.emulateMedia({ colorScheme });
        grounds.add(await page.evaluate(() => getComputedStyle(document.body).backgroundColor));
        expect(await faultsIn(page)).toEqual([]);
      });
    }
    expect(grounds.size).toBe(2);
  });
}

test('axe finds nothing wrong with the keys, the settings and the designs open, and would find a fault', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openPage(page);
  for (const [press, within] of [
    ['Keys', page.getByRole('dialog', { name: 'Keys' })],
    ['Settings', page.getByRole('radio', { name: 'inches' })],
    ['Designs', page.getByRole('dialog', { name: 'Your designs' })],
  ] as const) {
    await page.getByRole('button', { name: press }).click();
    await expect(within).toBeVisible();
    expect(await faultsIn(page), press).toEqual([]);
    await page.keyboard.press('Escape');
    await expect(within).toBeHidden();
  }
  await page.evaluate(() => document.body.append(document.createElement('button')));
  expect(await faultsIn(page)).not.toEqual([]);
});

for (const [colorScheme, width] of [
  ['light', 1280],
  ['dark', 390],
] as const) {
  test(`axe finds nothing wrong with the tools of the outline in ${colorScheme} at ${width} px`, async ({ page }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.setViewportSize({ width, height: 844 });
    await openPage(page);
    const check = (what: string) => test.step(what, async () => expect(await faultsIn(page)).toEqual([]));

    await shape(page);
    const { x, y } = await spotOf(page, 'middle front neck-curve-left');
    await page.mouse.click(x, y);
    await expect(grip(page, 'handle front neck-curve-left 0')).toBeAttached();
    await check('an edge of the outline is chosen');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('form', { name: 'Exact size' })).toBeVisible();
    await check('exact numbers are typed');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Done' }).click();
    await page.getByRole('button', { name: 'Choose edges' }).click();
    await expect(page.locator('[data-choose]').first()).toBeAttached();
    await check('edges are chosen');
    await page.getByRole('button', { name: 'New', exact: true }).click();
    await expect(page.locator('[data-starter]').first()).toBeVisible();
    await check('starters are offered');
    await page.locator('[data-starter="round-neck"]').click();
    await check('a starter is measured');
    await page.getByRole('button', { name: 'Choose another' }).click();
    await page.locator('[data-starter="nothing"]').click();
    await expect(page.locator('[data-grip="cursor"]')).toBeFocused();
    await page.keyboard.press('Enter');
    await check('a piece is drawn from nothing');
  });
}

test('everything can be reached by the Tab key, and the focus can be seen; forced colours take nothing away', async ({
  page,
}) => {
  await openPage(page);
  const reached = new Set<string>();
  for (let i = 0; i < 40; i++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const element = document.activeElement as HTMLElement;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      const seen = outlineStyle !== 'none' && outlineWidth !== '0px';
      return { name: element.getAttribute('aria-label') ?? element.textContent.trim(), seen, tag: element.tagName };
    });
    if (at.tag === 'BODY') continue;
    expect(at.seen, at.name).toBe(true);
    reached.add(at.name);
  }
  for (const name of ['Open', 'Save', 'Settings', 'Keys', 'Fit', 'Picked edges']) {
    expect([...reached], name).toContainEqual(expect.stringContaining(name));
  }

  await page.emulateMedia({ forcedColors: 'active' });
  const colours = await page
    .getByRole('application')
    .locator('g.edge path.outline')
    .first()
    .evaluate((path) => [getComputedStyle(path).stroke, getComputedStyle(document.body).backgroundColor]);
  expect(colours[0]).not.toBe(colours[1]);
});
