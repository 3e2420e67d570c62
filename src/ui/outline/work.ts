import { copiedName } from '../../text';
import type { CanvasTool } from '../tool';
import type { OutlineTool } from './tool.svelte';

/** What the commands do to what is chosen on an outline. */
export function workOf(tool: OutlineTool): CanvasTool['work'] {
  return {
    'nudge-left': () => tool.nudge(-1, 0),
    'nudge-right': () => tool.nudge(1, 0),
    'nudge-up': () => tool.nudge(0, 1),
    'nudge-down': () => tool.nudge(0, -1),
    'nudge-far-left': () => tool.nudge(-10, 0),
    'nudge-far-right': () => tool.nudge(10, 0),
    'nudge-far-up': () => tool.nudge(0, 10),
    'nudge-far-down': () => tool.nudge(0, -10),
    'add-corner': () => tool.addCorner(),
    'remove-corner': () => tool.removeCorners(),
    exact: () => tool.type(''),
    'choose-all': () => tool.chooseAll(),
    'duplicate-piece': () =>
      tool.onPiece((piece) => ({ kind: 'duplicate-piece', piece: piece.id, name: copiedName(piece.name) })),
    'mirror-piece': () => tool.onPiece((piece) => ({ kind: 'mirror-piece', piece: piece.id })),
    'let-go': () => tool.choose(null),
  };
}
