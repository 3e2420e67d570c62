import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { chooseFile, count, drawing, edgeRow, openPage, sampleText } from './page';

const pullover = sampleText('pullover');

/** Drops a text on the page as a file. */
async function drop(page: Page, ...files: readonly (readonly [name: string, text: string])[]): Promise<void> {
  const data = await page.evaluateHandle((given) => {
    const transfer = new DataTransfer();
    for (const [name, text] of given) transfer.items.add(new File([text], name, { type: 'application/json' }));
    return transfer;
  }, files);
  await page.dispatchEvent('body', 'dragover', { dataTransfer: data });
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
}

async function saveDesign(page: Page): Promise<{ name: string; text: string }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const saved = await download;
  return { name: saved.suggestedFilename(), text: readFileSync(await saved.path(), 'utf8') };
}

test('a design is saved under its name, and opened again it is the same', async ({ page }) => {
  await openPage(page);
  const { name, text } = await saveDesign(page);
  expect(name).toBe('marens-harbour-pullover.edgewise.json');
  await page.getByRole('button', { name: 'Designs' }).click();
  await page.getByRole('button', { name: 'Heel flap' }).click();
  await expect(page).toHaveTitle(/heel flap/);
  await chooseFile(page, name, text);
  await expect(page).toHaveTitle(/harbour pullover/);
  await expect(count(page)).toHaveText('84');
  expect((await saveDesign(page)).text).toBe(text);

  await test.step('a field of another hand is told of once and saved again', async () => {
    await chooseFile(page, 'mine.json', pullover.replace('"terms"', '"yarn": "sand", "terms"'));
    await expect(page.getByRole('alert')).toContainText('yarn');
    expect((await saveDesign(page)).text).toContain('"yarn": "sand"');
  });
});

test('a design is opened from a file, by dropping it and by pasting it, and bad ones leave the work as it was', async ({
  page,
}) => {
  await openPage(page);
  await test.step('a bad file is told of in one sentence', async () => {
    const marks = drawing(page).locator('g.drawing');
    const before = await marks.innerHTML();
    for (const [text, why] of [
      ['not a design', /line 1/],
      ['{"format": "edgewise", "version": 99}', /version/],
      [pullover.replace('"from": [39, 0]', '"from": [39, 0.5]'), /whole/],
      ['', /empty/],
      [`{"x": "${'x'.repeat(5 * 1024 * 1024)}"}`, /MiB|large/],
    ] as const) {
      await chooseFile(page, 'mine.json', text);
      await expect(page.getByRole('alert')).toContainText('mine.json was not opened');
      await expect(page.getByRole('alert')).toContainText(why);
      await page.getByRole('alert').getByRole('button').click();
      await expect(page.getByRole('alert')).toHaveCount(0);
    }
    expect((await marks.innerHTML()) === before).toBe(true);
    await expect(page).toHaveTitle(/harbour pullover/);
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });

  await test.step('the same file can be opened again after it was mended', async () => {
    await chooseFile(page, 'vest.json', '{');
    await expect(page.getByRole('alert')).toBeVisible();
    await chooseFile(page, 'vest.json', sampleText('vest'));
    await expect(page).toHaveTitle(/lamplighter vest/);
    await expect(page.getByRole('alert')).toHaveCount(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page).toHaveTitle(/harbour pullover/);
  });

  await test.step('what is pasted is opened, but not while words are being typed', async () => {
    const paste = (selector: string, text: string) =>
      page.locator(selector).evaluate((element, pasted) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData('text/plain', pasted);
        element.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
      }, text);
    await paste('body', '{ "format": "something else" }');
    await expect(page.getByRole('alert')).toContainText('What was pasted was not opened');
    await page.getByRole('alert').getByRole('button').click();
    await paste('input[autocomplete="off"] >> nth=0', sampleText('vest'));
    await expect(page).toHaveTitle(/harbour pullover/);
    await paste('body', sampleText('vest'));
    await expect(page).toHaveTitle(/lamplighter vest/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page).toHaveTitle(/harbour pullover/);
  });

  await test.step('a drop is one step, and undo brings back what was there', async () => {
    await drop(page, ['vest.edgewise.json', sampleText('vest')]);
    await expect(page).toHaveTitle(/lamplighter vest/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page).toHaveTitle(/harbour pullover/);
    await expect(count(page)).toHaveText('84');
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect(page).toHaveTitle(/lamplighter vest/);
  });

  await test.step('of several files that are dropped, it is said what became of them; a drop without a file is none', async () => {
    await drop(page, ['a.json', sampleText('vest')], ['b.json', pullover]);
    await expect(page.getByRole('alert')).toContainText(/Several files|only the first/);
    await drop(page);
    await expect(page.getByRole('alert')).toContainText(/not a file/);
  });
});

test.describe('what was done', () => {
  async function changeCount(page: Page): Promise<void> {
    const field = edgeRow(page, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ });
    await field.fill('10');
    await field.press('Enter');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  }

  test('survives a reload, is there in another tab, and each tab comes back to its own', async ({ page, context }) => {
    await openPage(page);
    await changeCount(page);
    const target = await count(page).textContent();
    await page.reload();
    await expect(count(page)).toHaveText(target!);
    await expect(edgeRow(page, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ })).toHaveValue('10');

    await expect(page.locator('.keeps')).toHaveText('kept in this browser');
    const other = await context.newPage();
    await openPage(other);
    await expect(edgeRow(other, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ })).toHaveValue('10');
    await drop(other, ['vest.edgewise.json', sampleText('vest')]);
    await expect(other).toHaveTitle(/lamplighter vest/);
    await expect(other.locator('.keeps')).toHaveText('kept in this browser');
    await page.reload();
    await expect(page).toHaveTitle(/harbour pullover/);
    await other.reload();
    await expect(other).toHaveTitle(/lamplighter vest/);
  });
});

