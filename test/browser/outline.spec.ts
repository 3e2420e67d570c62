import { expect, test, type Locator, type Page } from '@playwright/test';
import {
  cellOf,
  cornerIn,
  documentOf,
  edgeIn,
  grip,
  placeOf,
  pullBy,
  shape,
  spotOf,
  stepsOf,
  tabTo,
  takeBy,
  touchOn,
  undoAll,
} from './grips';
import { canvas, count, faultsOf, middleOf, openPage } from './page';

const bar = (page: Page): Locator => page.getByRole('group', { name: 'What is chosen' });

test('a corner follows the hand with its twin, the numbers and the count; it is one step', async ({ page }) => {
  const faults = faultsOf(page);
  await openPage(page);
  await shape(page);
  const before = await documentOf(page);
  await expect(count(page)).toHaveText('84');

  // The front neck ten rows deeper.
  const at = await takeBy(page, 'corner front neck-center', 0, -10);
  await expect(count(page)).not.toHaveText('84');
  const held = await count(page).textContent();
  expect(await placeOf(page, 'corner front neck-center')).toEqual([45, 94]);
  expect(await placeOf(page, 'corner front neck-curve-right')).toEqual([33, 94]);
  const numbers = page.locator('.follows');
  await expect(numbers).toContainText('+0 sts, −10 rows');
  await expect(numbers).toContainText('left neck curve: 9 sts × 24 rows');
  const box = (await numbers.boundingBox())!;
  const apart = (from: number, size: number, to: number) => Math.max(from - to, to - from - size, 0);
  expect(Math.hypot(apart(box.x, box.width, at.x), apart(box.y, box.height, at.y))).toBeLessThan(40);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await page.mouse.up();
  await expect(numbers).toHaveCount(0);
  await expect(count(page)).toHaveText(held!);
  expect(await stepsOf(page)).toBe(1);
  const after = await documentOf(page);
  expect(cornerIn(after, 'front', 'neck-center')).toEqual([6, 94]);
  expect(cornerIn(after, 'front', 'neck-curve-right')).toEqual([-6, 94]);
  expect(cornerIn(after, 'back', 'neck-center')).toEqual(cornerIn(before, 'back', 'neck-center'));
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(count(page)).toHaveText('84');
  expect(await documentOf(page)).toEqual(before);

  // Two rows up it is level with the outer end of the shoulder, and a line says so.
  await takeBy(page, 'corner front neck-curve-left', 0, 1.6);
  expect(await placeOf(page, 'corner front neck-curve-left')).toEqual([54, 120]);
  const ends = await page.locator('.hint').evaluateAll((lines) =>
    lines.map((line) =>
      line
        .getAttribute('points')!
        .split(' ')
        .map((end) => end.split(',').map(Number)),
    ),
  );
  expect(ends.some(([a, b]) => a![1] === b![1] && a![0] !== b![0])).toBe(true);
  await page.mouse.up();
  await expect(page.locator('.hint')).toHaveCount(0);
  expect(await stepsOf(page)).toBe(1);
  await undoAll(page);

  // An edge that is taken by its line moves with both its corners.
  const line = await middleOf(page, 'front', 'neck-center');
  const cell = await cellOf(page);
  await page.mouse.move(line.x + 3 * cell.stitch, line.y);
  await page.mouse.down();
  await page.mouse.move(line.x + 3 * cell.stitch, line.y + 5 * cell.row, { steps: 3 });
  await page.mouse.up();
  expect(await placeOf(page, 'corner front neck-center')).toEqual([45, 99]);
  expect(await placeOf(page, 'corner front neck-curve-right')).toEqual([33, 99]);
  await undoAll(page);
  expect(await documentOf(page)).toEqual(before);
  expect(faults).toEqual([]);
});

