import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { count, edgeRow, openPage, withoutDialogs } from './page';

const keeps = (page: Page) => page.locator('.keeps');
const lasting = (page: Page) => page.locator('.lasting');
const countField = (page: Page) => edgeRow(page, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ });

async function setCount(page: Page, value: string): Promise<void> {
  await countField(page).fill(value);
  await countField(page).press('Enter');
  await expect(countField(page)).toHaveValue(value);
}

/** What of the works in the browser's database a test looks at. */
const stored = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<{ id: string; name: string; own: boolean; revision: number; text: string }[]>((resolve, reject) => {
        const opening = indexedDB.open('edgewise');
        opening.onerror = () => reject(new Error('no database'));
        opening.onsuccess = () => {
          const all = opening.result.transaction('works').objectStore('works').getAll();
          all.onsuccess = () => {
            opening.result.close();
            resolve(all.result as never);
          };
        };
      }),
  );

/** A page with a change of the knitter's own on it, kept. */
async function ownWork(page: Page, value = '10'): Promise<void> {
  await openPage(page);
  await setCount(page, value);
  await expect(keeps(page)).toHaveText('kept in this browser');
}

/** Another tab of the same browser. */
async function anotherTab(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await openPage(page);
  return page;
}

test('what becomes of the work is told beside its name, and it is one record', async ({ page }) => {
  await openPage(page);
  await test.step('a sample, being saved, kept', async () => {
    await expect(keeps(page)).toHaveText('a sample');
    const told = page.evaluate(
      () =>
        new Promise<string[]>((resolve) => {
          const place = document.querySelector('.keeps')!;
          const seen: string[] = [];
          new MutationObserver(() => {
            seen.push(place.textContent);
            if (seen.length === 2) resolve(seen);
          }).observe(place, { childList: true, characterData: true, subtree: true });
        }),
    );
    await setCount(page, '10');
    expect(await told).toEqual(['saving…', 'kept in this browser']);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(keeps(page)).toHaveText('a sample');
  });

  await test.step('one record for each work', async () => {
    await setCount(page, '10');
    await expect(keeps(page)).toHaveText('kept in this browser');
    await setCount(page, '11');
    await expect
      .poll(async () => (await stored(page)).map(({ own, text }) => own && /"count": \d+/.exec(text)?.[0]))
      .toEqual(['"count": 11']);
  });

  await test.step('also where no plan can be made of it', async () => {
    const target = page.getByRole('textbox', { name: 'Wanted by the pattern' });
    await target.fill('900');
    await target.press('Enter');
    await expect(keeps(page)).toHaveText('kept as last planned');
  });
});

test.describe('a tab that is killed', () => {
  test('loses no more than the last second', async ({ page, context }) => {
    await openPage(page);
    await setCount(page, '10');
    await setCount(page, '9');
    await page.waitForTimeout(1000);
    // No event tells the page that it ends.
    const session = await context.newCDPSession(page);
    const gone = page.waitForEvent('crash');
    void session.send('Page.crash').catch(() => undefined);
    await gone;
    const next = await anotherTab(context);
    await expect(countField(next)).toHaveValue('9');
    await expect(lasting(next)).toHaveCount(0);
  });

  test('had written while changes went on, not only once they stopped', async ({ page }) => {
    await openPage(page);
    await expect(keeps(page)).toHaveText('a sample');
    const puts = await countField(page).evaluate(async (element) => {
      let seen = 0;
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: [unknown]) {
        seen++;
        return put.apply(this, given);
      };
      // Each change comes sooner than a pause after the one before would end, for as long as a slow machine may need.
      const field = element as HTMLInputElement;
      for (let i = 0; i < 80 && seen < 2; i++) {
        field.value = i % 2 === 0 ? '10' : '11';
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
        field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }));
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      return seen;
    });
    await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeEnabled();
    expect(puts).toBeGreaterThan(1);
  });

  test('that is left within the pause after a change still keeps it', async ({ page, context }) => {
    await openPage(page);
    await countField(page).fill('10');
    await countField(page).press('Enter');
    await page.close({ runBeforeUnload: true });
    const next = await anotherTab(context);
    await expect(countField(next)).toHaveValue('10');
  });
});

