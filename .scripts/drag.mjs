// npm run bench:drag: how long a move takes the built page while a corner is dragged, and how many frames it drops.
import { join } from 'node:path';
import { runnerImport } from 'vite';
import { buildWhenOld } from './build.mjs';
import { chromium as findChromium } from './chromium.mjs';
import { installWhatIsMissing } from './install.mjs';
import { top } from './run.mjs';
import { serve } from './serve.mjs';

/** Edges of 150 openings, and how many of them up one side of a piece: 300, 3,000 and 10,050 openings. */
const DESIGNS = [
  { edges: 2, perSide: 2 },
  { edges: 20, perSide: 5 },
  { edges: 67, perSide: 9 },
];
const MOVES = 120;
const FRAME = 1000 / 60;
/** Where the corner begins to move from: clear of the column of the others, on which it would catch. */
const CLEAR = 12;
/** How far it goes to one side and back, in moves. */
const REACH = 40;
const TIMES = ['TaskDuration', 'ScriptDuration', 'RecalcStyleDuration', 'LayoutDuration'];

const percentile = (times, share) => [...times].sort((a, b) => a - b)[Math.floor((times.length - 1) * share)];
const ms = (time) => time.toFixed(2).padStart(8);
const offset = (move, px) => CLEAR + px * (REACH - Math.abs((move % (2 * REACH)) - REACH));

/** Opens a design, shows all of it, takes the outline's tool and finds the corner that is dragged. */
async function open(page, url, made) {
  await page.addInitScript(() => {
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker'])
      Object.defineProperty(globalThis, name, { value: undefined });
  });
  await page.goto(url);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  const text = JSON.stringify({ ...made, name: 'Measured' });
  await (await chooser).setFiles({ name: 'measured.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.waitForFunction(() => globalThis.document.title.startsWith('Measured'));
  const all = page.getByRole('button', { name: 'All', exact: true });
  if ((await all.count()) > 0) await all.click();
  await page.getByRole('button', { name: 'Shape the outline' }).click();
  const corner = page.locator('[data-grip="corner p0 e2"] .shape');
  await corner.waitFor();
  // What is fetched later and kept by the database is behind us then.
  await page.waitForTimeout(1500);
  const box = await corner.boundingBox();
  const stitch = await page.evaluate(() => {
    const svg = globalThis.document.querySelector('svg[data-scale]');
    return Number(svg.dataset.scale) * svg.getScreenCTM().a * (100 / 22);
  });
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, px: Math.max(1, stitch) };
}

async function drag(browser, url, made) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  const faults = [];
  page.on('pageerror', (error) => faults.push(error.message));
  const { x, y, px } = await open(page, url, made);
  const session = await context.newCDPSession(page);
  // In the time that the thread itself has worked: what else the machine does in between is left out.
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const mouse = (type, dx, dy = 0) =>
    session.send('Input.dispatchMouseEvent', {
      type,
      x: x + dx,
      y: y + dy,
      button: 'left',
      buttons: type === 'mouseReleased' ? 0 : 1,
      clickCount: 1,
    });
  const frame = () =>
    page.evaluate(() => new Promise((seen) => globalThis.requestAnimationFrame(() => setTimeout(seen))));
  const read = async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return TIMES.map((name) => metrics.find((one) => one.name === name).value * 1000);
  };

  // What asking costs by itself, frame by frame.
  const during = async (work) => {
    const spent = [];
    let before = await read();
    for (let move = 0; move < MOVES; move++) {
      await work(move);
      await frame();
      const after = await read();
      spent.push(after.map((time, i) => time - before[i]));
      before = after;
    }
    return spent;
  };
  const idle = await during(() => Promise.resolve());

  // Move by move: all that the main thread does from one move to the end of the frame that shows it.
  await mouse('mousePressed', 0);
  for (let move = 0; move < 10; move++) await mouse('mouseMoved', offset(move, px));
  if ((await page.locator('svg.moving').count()) === 0) throw new Error('The corner does not follow the mouse.');
  const spent = await during((move) => mouse('mouseMoved', offset(move + 10, px)));

  // The same at the pace of a hand: a move every 60th of a second, whatever the page makes of it.
  await page.evaluate(() => {
    globalThis.frames60 = [];
    const tick = (at) => {
      globalThis.frames60.push(at);
      globalThis.ticking = globalThis.requestAnimationFrame(tick);
    };
    globalThis.ticking = globalThis.requestAnimationFrame(tick);
  });
  const sent = [];
  const from = performance.now();
  for (let move = 0; move < MOVES; move++) {
    await new Promise((wake) => setTimeout(wake, Math.max(0, from + move * FRAME - performance.now())));
    sent.push(mouse('mouseMoved', offset(move, px)));
  }
  await Promise.all(sent);
  const frames = await page.evaluate(() => {
    globalThis.cancelAnimationFrame(globalThis.ticking);
    return globalThis.frames60;
  });
  await mouse('mouseReleased', offset(MOVES - 1, px));
  await frame();
  if (faults.length > 0) throw new Error(faults.join('\n'));
  await context.close();
  const gaps = frames.slice(1).map((at, i) => at - frames[i]);
  return {
    spent,
    idle,
    frames: frames.length,
    dropped: gaps.reduce((sum, gap) => sum + Math.max(0, Math.round(gap / FRAME) - 1), 0),
    longest: Math.max(...gaps),
  };
}

installWhatIsMissing();
buildWhenOld();
const { chromium } = await import('@playwright/test');
const { module } = await runnerImport(join(top, 'test', 'bench', 'designs.ts'), {
  configFile: false,
  logLevel: 'error',
});
const { server, url } = await serve(join(top, 'dist'), { port: 0 });
const browser = await chromium.launch({
  executablePath: await findChromium(),
  args: ['--disable-gpu', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
});
try {
  const page = await browser.newPage();
  const roots = await page.evaluate(() => {
    const start = performance.now();
    let sum = 0;
    for (let i = 0; i < 1e7; i++) sum += Math.sqrt(i);
    return sum > 0 ? performance.now() - start : 0;
  });
  console.log(`Ten million square roots take this machine ${roots.toFixed(0)} ms just now.\n`);
  await page.close();
  console.log(
    'openings    main thread a move, ms    of it script   style  layout   nothing moved    frames  dropped  longest',
  );
  console.log('             median     95 %');
  for (const { edges, perSide } of DESIGNS) {
    const made = module.sides(edges, perSide);
    const { spent, idle, frames, dropped, longest } = await drag(browser, url, made);
    const of = (list, i, share = 0.5) =>
      percentile(
        list.map((one) => one[i]),
        share,
      );
    console.log(
      String(edges * 150).padStart(8),
      ms(of(spent, 0)),
      ms(of(spent, 0, 0.95)),
      '           ',
      ms(of(spent, 1)),
      ms(of(spent, 2)),
      ms(of(spent, 3)),
      ms(of(idle, 0)),
      '   ',
      String(frames).padStart(6),
      String(dropped).padStart(8),
      ms(longest),
    );
  }
} finally {
  await browser.close();
  server.close();
}
