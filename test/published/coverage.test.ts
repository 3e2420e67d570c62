import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { folder } from './published';

/** Every published case that was gathered for these checks, by its id. */
const CASES = [
  ...['V01', 'V02', 'V04', 'V05', 'V07', 'V08', 'V10', 'V12', 'S02', 'S03', 'S04', 'G01', 'G02', 'G03', 'G05', 'H01'],
  ...['H03', 'P01', 'P03', 'P04', 'P05', 'L01', 'L03', 'L04', 'L06', 'L07', 'L08', 'L10', 'N01', 'N02', 'N04', 'N06'],
  ...['N07', 'N08', 'N09', 'N10', 'N13', 'N14', 'N15', 'N16', 'N17', 'N18', 'A01', 'A03', 'B03', 'B04', 'B05', 'B06'],
  ...['B07', 'M02', 'E01', 'E02', 'E04', 'E06', 'E07', 'D02', 'D03', 'D05', 'R01', 'R04', 'K01', 'K03', 'K04', 'T01'],
  ...['T03', 'T04'],
];

/** Cases that are not checked, and why. */
const LEFT_OUT: Readonly<Record<string, { title: string; address: string; why: string }>> = {
  P03: {
    title: 'Remedy for underarm holes',
    address: 'https://www.purlsofwisdompa.com/blogs/words-of-wisdom/remedy-for-underarm-holes',
    why: 'one or two stitches more at each end of an underarm, lost again in the second row: gaps between a piece and its neighbor are not planned, only the holes of steps',
  },
};

/** The ids that the tests of this folder check, in no order. */
function checked(): string[] {
  const tests = readdirSync(folder).filter((name) => name.endsWith('.test.ts'));
  const texts = tests.map((name) => readFileSync(`${folder}${name}`, 'utf8'));
  return texts.flatMap((text) => [...text.matchAll(/\bsource\(\s*'([A-Z]\d\d)'/g)].map(([, id]) => id ?? ''));
}

it('checks every case once or says why not', () => {
  expect([...checked(), ...Object.keys(LEFT_OUT)].sort()).toEqual([...CASES].sort());
});

it('says of every case left out where it stands and why it is not checked', () => {
  for (const { title, address, why } of Object.values(LEFT_OUT)) {
    expect(title).not.toBe('');
    expect(address).toMatch(/^https?:\/\/\S+$/);
    expect(why.length).toBeGreaterThan(20);
  }
});

it('uses every design file of the folder', () => {
  const files = readdirSync(folder).flatMap((name) => /^(.+)\.edgewise\.json$/.exec(name)?.[1] ?? []);
  const tests = readdirSync(folder).filter((name) => /(?<!coverage)(?<!built)\.test\.ts$/.test(name));
  const texts = tests.map((name) => readFileSync(`${folder}${name}`, 'utf8')).join('\n');
  expect(files.filter((name) => !texts.includes(`'${name}'`))).toEqual([]);
});
