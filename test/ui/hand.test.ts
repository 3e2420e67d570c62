import { describe, expect, it } from 'vitest';
import type { Finger, Spot } from '../../src/editor';
import { Hand, SLACK } from '../../src/ui/hand.svelte';
import type { CanvasTool } from '../../src/ui/tool';

const MOUSE = { touch: false, shift: false };
const TOUCH = { touch: true, shift: false };

const finger = (x: number, y: number, id = 1): Finger => ({ id, at: [x, y] });

/** A hand over a drawing, with or without a tool; what it does is told as a list of words. */
function handOver({ takes = false, tool = true }: { takes?: boolean; tool?: boolean } = {}) {
  const said: string[] = [];
  const at = (spot: Spot | null) => (spot ? spot.join(' ') : 'nowhere');
  const inUse: CanvasTool = {
    press: (spot) => {
      said.push(`press ${at(spot)}`);
      return takes;
    },
    move: (spot) => said.push(`move ${at(spot)}`),
    lift: (spot) => said.push(`lift ${at(spot)}`),
    tap: (spot, how) => said.push(`tap ${at(spot)}${how.shift ? ' with Shift' : ''}`),
    again: (spot) => said.push(`again ${at(spot)}`),
    breakOff: () => said.push('break off'),
    hover: (spot) => said.push(`hover ${at(spot)}`),
    cursor: 'default',
    work: {},
  };
  const hand = new Hand(
    {
      pan: (dx, dy) => said.push(`pan ${dx} ${dy}`),
      zoom: (factor) => said.push(`zoom ${factor}`),
      tap: (spot) => said.push(`look at ${at(spot)}`),
      hover: (spot) => said.push(`look over ${at(spot)}`),
    },
    () => (tool ? inUse : null),
  );
  const heard = () => said.splice(0);
  return { hand, heard };
}

describe('a finger that the tool takes', () => {
  it('is the tool’s alone until it is lifted', () => {
    const { hand, heard } = handOver({ takes: true });
    hand.press(finger(10, 10), MOUSE, true);
    expect(hand.busy).toBe(true);
    hand.move(finger(30, 12), false);
    hand.lift(finger(31, 12));
    expect(heard()).toEqual(['press 10 10', 'move 30 12', 'lift 31 12']);
    expect(hand.busy).toBe(false);
    expect(hand.dragging).toBe(false);
  });

  it('is not taken a second time while the first is held: both then look at the drawing', () => {
    const { hand, heard } = handOver({ takes: true });
    hand.press(finger(0, 0, 1), TOUCH, true);
    hand.move(finger(10, 0, 1), true);
    hand.press(finger(30, 0, 2), TOUCH, false);
    expect(heard()).toEqual(['press 0 0', 'move 10 0', 'break off']);
    hand.move(finger(50, 0, 2), true);
    expect(heard()).toEqual(['zoom 2', 'pan 10 0']);
    hand.lift(finger(10, 0, 1));
    hand.move(finger(53, 0, 2), true);
    expect(heard()).toEqual(['pan 3 0']);
    hand.lift(finger(53, 0, 2));
    // Neither of them is a tap.
    expect(heard()).toEqual([]);
    expect(hand.busy).toBe(false);
  });

  it('lets go when it is broken off, and hears no more', () => {
    const { hand, heard } = handOver({ takes: true });
    hand.press(finger(0, 0), TOUCH, true);
    hand.breakOff();
    expect(heard()).toEqual(['press 0 0', 'break off']);
    hand.move(finger(9, 9), true);
    hand.lift(finger(9, 9));
    expect(heard()).toEqual([]);
  });

  it('lets go when the browser takes it away, but not for another finger, nor after it was lifted', () => {
    const { hand, heard } = handOver({ takes: true });
    hand.press(finger(0, 0, 1), MOUSE, true);
    hand.lose(7);
    expect(heard()).toEqual(['press 0 0']);
    hand.lose(1);
    expect(heard()).toEqual(['break off']);
    hand.press(finger(0, 0, 1), MOUSE, true);
    hand.lift(finger(0, 0, 1));
    heard();
    hand.lose(1);
    expect(heard()).toEqual([]);
  });
});

describe('a finger that no tool takes', () => {
  it('moves the drawing once it has moved farther than it trembles', () => {
    const { hand, heard } = handOver();
    hand.press(finger(0, 0), TOUCH, true);
    hand.move(finger(SLACK.touch, 0), true);
    expect(hand.busy).toBe(false);
    hand.move(finger(SLACK.touch + 1, 0), true);
    expect(hand.dragging).toBe(true);
    expect(heard()).toEqual(['press 0 0', `pan ${SLACK.touch + 1} 0`]);
    hand.breakOff();
    expect(heard()).toEqual([`pan ${-SLACK.touch - 1} 0`]);
  });

  it('that is lifted where it came down is a tap, told to the tool with its Shift, or to the drawing', () => {
    const { hand, heard } = handOver();
    hand.press(finger(5, 6), { touch: false, shift: true }, true);
    hand.lift(finger(5, 6));
    expect(heard()).toEqual(['press 5 6', 'tap 5 6 with Shift']);
    const bare = handOver({ tool: false });
    bare.hand.press(finger(5, 6), MOUSE, true);
    bare.hand.lift(finger(5, 6));
    expect(bare.heard()).toEqual(['look at 5 6']);
  });

  it('of a button that is not the main one is not offered to the tool', () => {
    const { hand, heard } = handOver({ takes: true });
    hand.press(finger(0, 0), MOUSE, false);
    hand.move(finger(20, 0), false);
    expect(heard()).toEqual(['pan 20 0', 'hover nowhere']);
  });
});

it('a mouse with nothing pressed hovers over the tool, or over the drawing; a finger hovers over nothing', () => {
  const { hand, heard } = handOver();
  hand.move(finger(4, 4), false);
  hand.move(finger(5, 4), true);
  hand.leave();
  expect(heard()).toEqual(['hover 4 4', 'hover nowhere', 'look over nowhere']);
  const bare = handOver({ tool: false });
  bare.hand.move(finger(4, 4), false);
  expect(bare.heard()).toEqual(['look over 4 4']);
});
