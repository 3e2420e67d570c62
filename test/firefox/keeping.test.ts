import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import axe from 'axe-core';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { address, startFirefox, type Firefox } from './firefox';
import {
  chooseFile,
  count,
  downloaded,
  drawn,
  eventually,
  fill,
  howMany,
  isOff,
  keys,
  leave,
  openPage,
  press,
  textOf,
} from './page';
import { samplePath, sampleText } from './sample';

let firefox: Firefox;
let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'edgewise-files-'));
  firefox = await startFirefox();
});
afterAll(async () => {
  await firefox.close();
  rmSync(folder, { recursive: true });
});

const fieldOf = (label: string): string =>
  `::-p-xpath(.//span[label[starts-with(normalize-space(), "${label}")]]//input)`;

const COUNT = `tr[data-piece="front"][data-edge="neck-center"] ${fieldOf('Count')}`;

const valueOf = (page: Page, field: string): Promise<string> =>
  page.$eval(field, (input) => (input as HTMLInputElement).value);

const kept = (page: Page) => eventually(() => textOf(page, '.keeps')).toBe('kept in this browser');

it('opens on the sample with its neckband counted, and axe finds nothing wrong with it', async () => {
  const page = await openPage(firefox);
  expect(await page.title()).toMatch(/Maren's harbour pullover/);
  expect(await count(page)).toBe('84');
  expect(await howMany(page, 'g.edge[data-edge="neck-curve-left"] path.used')).toBe(1);
  await page.addScriptTag({ content: axe.source });
  const wrong = await page.evaluate(async () => {
    const inPage = window as unknown as { axe: typeof axe };
    const { violations } = await inPage.axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  });
  expect(wrong).toEqual([]);
  await leave(page);
});

it('begins a new design from a starter by the mouse, with the count that was told', async () => {
  const page = await openPage(firefox);
  await press(page, 'New');
  await (await page.waitForSelector('[data-starter="round-neck"]', { visible: true }))!.click();
  const told = 'dialog[open] [role="status"]';
  await eventually(() => textOf(page, told)).toMatch(/^Neckband: \d+ stitches$/);
  const before = await textOf(page, told);
  await fill(page, `dialog[open] ${fieldOf('Neck depth')}`, '9½');
  await eventually(() => textOf(page, told)).not.toBe(before);
  const [stitches] = /\d+/.exec((await textOf(page, told))!)!;
  await press(page, 'Begin', 'dialog[open]');
  await eventually(() => howMany(page, 'dialog[open]')).toBe(0);
  await eventually(() => count(page)).toBe(stitches);
  await press(page, 'Undo');
  await eventually(() => page.title()).toMatch(/harbour pullover/);
  await leave(page);
});

it('saves a design to a file and opens it again; a bad file is refused and the work stays', async () => {
  const page = await openPage(firefox);
  await press(page, 'Save');
  const text = await downloaded(firefox, 'marens-harbour-pullover.edgewise.json');
  await chooseFile(page, samplePath('vest'));
  await eventually(() => page.title()).toMatch(/lamplighter vest/);
  const mine = join(folder, 'mine.json');
  for (const [bad, why] of [
    ['not a design', /line 1/],
    ['{"format": "edgewise", "version": 99}', /version/],
    [sampleText('vest').replace('"from": [', '"from": [0.5, '), /mine\.json was not opened/],
  ] as const) {
    writeFileSync(mine, bad);
    await chooseFile(page, mine);
    await eventually(() => textOf(page, '.message')).toMatch(why);
    expect(await textOf(page, '.message')).toContain('mine.json was not opened');
    await press(page, 'Close', '.message');
    await eventually(() => howMany(page, '.message')).toBe(0);
  }
  expect(await page.title()).toMatch(/lamplighter vest/);
  writeFileSync(mine, text);
  await chooseFile(page, mine);
  await eventually(() => page.title()).toMatch(/harbour pullover/);
  expect(await count(page)).toBe('84');
  await leave(page);
});

it('keeps the work across a reload, and a shelf of designs to choose from', async () => {
  const page = await openPage(firefox);
  await fill(page, COUNT, '10');
  await kept(page);
  await page.reload();
  await drawn(page);
  await eventually(() => valueOf(page, COUNT)).toBe('10');

  await chooseFile(page, samplePath('vest'));
  await eventually(() => page.title()).toMatch(/lamplighter vest/);
  await kept(page);
  await press(page, 'Designs');
  await eventually(() => howMany(page, 'dialog[open] [data-work]')).toBe(2);
  // A new name that is half typed goes with Escape, and the shelf stays open.
  const pullover = `dialog[open] ::-p-xpath(.//li[@data-work][contains(., "harbour pullover")])`;
  await (await page.waitForSelector(`${pullover} ::-p-xpath(.//button[starts-with(@aria-label, "Rename")])`))!.click();
  await page.keyboard.type('Nobody');
  await page.keyboard.press('Escape');
  await eventually(() => howMany(page, 'dialog[open] [data-work] input')).toBe(0);
  expect(await howMany(page, 'dialog[open] [data-work]')).toBe(2);
  await (await page.waitForSelector(`${pullover} ::-p-xpath(.//button[contains(@class, "open")])`))!.click();
  await eventually(() => page.title()).toMatch(/harbour pullover/);
  await eventually(() => valueOf(page, COUNT)).toBe('10');
  await leave(page);
});

it('makes a link of a design and opens one, and tells of one that was cut', async () => {
  const page = await openPage(firefox);
  await fill(page, COUNT, '10');
  const target = await count(page);
  await keys(page, 'Control Shift L');
  await page.waitForSelector('dialog[open] textarea');
  const link = await valueOf(page, 'dialog[open] textarea');
  expect(link).toMatch(/#design=[\w-]{500,3000}$/);
  await press(page, 'Copy the link', 'dialog[open]');
  await eventually(() => textOf(page, 'dialog[open] [role="status"]')).toMatch(/clipboard|is selected/);
  await leave(page);

  const theirs = await openPage(firefox, link.slice(link.indexOf('#')));
  await eventually(() => valueOf(theirs, COUNT)).toBe('10');
  expect(await count(theirs)).toBe(target);
  // The address is plain again, so that a reload brings the work as it was changed since.
  expect(theirs.url()).toBe(address());
  await theirs.evaluate((hash) => (location.hash = hash), link.slice(link.indexOf('#'), -40));
  await eventually(() => textOf(theirs, '.message')).toContain('The link holds no whole design');
  expect(await count(theirs)).toBe(target);
  expect(await isOff(theirs, 'Undo')).toBe(true);
  await leave(theirs);
});
