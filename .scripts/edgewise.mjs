// npm run --silent edgewise -- ...: the command, built first when it is missing or older than its sources.
import { buildWhenOld, command } from './build.mjs';
import { installWhatIsMissing } from './install.mjs';
import { run } from './run.mjs';

const silence = () => undefined;
try {
  installWhatIsMissing({ say: silence });
  buildWhenOld({ say: silence });
  // File names are meant from where the words were typed, not from the top of the repository.
  process.exitCode = await run(command, process.argv.slice(2), { cwd: process.env.INIT_CWD ?? process.cwd() });
} catch (error) {
  console.error(error.message);
  process.exitCode = 2;
}
