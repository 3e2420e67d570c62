/** One good document, and small changes that make it bad: each with the problem it must give. */
import type { BadFile } from './bad';
import { BAD_HANDOUTS } from './badHandouts';
import { BAD_PICKUPS } from './badPickups';
import { BAD_PIECES } from './badPieces';
import { BAD_TEXTS } from './badText';

export const BAD_FILES: readonly BadFile[] = [...BAD_TEXTS, ...BAD_PIECES, ...BAD_PICKUPS, ...BAD_HANDOUTS];
