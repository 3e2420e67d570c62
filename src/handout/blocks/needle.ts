import { closeUpCaption, handoutHeading, rowOrRound } from '../../text';
import { closeUpsOf, drawCloseUp, type CloseUpKind } from '../closeups';
import { inFamily, placedAt, textAt } from '../elements';
import { wrapped } from '../letters/wrapped';
import { baseOf, heading, type Strip } from '../strip';
import { LEADING, ROOM, TYPE } from '../type';
import type { Sheet } from '../work';

/** Between two pictures, mm. */
const BETWEEN = 6;

/** A close-up for every kind of opening in this piece, side by side, each with what it shows. */
export function needleBlock(sheet: Sheet): Strip[] {
  const { chosen, voice, width } = sheet;
  const kinds = closeUpsOf(chosen);
  const [first] = kinds;
  if (first === undefined) return [];
  const across = Math.max(1, Math.floor((width + BETWEEN) / (drawCloseUp(first, voice.hand).width + BETWEEN)));
  const rows = Array.from({ length: Math.ceil(kinds.length / across) }, (_, i) =>
    kinds.slice(i * across, (i + 1) * across),
  );
  const share = (width - BETWEEN * (across - 1)) / across;
  return [...heading(handoutHeading('needle', voice), width), ...rows.map((row) => rowOf(row, share, sheet))];
}

function rowOf(kinds: readonly CloseUpKind[], share: number, { chosen, voice }: Sheet): Strip {
  const pictures = kinds.map((kind) => {
    const picture = drawCloseUp(kind, voice.hand);
    const { title, sentence } = closeUpCaption(kind, voice.terms, rowOrRound(chosen));
    return {
      picture,
      title: wrapped(title, share, TYPE.text, 'bold'),
      lines: wrapped(sentence, share, TYPE.small, 'regular'),
    };
  });
  const [step, small] = [TYPE.text * LEADING, TYPE.small * LEADING];
  const heights = pictures.map(
    ({ picture, title, lines }) => picture.height + title.length * step + lines.length * small,
  );
  return {
    gap: ROOM.paragraph * 2,
    height: Math.max(...heights) + 1,
    draw: (x, y) =>
      pictures.flatMap(({ picture, title, lines }, i) => {
        const left = x + i * (share + BETWEEN);
        const under = y + picture.height + 1;
        return [
          placedAt(picture.elements.map(inFamily), left, y),
          ...title.map((line, n) =>
            textAt(line, left, under + n * step + baseOf(TYPE.text, step), { size: TYPE.text, face: 'bold' }),
          ),
          ...lines.map((line, n) =>
            textAt(line, left, under + title.length * step + n * small + baseOf(TYPE.small, small), {
              size: TYPE.small,
            }),
          ),
        ];
      }),
  };
}
