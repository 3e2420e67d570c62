import { expect, test } from 'vitest';
import { progressOn } from '../../src/command/progress';

function stream(isTTY: boolean): { stream: NodeJS.WriteStream; written: string[] } {
  const written: string[] = [];
  const write = (text: string): boolean => {
    written.push(text);
    return true;
  };
  return { stream: { isTTY, write } as unknown as NodeJS.WriteStream, written };
}

function after(ms: number): () => number {
  let time = -ms;
  return () => (time += ms);
}

test('slow work on a terminal says where it is and wipes the line', () => {
  const { stream: terminal, written } = stream(true);
  const progress = progressOn(terminal, after(600));
  progress.step('planning');
  progress.end();
  progress.end();
  expect(written).toEqual(['\r\u001b[2Kplanning', '\r\u001b[2K']);
});

test('quick work says nothing', () => {
  const { stream: terminal, written } = stream(true);
  const progress = progressOn(terminal, after(100));
  progress.step('planning');
  progress.end();
  expect(written).toEqual([]);
});

test('a pipe hears nothing however slow the work', () => {
  const { stream: pipe, written } = stream(false);
  const progress = progressOn(pipe, after(5000));
  progress.step('planning');
  progress.end();
  expect(written).toEqual([]);
});
