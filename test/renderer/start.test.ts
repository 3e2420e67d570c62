import { describe, expect, it } from 'vitest';
import { around, dataOf, draw, planOf, square, startsOf, textsOf } from './designs';

/** Direction of the arrow: from where its arm begins to its tip, in the second stroke the middle place. */
function arrow(hand: string): readonly [number, number] {
  const plan = planOf(square(40, 60), around({}, ['right']), { hand });
  const strokes = dataOf(draw(plan, { scale: 1 }), 'arrow')
    .split('M')
    .slice(1);
  const places = (stroke: string) => stroke.split('L').map((at) => at.split(',').map(Number) as [number, number]);
  const arm = places(strokes[0]!);
  const tip = places(strokes[1]!)[1]!;
  return [tip[0] - arm[1]![0], tip[1] - arm[1]![1]];
}

describe('the mark where work begins', () => {
  it('points the way the knitter goes: up a right edge, down it for a left-handed one', () => {
    expect(arrow('right')[1]).toBeLessThan(-3);
    expect(arrow('left')[1]).toBeGreaterThan(3);
    expect(arrow('right')[0]).toBeCloseTo(0, 6);
  });

  it('says start, and end too in the round, where its foot crosses the edge', () => {
    const flat = draw(planOf(square(40, 60), around({}, ['right'])), { scale: 1 });
    const round = draw(planOf(square(40, 60), around({ joined: true })), { scale: 1 });
    expect(textsOf(flat, 'start-word')).toEqual(['start']);
    expect(textsOf(round, 'start-word')).toEqual(['start and end']);
    const edge = round.places[0]!.box.y + round.places[0]!.box.height;
    expect(startsOf(dataOf(round, 'arrow'))[0]![1]).toBeLessThan(edge);
    expect(startsOf(dataOf(flat, 'arrow'))[0]![0]).toBeCloseTo(flat.places[0]!.box.x + flat.places[0]!.box.width, 3);
  });
});
