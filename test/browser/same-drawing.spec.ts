import { expect, test } from '@playwright/test';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { SAMPLES } from '../samples/sample';
import { chooseFile, count, openPage, sampleText } from './page';

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

/** The drawing that the command writes of a design. */
function commandDrawing(sample: string, ...words: string[]): string {
  const file = at(`static/samples/${sample}.edgewise.json`);
  return execFileSync(process.execPath, [at('dist/command/edgewise.js'), 'plan', file, ...words, '--as', 'svg'], {
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
}

test('the drawing saved from the page is the one that the command writes, of every sample', async ({ page }) => {
  await openPage(page);
  for (const sample of SAMPLES) {
    await test.step(sample, async () => {
      await chooseFile(page, `${sample}.edgewise.json`, sampleText(sample));
      const { name, pickups } = JSON.parse(sampleText(sample)) as { name: string; pickups: { id: string }[] };
      await expect(page).toHaveTitle(new RegExp(name.replaceAll(/[.*+?]/g, '.')));
      await expect(count(page)).toBeVisible();
      const download = page.waitForEvent('download');
      await page.keyboard.press('Control+Shift+S');
      const saved = await download;
      expect(saved.suggestedFilename()).toMatch(/ - drawing\.svg$/);
      const drawn = readFileSync(await saved.path(), 'utf8');
      expect(drawn).toBe(commandDrawing(sample, '--pickup', pickups[0]!.id));
    });
  }
});