test('what earlier visits kept in the small store is moved over and not lost', async ({ page }) => {
  await ownWork(page);
  const [work] = await stored(page);
  await page.goto('about:blank');
  await page.goto('./icon.svg');
  await page.evaluate(async (text) => {
    await new Promise((resolve) => (indexedDB.deleteDatabase('edgewise').onsuccess = resolve));
    localStorage.clear();
    sessionStorage.clear();
    const old = {
      id: 'old',
      name: 'Before',
      at: 5,
      own: true,
      text: text.replace(/"name": "[^"]*"/, '"name": "Before"'),
    };
    localStorage.setItem('edgewise.work.old', JSON.stringify(old));
  }, work!.text);
  await openPage(page);
  await expect(page).toHaveTitle(/Before/);
  await expect(countField(page)).toHaveValue('10');
  expect((await stored(page)).map(({ id, name }) => [id, name])).toEqual([['old', 'Before']]);
  expect(await page.evaluate(() => localStorage.getItem('edgewise.work.old'))).toBeNull();
});

test.describe('two tabs', () => {
  test('with one design: the second follows, takes over when asked, or works on a copy', async ({ page, context }) => {
    await ownWork(page);
    const second = await anotherTab(context);
    await test.step('it follows, says so and changes nothing', async () => {
      await expect(lasting(second)).toContainText('open in another tab');
      await expect(keeps(second)).toHaveText('follows another tab');
      await setCount(page, '11');
      await expect(countField(second)).toHaveValue('11');
      const target = await count(page).textContent();
      await expect(count(second)).toHaveText(target!);
      // It refuses with a reason, and nothing is written.
      await countField(second).fill('9');
      await countField(second).press('Enter');
      await expect(second.getByText(/open in another tab, so it can’t be changed here/).first()).toBeAttached();
      await expect(count(second)).toHaveText(target!);
      await second.keyboard.press('Control+z');
      await expect(count(second)).toHaveText(target!);
      await page.waitForTimeout(600);
      await expect(countField(page)).toHaveValue('11');
      expect((await stored(page)).map(({ text }) => /"count": \d+/.exec(text)?.[0])).toEqual(['"count": 11']);
    });

    await test.step('work goes on in the second when it asks for it, and the first then follows', async () => {
      // What the first has not yet written comes along.
      await setCount(page, '10');
      await lasting(second).getByRole('button', { name: 'Work here instead' }).click();
      await expect(lasting(second)).toHaveCount(0);
      await expect(countField(second)).toHaveValue('10');
      await expect(lasting(page)).toContainText('open in another tab');
      await setCount(second, '9');
      await expect(countField(page)).toHaveValue('9');
      // And back again.
      await lasting(page).getByRole('button', { name: 'Work here instead' }).click();
      await expect(lasting(second)).toBeVisible();
      await setCount(page, '10');
      await expect(countField(second)).toHaveValue('10');
    });

    await test.step('a copy can be worked on beside it', async () => {
      await expect(keeps(page)).toHaveText('kept in this browser');
      await lasting(second).getByRole('button', { name: 'Work on a copy' }).click();
      await expect(second).toHaveTitle(/harbour pullover, copy/);
      await expect(lasting(second)).toHaveCount(0);
      await setCount(second, '9');
      await expect(keeps(second)).toHaveText('kept in this browser');
      await expect(countField(page)).toHaveValue('10');
      expect((await stored(page)).map(({ name }) => name).sort()).toEqual([
        "Maren's harbour pullover",
        "Maren's harbour pullover, copy",
      ]);
    });
  });

  test('the second goes on by itself once the first is closed', async ({ page, context }) => {
    await ownWork(page);
    const second = await anotherTab(context);
    await expect(lasting(second)).toBeVisible();
    await page.close();
    await expect(lasting(second)).toHaveCount(0);
    await setCount(second, '11');
    await expect(keeps(second)).toHaveText('kept in this browser');
  });

  test('with a sample that nobody changed do not disturb each other', async ({ page, context }) => {
    await openPage(page);
    await page.waitForTimeout(700);
    const second = await anotherTab(context);
    await setCount(second, '10');
    await expect(keeps(second)).toHaveText('kept in this browser');
    await expect(lasting(second)).toHaveCount(0);
    await setCount(page, '11');
    await expect(keeps(page)).toHaveText('kept in this browser');
    expect((await stored(page)).filter(({ own }) => own)).toHaveLength(2);
  });

  test('without locks never write over each other: what came second goes on as a copy', async ({ context }) => {
    await context.addInitScript(() => Object.defineProperty(navigator, 'locks', { value: undefined }));
    const first = await context.newPage();
    await ownWork(first);
    const second = await anotherTab(context);
    await setCount(second, '11');
    await expect(keeps(second)).toHaveText('kept in this browser');
    await setCount(first, '9');
    await expect(first.getByRole('alert')).toContainText('changed in another tab too');
    await expect(first).toHaveTitle(/pullover, copy/);
    await expect(countField(first)).toHaveValue('9');
    await expect
      .poll(async () =>
        (await stored(second)).map(({ name, text }) => `${name} ${/"count": \d+/.exec(text)?.[0]}`).sort(),
      )
      .toEqual(['Maren\'s harbour pullover "count": 11', 'Maren\'s harbour pullover, copy "count": 9'].sort());
  });
});

