import type { Design, Problem } from '../piece';
import { edgeName, shownName } from './edgeName';
import { problemSentence } from './problems';

/**
 * Why a change is not made, in a sentence. It is said as of a file, but of the drawing in sight: pieces and edges by
 * their names, no place in the file, and where an outline meets itself counted from the piece's left and bottom, as its
 * rulers are.
 */
export function refusedChange(problem: Problem, design: Pick<Design, 'pieces'>): string {
  const piece = 'piece' in problem ? design.pieces.find(({ id }) => id === problem.piece) : undefined;
  if (!piece) return problemSentence({ ...problem, at: '' });
  const name = (id: string): string => {
    const edge = piece.outline.find((one) => one.id === id);
    return edge ? edgeName(edge) : id;
  };
  const corners = piece.outline.map(({ from }) => from);
  const from = (axis: 0 | 1) => Math.min(...corners.map((corner) => corner[axis]));
  return problemSentence({
    ...problem,
    at: '',
    piece: shownName(piece.name),
    ...('edge' in problem ? { edge: name(problem.edge) } : {}),
    ...(problem.kind === 'crossing'
      ? {
          first: name(problem.first),
          second: name(problem.second),
          x: Math.round(problem.x - from(0)),
          y: Math.round(problem.y - from(1)),
        }
      : {}),
  } as Problem);
}
