import { describe, expect, it } from 'vitest';
import { countPlaywright, countVitest, settle } from '../../.scripts/count.mjs';

describe('countVitest', () => {
  const file = (status: string, ...tests: string[]) => ({
    status,
    assertionResults: tests.map((status) => ({ status })),
  });

  it('counts tests', () => {
    expect(
      countVitest({ testResults: [file('passed', 'passed', 'passed'), file('failed', 'passed', 'failed')] }),
    ).toEqual({
      passed: 3,
      failed: 1,
    });
  });

  it('counts a file that could not be loaded, and one whose clearing up failed', () => {
    expect(countVitest({ testResults: [file('failed'), file('failed', 'passed')] })).toEqual({ passed: 1, failed: 2 });
  });

  it.each(['skipped', 'pending', 'todo'])('counts a %s test as failed', (status) => {
    expect(countVitest({ testResults: [file('passed', status)] })).toEqual({ passed: 0, failed: 1 });
  });
});

describe('countPlaywright', () => {
  it('counts tests; one that is skipped or unsteady as failed', () => {
    const stats = { expected: 5, unexpected: 1, flaky: 2, skipped: 3 };
    expect(countPlaywright({ stats, errors: [] })).toEqual({ passed: 5, failed: 6 });
  });

  it('counts what went wrong outside of tests', () => {
    const stats = { expected: 0, unexpected: 0, flaky: 0, skipped: 0 };
    expect(countPlaywright({ stats, errors: [{ message: 'No tests found' }] })).toEqual({ passed: 0, failed: 1 });
  });
});

describe('settle', () => {
  it('leaves a clean run and a failed one as they are', () => {
    expect(settle({ passed: 3, failed: 0 }, 0)).toEqual({ passed: 3, failed: 0 });
    expect(settle({ passed: 3, failed: 2 }, 1)).toEqual({ passed: 3, failed: 2 });
  });

  it('counts a runner that failed without a failed test, or ran none', () => {
    expect(settle({ passed: 3, failed: 0 }, 1)).toEqual({ passed: 3, failed: 1 });
    expect(settle({ passed: 0, failed: 0 }, 0)).toEqual({ passed: 0, failed: 1 });
  });
});
