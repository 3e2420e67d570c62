import { describe, expect, it } from 'vitest';
import { changed } from '../../src/editor/changes';
import { checkDesign, DesignError, type Problem } from '../../src/piece';
import { refusedChange } from '../../src/text/refusedChange';
import { readSample } from '../samples/sample';

const { design } = readSample('pullover');

describe('why a change is not made', () => {
  it('is said by the names on the drawing, and counted as its rulers are', () => {
    const crossed = changed(design, {
      kind: 'move-corners',
      piece: 'front',
      corners: ['neck-curve-left'],
      dx: -27,
      dy: -14,
    });
    let problem: Problem | null = null;
    try {
      checkDesign(crossed);
    } catch (error) {
      if (error instanceof DesignError) problem = error.problem;
    }
    expect(problem?.kind).toBe('crossing');
    // No id: they have hyphens where names have spaces.
    expect(refusedChange(problem!, crossed)).toMatch(
      /^The outline of piece "Front" meets itself at stitch \d+, row \d+: edge "[a-z ]+" runs into edge "[a-z ]+"; move/,
    );
  });

  it('of a problem that is of no piece keeps to its words, without the place in the file', () => {
    const problem: Problem = { kind: 'too-few', at: 'pieces', list: 'pieces', found: 0, limit: 1 };
    expect(refusedChange(problem, design)).toBe('There are no pieces; give at least 1 piece.');
  });

  it('names the edge of a problem', () => {
    const problem: Problem = { kind: 'no-length', at: 'pieces[0]', piece: 'front', edge: 'neck-center' };
    expect(refusedChange(problem, design)).toMatch(/^Edge "center neck" of piece "Front" has no length/);
  });
});
