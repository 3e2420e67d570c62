import { expect, test, type Locator, type Page } from '@playwright/test';
import { faultsIn } from './faults';
import { drawing, edgeLine, middleOf, openPage } from './page';

const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const row = (page: Page, edge: string): Locator => page.locator(`[data-outline-edge="${edge}"]`);
const said = (page: Page) => page.locator('[aria-live="polite"]').first();

async function openOutline(page: Page): Promise<void> {
  await openPage(page);
  await page.locator('summary', { hasText: 'Outline' }).click();
  await expect(page.getByRole('table', { name: 'The outline, edge by edge' })).toBeVisible();
}

async function fill(page: Page, name: string, text: string): Promise<void> {
  await field(page, name).fill(text);
  await field(page, name).press('Enter');
}

test('sizes and steps are typed, the drawing follows, and what can not be is refused in a sentence', async ({
  page,
}) => {
  await openOutline(page);
  await test.step('sizes are typed in stitches, in rows or as lengths, and one step undoes each', async () => {
    const before = await edgeLine(page, 'front', 'side-left').getAttribute('d');
    await fill(page, 'Rows up: left side', '25 cm');
    await expect(field(page, 'Rows up: left side')).toHaveValue('75');
    await expect(row(page, 'side-left').getByRole('status')).toHaveText('25 cm comes to 75 rows, which is 25.0 cm.');
    await expect(said(page)).toContainText('left side: 75 rows, 25.0 cm');
    await expect(edgeLine(page, 'front', 'side-left')).not.toHaveAttribute('d', before!);
    // Both halves are alike.
    await expect(field(page, 'Rows up: right side')).toHaveValue('75');
    await undo(page).click();
    await expect(field(page, 'Rows up: left side')).toHaveValue('74');
    await expect(undo(page)).toBeDisabled();
  });

  await test.step('an outline that crosses itself is refused in a sentence beside the field, and is no step', async () => {
    const beyond = page.getByRole('checkbox', { name: 'What lies beyond moves along' });
    await beyond.uncheck();
    await fill(page, 'Stitches across: center neck', '100');
    await expect(row(page, 'neck-center').getByRole('alert')).toContainText('meets itself');
    await expect(field(page, 'Stitches across: center neck')).toHaveValue('12');
    await expect(undo(page)).toBeDisabled();
    await beyond.check();
  });

  await test.step('words that are not understood are marked where they stand, and the old steps stay', async () => {
    await page.getByRole('button', { name: 'More: left armhole' }).click();
    const steps = field(page, 'Steps: left armhole');
    await steps.fill('bind off 2\npurl about\nwork 6 rows even');
    await page.getByRole('button', { name: 'Take these steps: left armhole' }).click();
    await expect(row(page, 'armhole-left').getByRole('alert')).toContainText('purl');
    const marked = await steps.evaluate((area) => {
      const { value, selectionStart, selectionEnd } = area as HTMLTextAreaElement;
      return value.slice(selectionStart, selectionEnd);
    });
    expect(marked).toMatch(/^purl/);
    await expect(undo(page)).toBeDisabled();
    await steps.fill('bind off 3; dec 1 every 2 rows 4 times; work 38 rows even');
    await steps.press('Control+Enter');
    await expect(row(page, 'armhole-left').getByRole('alert')).toContainText('7 stitches in over 48 rows');
    await page.getByRole('button', { name: 'Move the far corner to fit' }).click();
    await expect(field(page, 'Rows up: left armhole')).toHaveValue('48');
    await expect(field(page, 'Stitches across: left armhole')).toHaveValue('7');
  });
});

