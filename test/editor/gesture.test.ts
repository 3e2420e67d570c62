import { describe, expect, it } from 'vitest';
import { brokenOff, IDLE, lifted, moved, pressed, type Effect, type Gesture, type Turn } from '../../src/editor';

const SLACK = 2;

type Move =
  readonly ['down' | 'move', id: number, x: number, y: number] | readonly ['up', id: number] | readonly ['cancel'];

/** What follows from a row of movements, and where the hand then is. */
function play(...moves: readonly Move[]): { effects: Effect[]; gesture: Gesture } {
  let gesture: Gesture = IDLE;
  const effects: Effect[] = [];
  for (const move of moves) {
    const turn = turnOf(gesture, move);
    gesture = turn.gesture;
    if (turn.effect) effects.push(turn.effect);
  }
  return { effects, gesture };
}

function turnOf(gesture: Gesture, move: Move): Turn {
  if (move[0] === 'cancel') return brokenOff(gesture);
  if (move[0] === 'up') return lifted(gesture, move[1]);
  const finger = { id: move[1], at: [move[2], move[3]] as const };
  return move[0] === 'down' ? pressed(gesture, finger) : moved(gesture, finger, SLACK);
}

const pans = (effects: readonly Effect[]) =>
  effects.flatMap((effect) => (effect.kind === 'pan' ? [[effect.dx, effect.dy]] : []));

describe('one finger', () => {
  it('that hardly moves taps', () => {
    const { effects, gesture } = play(['down', 1, 10, 10], ['move', 1, 11, 11], ['up', 1]);
    expect(effects).toEqual([{ kind: 'tap', at: [10, 10] }]);
    expect(gesture).toEqual(IDLE);
  });

  it('moves the drawing by all that it moved, and does not tap', () => {
    const { effects } = play(['down', 1, 0, 0], ['move', 1, 5, 0], ['move', 1, 5, 7], ['up', 1]);
    const sum = pans(effects).reduce(([x, y], [dx, dy]) => [x! + dx!, y! + dy!], [0, 0]);
    expect(sum).toEqual([5, 7]);
    expect(effects.some(({ kind }) => kind === 'tap')).toBe(false);
  });

  it('that came back to where it began has moved all the same', () => {
    expect(play(['down', 1, 0, 0], ['move', 1, 9, 0], ['move', 1, 0, 0], ['up', 1]).effects).not.toContainEqual({
      kind: 'tap',
      at: [0, 0],
    });
  });

  it('broken off puts the drawing back and forgets the finger', () => {
    const { effects, gesture } = play(['down', 1, 3, 4], ['move', 1, 13, 4], ['move', 1, 13, 24], ['cancel']);
    const sum = pans(effects).reduce(([x, y], [dx, dy]) => [x! + dx!, y! + dy!], [0, 0]);
    expect(sum).toEqual([0, 0]);
    expect(gesture).toEqual(IDLE);
  });

  it('that was never pressed does nothing', () => {
    expect(play(['move', 1, 5, 5], ['up', 1]).effects).toEqual([]);
    expect(play(['down', 1, 0, 0], ['move', 2, 50, 50], ['up', 2]).effects).toEqual([]);
  });
});

describe('two fingers', () => {
  it('that part zoom about their middle by how far they part', () => {
    const { effects } = play(['down', 1, 10, 0], ['down', 2, 20, 0], ['move', 2, 30, 0]);
    expect(effects).toEqual([{ kind: 'zoom', factor: 2, at: [15, 0], dx: 5, dy: 0 }]);
  });

  it('that move alike move the drawing', () => {
    const { effects } = play(['down', 1, 0, 0], ['down', 2, 10, 0], ['move', 1, 0, 4], ['move', 2, 10, 4]);
    const zooms = effects.flatMap((effect) => (effect.kind === 'zoom' ? [effect] : []));
    expect(zooms.reduce((product, { factor }) => product * factor, 1)).toBeCloseTo(1, 9);
    expect(zooms.reduce((sum, { dy }) => sum + dy, 0)).toBe(4);
  });

  it('that meet in one place give no scale of nothing', () => {
    for (const effect of play(['down', 1, 0, 0], ['down', 2, 10, 0], ['move', 2, 0, 0], ['move', 2, 5, 0]).effects) {
      expect(effect.kind === 'zoom' && (effect.factor <= 0 || !Number.isFinite(effect.factor))).toBe(false);
    }
  });

  it('of which one is lifted go on as one, without a jump or a tap', () => {
    const { effects, gesture } = play(['down', 1, 0, 0], ['down', 2, 10, 0], ['up', 1], ['move', 2, 13, 0], ['up', 2]);
    expect(effects).toEqual([{ kind: 'pan', dx: 3, dy: 0 }]);
    expect(gesture).toEqual(IDLE);
  });

  it('are not disturbed by a third', () => {
    const two = play(['down', 1, 0, 0], ['down', 2, 10, 0]).gesture;
    expect(play(['down', 1, 0, 0], ['down', 2, 10, 0], ['down', 3, 50, 50], ['move', 3, 60, 60], ['up', 3])).toEqual({
      effects: [],
      gesture: two,
    });
  });
});
