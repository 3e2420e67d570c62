import { expect, test } from '@playwright/test';
import { count, drawing, edgeLine, edgeRow, faultsOf, openPage } from './page';

test('a newcomer sees the neckband of the pullover planned, at once, and can read every sample', async ({ page }) => {
  const faults = faultsOf(page);
  await openPage(page);
  await expect(page).toHaveTitle(/Maren's harbour pullover/);
  await expect(count(page)).toHaveText('84');
  await expect(page.getByRole('heading', { name: 'Neckband' })).toBeVisible();
  // Numbers, markers with running counts, the start: all in view without a touch.
  for (const word of ['10', '20', '30', '14', '28', '42', 'start and end']) {
    await expect(drawing(page).getByText(word, { exact: true }).first()).toBeInViewport();
  }
  await expect(edgeLine(page, 'front', 'neck-center')).toBeInViewport();
  await expect(edgeRow(page, 'front', 'neck-curve-left')).toContainText('14.4');
  expect(faults).toEqual([]);

  await test.step('used and skipped openings differ by shape, size and stem before colour', async () => {
    const edge = drawing(page).locator('g.edge[data-edge="neck-curve-left"]');
    await expect(edge.locator('path.used')).toHaveCount(1);
    await expect(edge.locator('path.stem')).toHaveCount(1);
    const [fill, ring] = await Promise.all([
      edge.locator('path.used').evaluate((path) => getComputedStyle(path).fill),
      edge.locator('path.skipped').evaluate((path) => getComputedStyle(path).fill),
    ]);
    expect(fill).not.toBe('none');
    expect(ring).toBe('none');
  });

  await test.step('the summary tells the piece, the count and what to do next', async () => {
    const summary = page.getByRole('region', { name: 'The count' });
    await expect(summary).toContainText('a multiple of 4');
    await expect(summary).toContainText('Begin at the top of Front, upper left neck');
  });

  await test.step('each sample is shown by its name', async () => {
    for (const [title, heading] of [
      ['V-neck vest', /lamplighter vest/],
      ['Garter blanket', /low-tide blanket/],
      ['Heel flap', /sock, heel flap/],
      ['Bare strip', /71 stitches over 88 rows/],
      ['Cardigan front', /boathouse cardigan/],
      ['Round-neck pullover', /harbour pullover/],
    ] as const) {
      await page.getByRole('button', { name: 'Designs' }).click();
      await page.getByRole('button', { name: title }).click();
      await expect(page).toHaveTitle(heading);
      await expect(drawing(page).locator('g.edge').first()).toBeAttached();
    }
  });

  await test.step('of several pick-ups another one can be shown', async () => {
    await page.getByRole('button', { name: 'Designs' }).click();
    await page.getByRole('button', { name: 'V-neck vest' }).click();
    const chooser = page.getByRole('combobox', { name: 'Pick-up' });
    await expect(chooser).toBeVisible();
    const before = await count(page).textContent();
    const options = await chooser.locator('option').allTextContents();
    expect(options.length).toBeGreaterThan(1);
    await chooser.selectOption({ index: 1 });
    await expect(count(page)).not.toHaveText(before!);
  });
  expect(faults).toEqual([]);
});

test('a sample that can not be fetched is told of, and the work stays', async ({ page }) => {
  await page.route('**/samples/*.json', (route) => route.abort());
  await openPage(page);
  await page.getByRole('button', { name: 'Designs' }).click();
  await page.getByRole('button', { name: 'V-neck vest' }).click();
  await expect(page.getByRole('alert')).toContainText('could not be fetched');
  await expect(count(page)).toHaveText('84');
});
