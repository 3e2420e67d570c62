import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer, { type Browser } from 'puppeteer-core';

/** The address of the built page, ending in a slash. */
export function address(): string {
  const url = process.env.EDGEWISE_URL;
  if (!url)
    throw new Error('Run these tests by "npm test -- --only firefox [FILE ...]": it builds and serves the page.');
  return url;
}

export interface Firefox {
  readonly browser: Browser;
  /** The folder in which it saves what the page hands out. */
  readonly downloads: string;
  readonly close: () => Promise<void>;
}

/** Starts Firefox without a window, driven by WebDriver BiDi. */
export async function startFirefox(): Promise<Firefox> {
  const downloads = mkdtempSync(join(tmpdir(), 'edgewise-firefox-'));
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: process.env.FIREFOX_PATH ?? '/usr/bin/firefox-esr',
    headless: true,
    defaultViewport: { width: 1280, height: 800 },
    timeout: 120_000,
    extraPrefsFirefox: {
      'intl.accept_languages': 'en-US',
      'browser.download.folderList': 2,
      'browser.download.dir': downloads,
      'browser.download.always_ask_before_handling_new_types': false,
      'browser.download.alwaysOpenPanel': false,
    },
  });
  return {
    browser,
    downloads,
    close: async () => {
      await browser.close();
      rmSync(downloads, { recursive: true, force: true });
    },
  };
}