test('a crossing shows where, greys the last good plan, and is refused when the hand lets go', async ({ page }) => {
  await openPage(page);
  await shape(page);
  const before = await documentOf(page);
  await takeBy(page, 'corner front neck-curve-left', 7, 6);
  await expect(page.locator('.crossing')).toHaveCount(1);
  const mark = (await page.locator('.crossing circle').boundingBox())!;
  const on = await spotOf(page, 'corner front neck-curve-left');
  expect(Math.hypot(mark.x + mark.width / 2 - on.x, mark.y + mark.height / 2 - on.y)).toBeLessThan(40);
  const opacity = await canvas(page)
    .locator('svg')
    .first()
    .evaluate((svg) => Number(getComputedStyle(svg).opacity));
  expect(opacity).toBeLessThan(0.5);
  await expect(page.getByRole('alert')).toContainText('meets itself');
  await expect(count(page)).toHaveText('84');
  await page.mouse.up();
  await expect(page.locator('.crossing')).toHaveCount(0);
  await expect(bar(page).getByRole('alert')).toContainText('meets itself');
  await expect(count(page)).toHaveText('84');
  expect(await placeOf(page, 'corner front neck-curve-left')).toEqual([54, 118]);
  expect(await stepsOf(page)).toBe(0);
  expect(await documentOf(page)).toEqual(before);
  // What is done next clears the sentence away.
  await pullBy(page, 'corner front neck-center', 0, -10);
  await expect(bar(page).getByRole('alert')).toHaveCount(0);
  expect(await stepsOf(page)).toBe(1);
});

test('an edge is bent by its middle and its handles, and made straight, curved or worked in steps', async ({
  page,
}) => {
  await openPage(page);
  await shape(page);
  const before = await documentOf(page);
  const pathOf = async (edge: string) => edgeIn(await documentOf(page), 'front', edge).path;

  await pullBy(page, 'middle front side-left', -5, 0);
  const bent = await documentOf(page);
  expect(edgeIn(bent, 'front', 'side-left').path).toBe('curve');
  expect(edgeIn(bent, 'front', 'side-right').path).toBe('curve');
  expect((await placeOf(page, 'middle front side-left'))[0]).toBeCloseTo(73, 0);
  await expect(bar(page).getByRole('button', { name: 'curved' })).toHaveAttribute('aria-pressed', 'true');

  // A handle brought nearly over its corner runs plumb out of it.
  const corner = await spotOf(page, 'corner front side-left');
  const handle = await spotOf(page, 'handle front side-left 0');
  await page.mouse.move(handle.x, handle.y);
  await page.mouse.down();
  await page.mouse.move(corner.x - 3, handle.y - 8, { steps: 3 });
  await expect(page.locator('.hint')).toHaveCount(1);
  await page.mouse.up();
  expect(edgeIn(await documentOf(page), 'front', 'side-left').handles![0]![0]).toBe(39);
  expect(edgeIn(await documentOf(page), 'front', 'side-right').handles![1]![0]).toBe(-39);
  expect(await stepsOf(page)).toBe(2);

  await bar(page).getByRole('button', { name: 'straight' }).click();
  expect(await pathOf('side-left')).toBe('straight');
  await expect(grip(page, 'handle front side-left 0')).toHaveCount(0);
  // Pressed on its line, and worked from a schedule.
  const line = await middleOf(page, 'front', 'neck-curve-left');
  await page.mouse.click(line.x, line.y);
  await expect(bar(page).getByText('Left neck curve', { exact: true })).toBeVisible();
  await bar(page).getByRole('button', { name: 'in worked steps' }).click();
  expect(await pathOf('neck-curve-left')).toBe('stepped');
  expect(await pathOf('neck-curve-right')).toBe('stepped');
  await expect(page.locator('.stair')).toHaveCount(1);
  await bar(page).getByRole('button', { name: 'curved' }).click();
  expect(await pathOf('neck-curve-left')).toBe('curve');
  expect(await stepsOf(page)).toBe(5);
  // A level edge has no rows to work steps in.
  await page.mouse.click(...xy(await spotOf(page, 'middle front neck-center')));
  await expect(bar(page).getByRole('button', { name: 'in worked steps' })).toHaveCount(0);
  await undoAll(page);
  expect(await documentOf(page)).toEqual(before);
});

const xy = ({ x, y }: { x: number; y: number }): [number, number] => [x, y];

