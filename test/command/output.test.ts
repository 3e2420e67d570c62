import { expect, it } from 'vitest';
import { give } from '../../src/command/output';

function pretend(isTTY: boolean) {
  const given: (string | Uint8Array)[] = [];
  return { given, isTTY, write: (content: string | Uint8Array) => given.push(content) };
}

const BYTES = new Uint8Array([0x25, 0x50, 0x44, 0x46]);

it('pours no bytes over a terminal, but says to name a file', () => {
  const terminal = pretend(true);
  expect(() => give(BYTES, null, terminal)).toThrow(/can't be read on a terminal: add --out/);
  expect(terminal.given).toEqual([]);
});

it('gives text to a terminal, and bytes to whatever else reads them', () => {
  const [terminal, pipe] = [pretend(true), pretend(false)];
  give('a plan', null, terminal);
  give(BYTES, null, pipe);
  expect([terminal.given, pipe.given]).toEqual([['a plan'], [BYTES]]);
});