test.describe('a browser that refuses', () => {
  const refuse = (page: Page) =>
    page.evaluate(() => {
      const { prototype } = IDBObjectStore;
      const put = prototype.put;
      prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
      Object.assign(window, { relent: () => (prototype.put = put) });
    });

  test('for its store is full: that stays told, the design can be saved, and it is tried again', async ({ page }) => {
    await ownWork(page);
    await refuse(page);
    await setCount(page, '11');
    await expect(lasting(page)).toContainText('room that this browser gives the page is full');
    await expect(lasting(page)).toHaveAttribute('role', 'alert');
    await expect(keeps(page)).toHaveText('not kept');
    await setCount(page, '9');
    await expect(lasting(page)).toBeVisible();
    const download = page.waitForEvent('download');
    await lasting(page).getByRole('button', { name: 'Save to a file' }).click();
    expect((await download).suggestedFilename()).toBe('marens-harbour-pullover.edgewise.json');
    await expect(lasting(page)).toBeVisible();
    await page.evaluate(() => (window as unknown as { relent: () => void }).relent());
    await setCount(page, '10');
    await expect(lasting(page)).toHaveCount(0);
    await expect(keeps(page)).toHaveText('kept in this browser');
  });

  test('altogether: that is told at once and the work goes on', async ({ page }) => {
    await page.addInitScript(() => {
      const shut = {
        get: () => {
          throw new DOMException('shut', 'SecurityError');
        },
      };
      Object.defineProperty(window, 'localStorage', shut);
      Object.defineProperty(window, 'sessionStorage', shut);
      IDBFactory.prototype.open = () => {
        throw new DOMException('shut', 'SecurityError');
      };
    });
    await openPage(page);
    await expect(lasting(page)).toContainText('Save the design to a file');
    await setCount(page, '10');
    await expect(lasting(page)).toBeVisible();
    await page.getByRole('button', { name: 'Designs' }).click();
    await expect(page.getByRole('dialog')).toContainText('does not let the page keep designs');
  });

  test('is asked once to keep what there is', async ({ page }) => {
    await page.addInitScript(() => {
      const asked = Number(sessionStorage.getItem('asked') ?? '0');
      StorageManager.prototype.persist = () => {
        sessionStorage.setItem('asked', `${asked + 1}`);
        return Promise.resolve(false);
      };
    });
    await withoutDialogs(page);
    await ownWork(page);
    await setCount(page, '11');
    await page.reload();
    await setCount(page, '10');
    await expect(keeps(page)).toHaveText('kept in this browser');
    expect(await page.evaluate(() => sessionStorage.getItem('asked'))).toBe('1');
  });
});
