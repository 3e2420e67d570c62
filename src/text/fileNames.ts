/** What files are called that leave the page. */
import type { Design, HandoutVersion, Pickup } from '../piece';
import { shownName } from './edgeName';

/** What a file holds and in which form. */
export type FileKind =
  | { readonly holds: 'handout'; readonly version: HandoutVersion; readonly form: 'pdf' }
  | { readonly holds: 'drawing'; readonly form: 'svg' | 'png' | 'pdf' }
  | { readonly holds: 'plan'; readonly form: 'csv' | 'json' | 'txt' }
  | { readonly holds: 'instructions'; readonly form: 'txt' | 'html' };

const VERSIONS: Readonly<Record<HandoutVersion, string>> = {
  sheet: 'handout',
  exercise: 'exercise',
  answers: 'answers',
};

/** The most that a name out of a design takes of a file's name, bytes of UTF-8: two of them and the rest fit into 255. */
const MOST_BYTES = 100;

/** Names that one widespread system keeps for its devices, whatever comes after a point. */
const DEVICES = /^(con|prn|aux|nul|com[\d¹²³]|lpt[\d¹²³])\s*(\.|$)/i;

/**
 * The name of a file: the design, the pick-up (null where the file is about all of them) and what it holds, such as
 * `Round-neck pullover - Neckband - handout.pdf`. Every system can store it: no signs that one of them forbids, none
 * that are not seen, at most 255 bytes, no name of a device.
 */
export function fileNameOf(design: Pick<Design, 'name'>, pickup: Pick<Pickup, 'name'> | null, kind: FileKind): string {
  const what = kind.holds === 'handout' ? VERSIONS[kind.version] : kind.holds;
  const names = [safe(design.name) || 'Design', pickup === null ? '' : safe(pickup.name), what];
  const name = `${names.filter((part) => part !== '').join(' - ')}.${kind.form}`;
  return DEVICES.test(name) ? `Design ${name}` : name;
}

/** A name without what a file's name can't hold; a sign that parts words becomes a space. */
function safe(name: string): string {
  const plain = shownName(name.normalize('NFC'))
    .replace(/[<>:"/\\|?*]+/g, ' ')
    .replace(/\p{C}+/gu, '')
    .replace(/\s+/g, ' ');
  let cut = '';
  let bytes = 0;
  for (const letter of plain.replace(/^[\s.~-]+/, '')) {
    const code = letter.codePointAt(0)!;
    bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
    if (bytes > MOST_BYTES) break;
    cut += letter;
  }
  return cut.replace(/[\s.]+$/, '');
}
