import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';

const url = process.env.EDGEWISE_URL;
if (!url)
  throw new Error('Run the browser tests by "npm test -- --only browser [FILE ...]": it builds and serves the page.');

const isRoot = process.getuid?.() === 0;

/**
 * What the browser is to leave away. It heeds the last list only, so that those which the test runner leaves away
 * itself stand here as well.
 */
const without = [
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsUpgrades',
  'HttpsFirstBalancedModeAutoEnable',
  'LensOverlay',
  'MediaRouter',
  'PaintHolding',
  'ThirdPartyStoragePartitioning',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'TcpPortRandomizationWin',
  'OptimizationHints',
  'NetworkTimeServiceQuerying',
  'AimEnabled',
  'PreconnectToSearch',
  // For the list of suggestions under its address bar it loads two pages of its own with every window, which takes more
  // time than our page does.
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'WebUIOmniboxFullPopup',
];

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.spec.ts',
  outputDir: fileURLToPath(new URL('../../.cache/browser', import.meta.url)),
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  // Time enough on a machine that has other work to do; one that waits for ever is still caught.
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: [['list'], ['json', { outputFile: process.env.EDGEWISE_REPORT ?? '.cache/browser.json' }]],
  use: {
    baseURL: url,
    browserName: 'chromium',
    viewport: { width: 1280, height: 800 },
    locale: 'en-US',
    timezoneId: 'UTC',
    // Kept files would stand in for changed ones; the tests of keeping allow it.
    serviceWorkers: 'block',
    launchOptions: {
      ...(process.env.CHROMIUM_PATH ? { executablePath: process.env.CHROMIUM_PATH } : {}),
      args: [
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        // Letters as wide on the screen as in a document: without windows they would be fitted to whole dots.
        '--font-render-hinting=none',
        `--disable-features=${without.join(',')}`,
        // A browser started by root has no sandbox to go into.
        ...(isRoot ? ['--no-sandbox'] : []),
      ],
    },
  },
});