test('corners come by a button, a key or a double press, go by Delete, and move several together', async ({ page }) => {
  await openPage(page);
  await shape(page);
  const before = await documentOf(page);
  const corners = page.locator('[data-grip^="corner front"]');
  await expect(corners).toHaveCount(14);

  await page.mouse.click(...xy(await spotOf(page, 'middle front side-left')));
  await bar(page).getByRole('button', { name: 'Add a corner' }).click();
  await expect(corners).toHaveCount(16);
  // The keys go to what was pressed last.
  await page.mouse.click(...xy(await spotOf(page, 'middle front neck-center')));
  await page.keyboard.press('i');
  await expect(corners).toHaveCount(17);
  const line = await middleOf(page, 'front', 'cast-on');
  await page.mouse.dblclick(line.x + 60, line.y);
  await expect(corners).toHaveCount(19);
  expect(await stepsOf(page)).toBe(3);

  const fresh = (await documentOf(page)).pieces[0]!.outline.filter(
    ({ id }) => !before.pieces[0]!.outline.some((old) => old.id === id),
  );
  const low = fresh.filter(({ from }) => from[1] === 0);
  await page.mouse.click(...xy(await spotOf(page, `corner front ${low[0]!.id}`)));
  await page.keyboard.press('Delete');
  await expect(corners).toHaveCount(17);
  expect(await stepsOf(page)).toBe(4);
  await undoAll(page);
  expect(await documentOf(page)).toEqual(before);

  // Several by pressing them with Shift.
  await page.mouse.click(...xy(await spotOf(page, 'corner front neck-center')));
  await page.keyboard.down('Shift');
  await page.mouse.click(...xy(await spotOf(page, 'corner front neck-curve-left')));
  await page.keyboard.up('Shift');
  await expect(bar(page)).toContainText('2 corners');
  await pullBy(page, 'corner front neck-center', 0, -6);
  expect(await placeOf(page, 'corner front neck-center')).toEqual([45, 98]);
  expect(await placeOf(page, 'corner front neck-curve-left')).toEqual([54, 112]);
  expect(await placeOf(page, 'corner front neck-straight-right')).toEqual([24, 112]);
  expect(await stepsOf(page)).toBe(1);
  await undoAll(page);

  // Those inside a pane that is pulled open with Shift.
  const [a, b] = [await spotOf(page, 'corner front neck-curve-right'), await spotOf(page, 'corner front neck-center')];
  await page.keyboard.down('Shift');
  await page.mouse.move(a.x - 14, a.y + 14);
  await page.mouse.down();
  await page.mouse.move(b.x + 10, b.y - 10, { steps: 3 });
  await expect(page.locator('.pane')).toHaveCount(1);
  await page.mouse.up();
  await page.keyboard.up('Shift');
  await expect(page.locator('.pane')).toHaveCount(0);
  await expect(bar(page)).toContainText('2 corners');

  // All of them, moved by the keys: ten rows up and one stitch over.
  await page.mouse.click(...xy(await spotOf(page, 'corner front cast-on')));
  await page.keyboard.press('Control+a');
  await expect(bar(page)).toContainText('14 corners');
  await page.keyboard.press('Shift+ArrowUp');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Escape');
  await expect(bar(page).getByText('14 corners')).toHaveCount(0);
  expect(await stepsOf(page)).toBe(2);
  const moved = await documentOf(page);
  for (const { id, from } of before.pieces[0]!.outline) {
    expect(cornerIn(moved, 'front', id)).toEqual([from[0] - 1, from[1] + 10]);
  }
  // A press beside everything lets go as well.
  await page.mouse.click(...xy(await spotOf(page, 'corner front cast-on')));
  await expect(bar(page)).toContainText('1 corner');
  const box = (await canvas(page).boundingBox())!;
  await page.mouse.click(box.x + box.width - 12, box.y + 12);
  await expect(bar(page).getByText('1 corner')).toHaveCount(0);
  expect(await stepsOf(page)).toBe(2);
});

