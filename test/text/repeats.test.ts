import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Run } from '../../src/pickup';
import { repeatedParts, type RhythmPart } from '../../src/text/repeats';

function writtenOut(runs: readonly Run[]): string[] {
  return runs.flatMap(({ pick, skip, times }) => Array.from({ length: times }, () => `${pick} ${skip}`));
}

function partsWrittenOut(parts: readonly RhythmPart[]): string[] {
  return parts.flatMap((part) =>
    part.kind === 'run'
      ? writtenOut([part.run])
      : Array.from({ length: part.times }, () => writtenOut(part.runs)).flat(),
  );
}

function numbersToRemember(parts: readonly RhythmPart[]): number {
  const runs = (all: readonly Run[]) =>
    all.reduce((sum, run) => sum + Number(run.pick > 0) + Number(run.skip > 0) + Number(run.times > 1), 0);
  return parts.reduce((sum, part) => sum + (part.kind === 'run' ? runs([part.run]) : runs(part.runs) + 5), 0);
}

const anyRuns = fc
  .array(
    fc.record({ pick: fc.integer({ min: 1, max: 3 }), skip: fc.constant(1), times: fc.integer({ min: 1, max: 3 }) }),
    {
      minLength: 1,
      maxLength: 24,
    },
  )
  .map((runs) => {
    const joined: Run[] = [];
    for (const run of runs) {
      const last = joined.at(-1);
      if (last?.pick === run.pick) joined[joined.length - 1] = { ...last, times: last.times + run.times };
      else joined.push(run);
    }
    return joined;
  });

describe('repeatedParts', () => {
  test('written out, the parts are the runs', () => {
    fc.assert(
      fc.property(anyRuns, (runs) => {
        expect(partsWrittenOut(repeatedParts(runs))).toEqual(writtenOut(runs));
      }),
    );
  });

  test('never asks for more to be remembered than the runs themselves', () => {
    fc.assert(
      fc.property(anyRuns, (runs) => {
        const plain = runs.map((run): RhythmPart => ({ kind: 'run', run }));
        expect(numbersToRemember(repeatedParts(runs))).toBeLessThanOrEqual(numbersToRemember(plain));
      }),
    );
  });

  test('finds a repeat that begins inside a run', () => {
    // 4 4, then (3 4 4) three times: the first two fours and the rest share a run of fours.
    const runs = [2, 2, 2, 2].flatMap((times, i): Run[] => [
      ...(i > 0 ? [{ pick: 3, skip: 1, times: 1 }] : []),
      { pick: 4, skip: 1, times },
    ]);
    const parts = repeatedParts(runs);
    expect(parts.filter((part) => part.kind === 'group')).toHaveLength(1);
    expect(partsWrittenOut(parts)).toEqual(writtenOut(runs));
  });

  test('has no parts for no runs', () => {
    expect(repeatedParts([])).toEqual([]);
  });
});
