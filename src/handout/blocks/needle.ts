import { closeUpCaption, handoutHeading, rowOrRound } from '../../text';
import { closeUpsOf, drawCloseUp, type CloseUpKind } from '../closeups';
import { inFamily, placedAt, textAt } from '../elements';
import { wrapped } from '../letters/wrapped';
import { baseOf, heading, type Strip } from '../strip';
import { LEADING, ROOM, TYPE } from '../type';
import type { Sheet } from '../work';

/** Between two pictures, mm. */
const BETWEEN = 6;
/** The words stand beside a picture where one alone is in a row and they get this much of it, mm. */
const BESIDE = 40;
/** From a picture down to its words, mm. */
const UNDER = 1;

/** A close-up for every kind of opening in this piece, side by side, each with what it shows. */
export function needleBlock(sheet: Sheet): Strip[] {
  const { chosen, voice, width } = sheet;
  const kinds = closeUpsOf(chosen);
  const [first] = kinds;
  if (first === undefined) return [];
  const wide = drawCloseUp(first, voice.hand).width;
  const across = Math.max(1, Math.floor((width + BETWEEN) / (wide + BETWEEN)));
  const rows = Array.from({ length: Math.ceil(kinds.length / across) }, (_, i) =>
    kinds.slice(i * across, (i + 1) * across),
  );
  const beside = width - wide - BETWEEN;
  const isBeside = (across === 1 || kinds.length === 1) && beside >= BESIDE;
  // What stands alone in its row has all of it.
  const lookOf = (row: readonly CloseUpKind[]): Look =>
    isBeside ? besideIt(wide, beside) : underIt(row.length === 1 ? 1 : across, width);
  return [...heading(handoutHeading('needle', voice), width), ...rows.map((row) => rowOf(row, lookOf(row), sheet))];
}

/** Where the pictures of a row and their words stand, mm. */
interface Look {
  /** From one picture to the next. */
  readonly step: number;
  /** Width of the words. */
  readonly words: number;
  readonly isBeside: boolean;
}

function underIt(across: number, width: number): Look {
  const share = (width - BETWEEN * (across - 1)) / across;
  return { step: share + BETWEEN, words: share, isBeside: false };
}

const besideIt = (wide: number, beside: number): Look => ({ step: wide, words: beside, isBeside: true });

function rowOf(kinds: readonly CloseUpKind[], look: Look, { chosen, voice }: Sheet): Strip {
  const [step, small] = [TYPE.text * LEADING, TYPE.small * LEADING];
  const pictures = kinds.map((kind) => {
    const picture = drawCloseUp(kind, voice.hand);
    const { title, sentence } = closeUpCaption(kind, voice.terms, rowOrRound(chosen));
    const titled = wrapped(title, look.words, TYPE.text, 'bold');
    const lines = wrapped(sentence, look.words, TYPE.small, 'regular');
    return { picture, titled, lines, told: titled.length * step + lines.length * small };
  });
  const heights = pictures.map(({ picture, told }) =>
    look.isBeside ? Math.max(picture.height, told) : picture.height + UNDER + told,
  );
  return {
    gap: ROOM.paragraph * 2,
    height: Math.max(...heights),
    draw: (x, y) =>
      pictures.flatMap(({ picture, titled, lines, told }, i) => {
        const left = x + i * look.step;
        const words = look.isBeside ? left + picture.width + BETWEEN : left;
        const top = look.isBeside ? y + Math.max(0, picture.height - told) / 2 : y + picture.height + UNDER;
        const under = top + titled.length * step;
        return [
          placedAt(picture.elements.map(inFamily), left, y),
          ...titled.map((line, n) =>
            textAt(line, words, top + n * step + baseOf(TYPE.text, step), { size: TYPE.text, face: 'bold' }),
          ),
          ...lines.map((line, n) =>
            textAt(line, words, under + n * small + baseOf(TYPE.small, small), { size: TYPE.small }),
          ),
        ];
      }),
  };
}
