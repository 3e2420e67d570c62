// npm start: installs what is missing, builds when something changed, and serves the page.
import { join } from 'node:path';
import { buildWhenOld } from './build.mjs';
import { installWhatIsMissing } from './install.mjs';
import { top } from './run.mjs';
import { serve } from './serve.mjs';

try {
  installWhatIsMissing();
  buildWhenOld();
  const { url } = await serve(join(top, 'dist'), {
    port: Number(process.env.PORT ?? 4173),
    host: process.env.HOST ?? '127.0.0.1',
  });
  console.log(`\nEdgewise is at ${url}\nStop it with Ctrl+C.`);
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}