test('a change that can not be planned leaves the last good plan, greyed with the reason, also after a reload', async ({
  page,
}) => {
  await openPage(page);
  const before = await count(page).textContent();
  const target = page.getByRole('textbox', { name: 'Wanted by the pattern' });
  await target.fill('900');
  await target.press('Enter');
  await expect(page.getByRole('alert')).toContainText('last plan that could be made');
  await expect(count(page)).toHaveText(before!);
  await expect(page.locator('.keeps')).toHaveText('kept as last planned');
  await page.reload();
  await expect(count(page)).toHaveText(before!);
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test.describe("with the browser's own file dialogs", () => {
  /** Stands for the dialogs: what is to be chosen, and what was asked and written. */
  interface Stand {
    choose: 'file' | 'nothing' | 'broken';
    asked: string[];
    written: string[];
    text: string;
  }

  async function openWithDialogs(page: Page): Promise<void> {
    await page.addInitScript(() => {
      const stand: Stand = { choose: 'file', asked: [], written: [], text: '' };
      const left = () => Promise.reject(new DOMException('left', 'AbortError'));
      Object.assign(window, {
        stand,
        showOpenFilePicker: () => {
          if (stand.choose === 'nothing') return left();
          const getFile = () =>
            stand.choose === 'broken'
              ? Promise.reject(new DOMException('gone', 'NotFoundError'))
              : Promise.resolve(new File([stand.text], 'chosen.json'));
          return Promise.resolve([{ getFile }]);
        },
        showSaveFilePicker: ({ suggestedName }: { suggestedName: string }) => {
          stand.asked.push(suggestedName);
          if (stand.choose === 'nothing') return left();
          const createWritable = () =>
            stand.choose === 'broken'
              ? Promise.reject(new DOMException('full', 'NotAllowedError'))
              : Promise.resolve({
                  write: (text: string) => Promise.resolve(stand.written.push(text)),
                  close: () => Promise.resolve(),
                  abort: () => Promise.resolve(),
                });
          return Promise.resolve({ name: 'mine.edgewise.json', createWritable });
        },
      });
    });
    await page.goto('./');
    await expect(drawing(page)).toBeVisible();
  }

  const set = (page: Page, fields: Partial<Stand>) =>
    page.evaluate((given) => {
      Object.assign((window as unknown as { stand: Stand }).stand, given);
    }, fields);
  const look = (page: Page) =>
    page.evaluate(() => {
      const { asked, written } = (window as unknown as { stand: Stand }).stand;
      return { asked, written };
    });

  test('a design is opened; a dialog left without a choice is no fault', async ({ page }) => {
    await openWithDialogs(page);
    await set(page, { choose: 'nothing' });
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await set(page, { choose: 'file', text: sampleText('vest') });
    await page.keyboard.press('Control+o');
    await expect(page).toHaveTitle(/lamplighter vest/);
    await expect(page.getByRole('alert')).toHaveCount(0);
    await set(page, { choose: 'broken' });
    await page.keyboard.press('Control+o');
    await expect(page.getByRole('alert')).toContainText('The file was not opened');
    await expect(page).toHaveTitle(/lamplighter vest/);
  });

  test('a design is saved where the user says, and again to the same place, but another one is asked for', async ({
    page,
  }) => {
    await openWithDialogs(page);
    await set(page, { choose: 'nothing' });
    await page.keyboard.press('Control+s');
    await expect.poll(() => look(page)).toEqual({ asked: ['marens-harbour-pullover.edgewise.json'], written: [] });
    await expect(page.getByRole('alert')).toHaveCount(0);
    await set(page, { choose: 'file' });
    await page.keyboard.press('Control+s');
    await expect(page.locator('.said')).toHaveText('mine.edgewise.json is saved.');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect.poll(async () => (await look(page)).written.length).toBe(2);
    expect((await look(page)).asked).toHaveLength(2);
    expect((await look(page)).written[0]).toContain('"format": "edgewise"');
    await set(page, { text: sampleText('vest') });
    await page.keyboard.press('Control+o');
    await expect(page).toHaveTitle(/lamplighter vest/);
    await page.keyboard.press('Control+s');
    await expect.poll(async () => (await look(page)).asked).toHaveLength(3);
  });

  test('a place that refuses is told of, and asked for again', async ({ page }) => {
    await openWithDialogs(page);
    await set(page, { choose: 'broken' });
    await page.keyboard.press('Control+s');
    await expect(page.getByRole('alert')).toContainText('was not saved');
    await set(page, { choose: 'file' });
    await page.keyboard.press('Control+s');
    await expect(page.locator('.said')).toHaveText('mine.edgewise.json is saved.');
    await expect(page.getByRole('alert')).toHaveCount(0);
    expect((await look(page)).asked).toHaveLength(2);
  });
});
