import { EXERCISE, handoutTitle } from '../../text';
import { rule, textAt } from '../elements';
import { textWidth } from '../letters/width';
import { baseOf, paragraph, type Strip } from '../strip';
import { LINE, TYPE } from '../type';
import type { Sheet } from '../work';

/** Height of the line on which name and date are written, mm. */
const WRITE_ON = 9;
const NAME_SHARE = 0.62;

/** What the sheet is of, at its head; for a class, a line for name and date. */
export function titleBlock({ plan, chosen, handout, voice, width }: Sheet): Strip[] {
  const { title, lines } = handoutTitle(plan.design.name, chosen, handout.version, voice);
  return [
    ...paragraph(title, width, { size: TYPE.title, face: 'bold', gap: 0, withNext: true }),
    ...lines.flatMap((line) => paragraph(line, width, { gap: 0.4 })),
    ...handout.note
      .split('\n')
      .filter((line) => line.trim() !== '')
      .flatMap((line) => paragraph(line, width, { face: 'italic' })),
    ...(handout.version === 'exercise' ? [nameLine(width)] : []),
  ];
}

function nameLine(width: number): Strip {
  const words = [EXERCISE.name, EXERCISE.date] as const;
  return {
    gap: 2,
    height: WRITE_ON,
    draw: (x, y) => {
      const base = y + baseOf(TYPE.text, WRITE_ON);
      const half = x + width * NAME_SHARE;
      return words.flatMap((word, i) => {
        const [from, to] = i === 0 ? [x, half - 5] : [half, x + width];
        const start = from + textWidth(word, TYPE.text, 'regular') + 2;
        return [textAt(word, from, base, { size: TYPE.text }), rule(start, base + 1, to - start, LINE.rule)];
      });
    },
  };
}