test('by the keys alone: to a corner, one stitch, ten rows, exact numbers, and nonsense refused', async ({ page }) => {
  await openPage(page);
  await canvas(page).focus();
  await page.keyboard.press('e');
  await expect(page.locator('[data-grip]').first()).toBeAttached();
  const before = await documentOf(page);
  const name = 'corner front neck-center';

  await tabTo(page, 'Front: Corner 8 of 14, where center neck begins');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Shift+ArrowDown');
  expect(await placeOf(page, name)).toEqual([44, 93]);
  expect(await placeOf(page, 'corner front neck-curve-right')).toEqual([34, 93]);
  expect(await stepsOf(page)).toBe(3);
  await grip(page, name).focus();

  // Exact numbers: Enter shows those that are.
  await page.keyboard.press('Enter');
  const place = page.getByRole('form', { name: 'Exact place' });
  const [column, row] = [place.getByLabel('Stitches from the left'), place.getByLabel('Rows from the bottom')];
  await expect(column).toHaveValue('44');
  await expect(row).toHaveValue('93');
  await page.keyboard.type('47');
  await page.keyboard.press('Tab');
  await page.keyboard.type('100');
  await page.keyboard.press('Enter');
  await expect(place).toHaveCount(0);
  expect(await placeOf(page, name)).toEqual([47, 100]);
  await expect(grip(page, name)).toBeFocused();
  // A digit begins at once.
  await page.keyboard.type('45');
  await expect(column).toHaveValue('45');
  await page.keyboard.press('Enter');
  expect(await placeOf(page, name)).toEqual([45, 100]);
  expect(await stepsOf(page)).toBe(5);

  // An edge by a length: 12 cm are 36 rows of 30 to 10 cm.
  await tabTo(page, 'Front: Middle of left side');
  await page.keyboard.press('Enter');
  const size = page.getByRole('form', { name: 'Exact size' });
  const rows = size.getByLabel('Rows up');
  await expect(rows).toHaveValue('74');
  for (const [typed, reason] of [
    ['abc', '“abc” is not a number'],
    ['12.5', 'whole number'],
    ['99999999', 'whole number'],
  ] as const) {
    await rows.fill(typed);
    await rows.press('Enter');
    await expect(size.getByRole('alert')).toContainText(reason);
    await expect(size.getByRole('alert')).toContainText('74 stays');
  }
  await page.keyboard.press('Escape');
  await expect(size).toHaveCount(0);
  expect(await stepsOf(page)).toBe(5);
  await grip(page, 'middle front side-left').focus();
  await page.keyboard.press('Enter');
  await rows.fill('12 cm');
  await rows.press('Enter');
  await expect(size).toHaveCount(0);
  expect(await placeOf(page, 'corner front underarm-left')).toEqual([78, 36]);
  expect(await placeOf(page, 'corner front side-right')).toEqual([0, 36]);
  expect(await stepsOf(page)).toBe(6);

  // Exact numbers that make a crossing are refused as well.
  await grip(page, name).focus();
  await page.keyboard.type('45');
  await row.fill('-20');
  await row.press('Enter');
  await expect(place.getByRole('alert')).toContainText('meets itself');
  await page.keyboard.press('Escape');
  expect(await stepsOf(page)).toBe(6);
  await undoAll(page);
  expect(await documentOf(page)).toEqual(before);
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  test('a corner is dragged, an edge pulled and another one pressed', async ({ page }) => {
    await openPage(page);
    await page.getByRole('button', { name: 'Shape the outline' }).tap();
    await expect(page.locator('[data-grip]').first()).toBeAttached();
    const touch = await touchOn(page);
    const drag = async (name: string, dx: number, dy: number) => {
      const { x, y } = await spotOf(page, name);
      await touch('touchStart', { x, y });
      await touch('touchMove', { x: x + dx / 2, y: y + dy / 2 });
      await touch('touchMove', { x: x + dx, y: y + dy });
      await touch('touchEnd');
    };
    const { stitch, row } = await cellOf(page);
    await drag('corner front neck-center', 0, 12 * row);
    expect(await placeOf(page, 'corner front neck-center')).toEqual([45, 92]);
    expect(await placeOf(page, 'corner front neck-curve-right')).toEqual([33, 92]);
    await drag('middle front side-left', -12 * stitch, 0);
    await expect(bar(page).getByRole('button', { name: 'curved' })).toHaveAttribute('aria-pressed', 'true');
    expect(await stepsOf(page)).toBe(2);
    const { x, y } = await spotOf(page, 'middle front cast-on');
    await page.touchscreen.tap(x, y);
    await expect(bar(page).getByText('Cast on', { exact: true })).toBeVisible();
    expect(await stepsOf(page)).toBe(2);
  });
});
