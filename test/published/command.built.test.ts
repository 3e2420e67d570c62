import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { folder, plan } from './published';

const command = fileURLToPath(new URL('../../dist/command/edgewise.js', import.meta.url));

const files = readdirSync(folder).flatMap((name) => /^(.+)\.edgewise\.json$/.exec(name)?.[1] ?? []);
const asPrinted = files.filter((name) => name.endsWith('-as-printed'));

function run(task: string, name: string, ...more: string[]) {
  return spawnSync(process.execPath, [command, task, `${folder}${name}.edgewise.json`, ...more], { encoding: 'utf8' });
}

/** The part of a printed plan that is compared. */
interface PrintedPlan {
  readonly pickups: readonly {
    readonly id: string;
    readonly target: number;
    readonly picked: number;
    readonly edges: readonly { readonly count: number }[];
    readonly firstRow: { readonly from: number; readonly to: number };
  }[];
}

describe('the built command', () => {
  it.each(files.filter((name) => !asPrinted.includes(name)))('plans %s as these tests do', (name) => {
    const { status, stdout, stderr } = run('plan', name, '--as', 'json');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const printed = JSON.parse(stdout) as PrintedPlan;
    const wanted = plan(name).pickups.map(({ pickup, target, picked, edges, firstRow: { from, to } }) => ({
      id: pickup.id,
      target,
      picked,
      edges: edges.map(({ count }) => ({ count })),
      firstRow: { from, to },
    }));
    expect(printed.pickups).toMatchObject(wanted);
    expect(printed.pickups).toHaveLength(wanted.length);
  });

  it.each(asPrinted)('refuses %s in one line that names the edge and how far it is off', (name) => {
    const { status, stdout, stderr } = run('plan', name);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/^[^\n]*neck[^\n]*\d+ stitches[^\n]*\n$/);
  });

  it.each([
    ['v-neck-38-stated', 1],
    ['correction-97-and-105', 1],
    ['v-neck-60-in-flat-k2p2', 1],
    ['56-where-80-over-112-rows', 1],
    ['armhole-48-or-49', 0],
    ['neckband-116-to-128', 0],
    ['round-neck-60', 0],
  ])('answers check on %s with exit status %i', (name, status) => {
    expect(run('check', name)).toMatchObject({ status, stderr: '' });
  });
});
