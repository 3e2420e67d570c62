import { expect, test, type Locator, type Page } from '@playwright/test';
import { documentOf, stepsOf, tabTo, type File } from './grips';
import { canvas, chooseFile, count, middleOf, openPage, sampleText } from './page';

const bar = (page: Page): Locator => page.getByRole('group', { name: 'The run of the pick-up' });
const edge = (page: Page, name: string): Locator => page.locator(`[data-choose="front ${name}"]`);

async function takeUp(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Choose edges' }).click();
  await expect(page.locator('[data-choose]').first()).toBeAttached();
}

async function pressOn(page: Page, name: string, how: 'mouse' | 'touch' = 'mouse'): Promise<void> {
  const { x, y } = await middleOf(page, 'front', name);
  if (how === 'touch') await page.touchscreen.tap(x, y);
  else await page.mouse.click(x, y);
}

/** The edges of the front in the order in which their numbers say that they are worked. */
async function numbered(page: Page): Promise<string[]> {
  const all = await page.locator('[data-choose^="front "].chosen').evaluateAll((edges) =>
    edges.map((one) => ({
      name: one.getAttribute('data-choose')!.slice('front '.length),
      place: Number(one.querySelector('text')!.textContent),
    })),
  );
  return all.sort((a, b) => a.place - b.place).map(({ name }) => name);
}

/** The sample without its pick-ups, for a hand. */
function bare(hand: 'right' | 'left'): string {
  return JSON.stringify({ ...(JSON.parse(sampleText('pullover')) as File), name: `By the ${hand}`, hand, pickups: [] });
}

test.use({ hasTouch: true });

test('a run is pressed together in the order of work; a design without a pick-up gets one', async ({ page }) => {
  await openPage(page);
  await chooseFile(page, 'bare.json', bare('right'));
  await expect(page).toHaveTitle(/By the right/);
  await expect(count(page)).toHaveCount(0);
  await takeUp(page);
  const before = await stepsOf(page);

  await pressOn(page, 'neck-curve-left');
  await expect(count(page)).toHaveText(/^\d+$/);
  await expect(bar(page)).toContainText('Pick-up: 1 edge, flat');
  await pressOn(page, 'neck-center', 'touch');
  await pressOn(page, 'neck-curve-right');
  await expect(edge(page, 'neck-curve-right')).toHaveAttribute('aria-label', 'Front, right neck curve: 3 in the run');
  expect(await numbered(page)).toEqual(['neck-curve-left', 'neck-center', 'neck-curve-right']);
  const file = await documentOf(page);
  expect(file.pickups).toHaveLength(1);
  expect(file.pickups[0]!.along.map((one) => one.edge)).toEqual(['neck-curve-left', 'neck-center', 'neck-curve-right']);
  expect(await stepsOf(page)).toBe(before + 3);

  // Pressed again they go, all but the last one.
  await pressOn(page, 'neck-center');
  await expect(edge(page, 'neck-center')).toHaveAttribute('aria-label', 'Front, center neck: not in the run');
  expect(await numbered(page)).toEqual(['neck-curve-left', 'neck-curve-right']);
  await pressOn(page, 'neck-curve-left');
  await pressOn(page, 'neck-curve-right');
  await expect(bar(page).getByRole('alert')).toContainText('needs one edge at least');
  expect(await numbered(page)).toEqual(['neck-curve-right']);
  // Each press was one step, and the refused one none.
  const key = async (name: string) => {
    await page.keyboard.press(name);
    return numbered(page);
  };
  expect(await key('Control+z')).toEqual(['neck-curve-left', 'neck-curve-right']);
  expect(await key('Control+z')).toEqual(['neck-curve-left', 'neck-center', 'neck-curve-right']);
  await key('Control+y');
  expect(await key('Control+y')).toEqual(['neck-curve-right']);

  // With Shift, all from the last one up to there, by the pointer and by the keys.
  await pressOn(page, 'side-left');
  await pressOn(page, 'neck-curve-right');
  await pressOn(page, 'neck-curve-right');
  await pressOn(page, 'neck-curve-right');
  await expect(bar(page).getByRole('alert')).toHaveCount(0);
  expect(await numbered(page)).toEqual(['side-left']);
  await tabTo(page, 'Front, left side');
  await page.keyboard.press('Enter');
  await expect(bar(page).getByRole('alert')).toBeVisible();
  await tabTo(page, 'Front, left shoulder');
  await page.keyboard.press('Shift+Enter');
  expect(await numbered(page)).toEqual(['side-left', 'underarm-left', 'armhole-left', 'shoulder-left']);
  await page.keyboard.press('Space');
  expect(await numbered(page)).toEqual(['side-left', 'underarm-left', 'armhole-left']);
  await page.keyboard.down('Shift');
  await pressOn(page, 'neck-center');
  await page.keyboard.up('Shift');
  expect((await numbered(page)).slice(3)).toEqual([
    'shoulder-left',
    'neck-straight-left',
    'neck-curve-left',
    'neck-center',
  ]);

  // All round, and the other way about.
  await bar(page).getByRole('button', { name: 'All round Front instead' }).click();
  await expect(bar(page)).toContainText('14 edges');
  const round = await numbered(page);
  await bar(page).getByRole('button', { name: 'Work it the other way round' }).click();
  await expect.poll(() => numbered(page)).toEqual([...round].reverse());

  // A drag looks at the drawing and chooses nothing; the tool is put down by its own button.
  const box = (await canvas(page).boundingBox())!;
  const { x, y } = await middleOf(page, 'front', 'side-left');
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2, y + 30, { steps: 3 });
  await page.mouse.up();
  expect(await numbered(page)).toHaveLength(14);
  await bar(page).getByRole('button', { name: 'Done' }).click();
  await expect(page.locator('[data-choose]')).toHaveCount(0);
});

test('a left-handed knitter presses the edges in the order of that hand, and the file has them reversed', async ({
  page,
}) => {
  await openPage(page);
  await chooseFile(page, 'bare.json', bare('left'));
  await expect(page).toHaveTitle(/By the left/);
  await takeUp(page);
  const pressed = ['neck-curve-right', 'neck-center', 'neck-curve-left'];
  for (const name of pressed) await pressOn(page, name);
  await expect(edge(page, 'neck-curve-left')).toHaveAttribute('aria-label', 'Front, left neck curve: 3 in the run');
  expect(await numbered(page)).toEqual(pressed);
  const [made] = (await documentOf(page)).pickups;
  expect(made!.along.map((one) => one.edge)).toEqual([...pressed].reverse());
  expect(made!.along.map((one) => one.backwards ?? false)).toEqual([false, false, false]);
});

test('edges join a pick-up that is there, on either of its pieces', async ({ page }) => {
  await openPage(page);
  const before = Number(await count(page).textContent());
  await takeUp(page);
  await page.getByRole('button', { name: 'All', exact: true }).click();
  await tabTo(page, 'Back, left shoulder');
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-choose="back shoulder-left"]')).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('[data-choose="back shoulder-left"] text')).toHaveText('9');
  await expect.poll(async () => Number(await count(page).textContent())).toBeGreaterThan(before);
  expect(await stepsOf(page)).toBe(1);
  await page.locator('[data-choose="back shoulder-left"]').focus();
  await page.keyboard.press('Enter');
  await expect(count(page)).toHaveText(String(before));
});