test('a piece is duplicated, mirrored and removed; a row lights up its edge and an edge its row', async ({ page }) => {
  await openOutline(page);
  await test.step('a piece is duplicated, mirrored and removed, and undo brings all back', async () => {
    const piece = page.getByRole('combobox', { name: 'Piece' });
    await page.getByRole('button', { name: 'Duplicate', exact: true }).click();
    await expect(piece.locator('option:checked')).toHaveText('Front, copy');
    await page.getByRole('checkbox', { name: 'Both halves alike' }).uncheck();
    await fill(page, 'Stitches across: left underarm', '5');
    await page.getByRole('button', { name: 'Mirror', exact: true }).click();
    await page.getByRole('button', { name: 'Remove piece' }).click();
    await expect(piece.locator('option')).toHaveText(['Front', 'Back']);
    for (let i = 0; i < 5; i++) await undo(page).click();
    await expect(undo(page)).toBeDisabled();
  });

  await test.step('a row lights up its edge and an edge its row, on either piece', async () => {
    await page.getByRole('combobox', { name: 'Piece' }).selectOption('Front');
    await row(page, 'neck-curve-left').hover();
    await expect(drawing(page).locator('polyline.lit')).toHaveAttribute('data-edge', 'neck-curve-left');
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    const { x, y } = await middleOf(page, 'back', 'side-left');
    await page.mouse.click(x, y);
    await expect(page.getByRole('combobox', { name: 'Piece' }).locator('option:checked')).toHaveText('Back');
    await expect(row(page, 'side-left')).toHaveClass(/lit/);
  });
});

test('by keys alone an edge becomes a curve, its schedule is used, its steps are mended, a corner is added', async ({
  page,
}) => {
  await openPage(page);
  await page.locator('summary', { hasText: 'Outline' }).focus();
  await page.keyboard.press('Enter');
  const path = page.getByRole('combobox', { name: 'Path: left side' });
  await path.focus();
  await page.keyboard.press('ArrowDown');
  await expect(path.locator('option:checked')).toHaveText('curved');
  await field(page, 'Stitches across: left side').focus();
  await page.keyboard.type('2');
  await page.keyboard.press('Tab');
  await expect(row(page, 'side-left')).toContainText('up to the left');
  await expect(row(page, 'side-left')).toContainText(/decrease 1 at the right edge.*(strays from|follows) the line/is);
  await page.getByRole('button', { name: 'More: left side' }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Use this schedule: left side' })).toBeFocused();
  await page.keyboard.press('Enter');
  const steps = field(page, 'Steps: left side');
  await expect(steps).toHaveValue(/decrease 1/);
  await steps.focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('dec 1 every 20 rows twice; work 34 rows even');
  await page.keyboard.press('Control+Enter');
  await expect(row(page, 'side-left')).toContainText('Decrease 1 at the right edge every 20th row');
  await page.getByRole('button', { name: 'Add a corner to left side' }).focus();
  await page.keyboard.press('Enter');
  await expect(said(page)).toContainText('A corner was added');
  for (let i = 0; i < 5; i++) await page.keyboard.press('Control+Z');
  await expect(undo(page)).toBeDisabled();
  await expect(path.locator('option:checked')).toHaveText('straight');
});

test.describe('by touch, at the width of a phone', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } });

  test('every edge is a card with its own labels, and nothing is wider than the page', async ({ page }) => {
    await openPage(page);
    await page.locator('summary', { hasText: 'Outline' }).tap();
    await page.getByRole('button', { name: 'More: left neck curve' }).tap();
    const fields = page.getByRole('group', { name: 'Handles of the curve: left neck curve' });
    await expect(fields.getByRole('textbox')).toHaveCount(4);
    await fill(page, 'Rows up: left neck curve', '16');
    await expect(field(page, 'Rows up: right neck curve')).toHaveValue('16');
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  });
});

for (const width of [390, 1280]) {
  test(`axe finds nothing wrong with the table at ${width} px, with an edge of each path asked for`, async ({
    page,
  }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.setViewportSize({ width, height: 844 });
    await openOutline(page);
    await page.getByRole('button', { name: 'More: left armhole' }).click();
    await page.getByRole('button', { name: 'More: left neck curve' }).click();
    await field(page, 'Steps: left armhole').fill('never');
    await page.getByRole('button', { name: 'Take these steps: left armhole' }).click();
    await expect(row(page, 'armhole-left').getByRole('alert')).toBeVisible();
    expect(await faultsIn(page)).toEqual([]);
  });
}
