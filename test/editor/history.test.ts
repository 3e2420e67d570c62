import { describe, expect, it } from 'vitest';
import { redo, startHistory, step, undo } from '../../src/editor';

const abc = step(step(startHistory('a'), 'b'), 'c');

describe('a history', () => {
  it('goes back step by step and forward again', () => {
    const back = undo(undo(abc));
    expect(back).toEqual({ past: [], present: 'a', future: ['b', 'c'] });
    expect(redo(redo(back))).toEqual(abc);
  });

  it('stays where it is at either end', () => {
    expect(undo(startHistory('a'))).toEqual(startHistory('a'));
    expect(redo(abc)).toEqual(abc);
  });

  it('gives up what was undone when something else is done', () => {
    expect(step(undo(abc), 'd')).toEqual({ past: ['a', 'b'], present: 'd', future: [] });
  });

  it('takes no step to what already is, so that nothing undone is lost by it', () => {
    const back = undo(abc);
    expect(step(back, 'b')).toBe(back);
  });

  it('leaves the old history as it was', () => {
    const before = structuredClone(abc);
    step(undo(abc), 'd');
    expect(abc).toEqual(before);
  });
});
