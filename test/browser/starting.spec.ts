import { expect, test, type Page } from '@playwright/test';
import { documentOf, stepsOf } from './grips';
import { canvas, count, drawing, faultsOf, openPage } from './page';

const dialogOf = (page: Page) => page.getByRole('dialog');

const STARTERS = [
  'strip',
  'rectangle',
  'round-neck',
  'v-neck',
  'cardigan-left',
  'cardigan-right',
  'back',
  'sleeve',
  'raglan',
  'heel-flap',
  'shawl',
  'garter-square',
];

test('from an empty shelf to a round-neck front with its neckband count in a few actions', async ({ page }) => {
  const faults = faultsOf(page);
  await openPage(page);
  let actions = 0;
  const press = async (name: string | RegExp) => {
    const place = (await dialogOf(page).count()) > 0 ? dialogOf(page) : page;
    await place.getByRole('button', { name }).first().click();
    actions += 1;
  };
  await press('Designs');
  const shelf = page.getByRole('dialog', { name: 'Your designs' });
  await expect(shelf.getByRole('list', { name: 'Your designs' }).getByRole('listitem')).toHaveCount(0);
  await expect(shelf).toBeVisible();
  await press('New');
  const dialog = page.getByRole('dialog', { name: 'A new design' });
  await expect(dialog).toBeVisible();
  await press(/^Front with a round neck/);
  // What one knows of oneself: the chest, and the depth of the neck.
  for (const [measure, typed] of [
    ['Width at the chest', '48'],
    ['Neck depth', '9'],
  ] as const) {
    await dialogOf(page).getByLabel(measure).fill(typed);
    await dialogOf(page).getByLabel(measure).press('Enter');
    actions += 2;
  }
  await expect(dialogOf(page).getByRole('status')).toHaveText(/^Neckband: \d+ stitches$/);
  const told = /\d+/.exec((await dialogOf(page).getByRole('status').textContent())!)![0];
  await press('Begin');
  await expect(dialogOf(page)).toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'Neckband' })).toBeVisible();
  await expect(count(page)).toHaveText(told);
  expect(actions).toBeLessThanOrEqual(12);
  // It is a round-neck front to those measures: 48 cm across.
  await expect(drawing(page)).toContainText('48.');
  expect(faults).toEqual([]);
});

test('every starter begins without fault, with the count that was told', async ({ page }) => {
  const faults = faultsOf(page);
  await openPage(page);
  const offered = page.locator('[data-starter]');
  for (const kind of STARTERS) {
    await test.step(kind, async () => {
      await page.keyboard.press('n');
      await expect(offered).toHaveCount(STARTERS.length + 1);
      const title = await page.locator(`[data-starter="${kind}"] span`).last().textContent();
      await page.locator(`[data-starter="${kind}"]`).click();
      const told = await dialogOf(page).getByRole('status').locator('strong').allTextContents();
      await expect(dialogOf(page).getByRole('alert')).toHaveCount(0);
      await dialogOf(page).getByRole('button', { name: 'Begin' }).click();
      await expect(dialogOf(page)).toHaveCount(0);
      await expect(page).toHaveTitle(new RegExp(`^${title!}`));
      if (kind === 'sleeve') expect(told).toEqual([]);
      else expect(told[0]).toContain(`: ${(await count(page).textContent())!} stitches`);
      await expect(drawing(page).locator('path.outline').first()).toBeAttached();
    });
  }
  // Each one is a step, and the sample that was there first comes back.
  for (const _ of STARTERS) {
    await expect(page).not.toHaveTitle(/pullover/);
    await page.keyboard.press('Control+z');
  }
  await expect(page).toHaveTitle(/pullover/);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  expect(faults).toEqual([]);
});

test('measures are read as people write them, nonsense stays out, and a contradiction is not begun', async ({
  page,
}) => {
  await openPage(page);
  await canvas(page).focus();
  await page.keyboard.press('n');
  await page.locator('[data-starter="round-neck"]').click();
  const dialog = dialogOf(page);
  const depth = dialog.getByLabel('Neck depth');
  const begin = dialog.getByRole('button', { name: 'Begin' });
  const told = dialog.getByRole('status');
  const counts = new Set([await told.textContent()]);
  for (const [typed, shown] of [
    ['5,5', '5.5'],
    ['4 1/2', '4.5'],
    ['7½', '7.5'],
    ['3 in', '7.6'],
  ] as const) {
    await depth.fill(typed);
    await depth.press('Enter');
    await expect(depth).toHaveValue(shown);
    counts.add(await told.textContent());
  }
  // The count follows the measure.
  expect(counts.size).toBeGreaterThan(2);
  const neck = dialog.getByLabel('Neck width');
  const width = await neck.inputValue();
  await neck.fill('wide');
  await neck.press('Enter');
  await expect(neck).toHaveValue(width);
  await expect(dialog.getByRole('alert')).toContainText(`“wide” is not a number, so ${width} stays.`);
  await neck.fill('44');
  await neck.press('Enter');
  await expect(dialog.getByRole('alert')).toHaveText('A length from 6.0 cm to 40.0 cm is needed, so 18.0 stays.');
  await neck.fill('40');
  await neck.press('Enter');
  await expect(dialog.getByRole('alert').last()).toContainText('wider than the chest');
  await expect(begin).toBeDisabled();
  await neck.fill('18');
  await neck.press('Enter');
  await expect(dialog.getByRole('alert')).toHaveCount(0);
  await expect(begin).toBeEnabled();
  // Keys of the page mean nothing while the dialog stands, and leaving it makes no step.
  await begin.focus();
  for (const key of ['e', 'p', 'Control+z', '0']) await page.keyboard.press(key);
  await expect(page.getByRole('button', { name: 'Shape the outline', includeHidden: true })).toHaveAttribute(
    'aria-pressed',
    'false',
  );
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  expect(await stepsOf(page)).toBe(0);
});

test('a piece is put beside those of the design', async ({ page }) => {
  await openPage(page);
  const before = await documentOf(page);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.locator('[data-starter="sleeve"]').click();
  await dialogOf(page).getByRole('button', { name: 'Add it to this design' }).click();
  await expect(dialogOf(page)).toHaveCount(0);
  const after = await documentOf(page);
  expect(after.pieces.map(({ id }) => id)).toEqual([...before.pieces.map(({ id }) => id), 'sleeve']);
  expect(after.pickups).toEqual(before.pickups);
  expect(await stepsOf(page)).toBe(1);
  await page.getByRole('button', { name: 'Shape the outline' }).click();
  await page.getByRole('button', { name: 'Sleeve', exact: true }).click();
  await expect(page.locator('[data-grip^="corner sleeve"]').first()).toBeAttached();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('button', { name: 'Sleeve', exact: true })).toHaveCount(0);
  expect(await documentOf(page)).toEqual(before);
});
