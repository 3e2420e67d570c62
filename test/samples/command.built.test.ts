import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { planSample, sampleFile, SAMPLES } from './sample';

const command = fileURLToPath(new URL('../../dist/command/edgewise.js', import.meta.url));

it.each(SAMPLES)('%s goes through the command: all flat, and nothing on standard error', (name) => {
  const check = spawnSync(process.execPath, [command, 'check', sampleFile(name)], { encoding: 'utf8' });
  expect(check).toMatchObject({ status: 0, stderr: '' });

  const planned = spawnSync(process.execPath, [command, 'plan', sampleFile(name)], { encoding: 'utf8' });
  expect(planned).toMatchObject({ status: 0, stderr: '' });
  for (const { pickup, picked } of planSample(name).pickups) {
    expect(planned.stdout).toContain(`${pickup.name}: ${picked} stitches`);
  }
});
