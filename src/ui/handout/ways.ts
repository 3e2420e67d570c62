import type { HandoutVersion } from '../../piece';
import { ForeignLettersError, pngSize, type Page } from '../../handout';
import type { Workbench } from '../workbench.svelte';
import {
  foreignLettersText,
  HANDOUT,
  instructions,
  instructionsHtml,
  instructionsPage,
  planCsv,
  planDocument,
  pngTooLarge,
  type FileKind,
} from '../../text';
import { letterFiles } from './letters';
import { orCancelled } from './orCancelled';
import { pngOf } from './png';

/** Gives a file to the browser to be saved under a name that says whose it is and what. */
export type Give = (kind: FileKind, data: string | Blob) => void;

/** What came of it: said in words where it did not work, empty where it did. */
export type Said = Promise<string>;

/** The pages as one document, with the letters in it. Cancelled by the signal. */
export async function givePdf(
  pages: readonly Page[],
  { title, version }: { readonly title: string; readonly version: HandoutVersion },
  give: Give,
  signal: AbortSignal,
  onPage: (done: number, of: number) => void,
): Said {
  try {
    const [{ writePdf }, fonts] = await orCancelled(
      Promise.all([import('../../handout/pdf/writePdf'), letterFiles()]),
      signal,
    );
    const bytes = await orCancelled(writePdf(pages, { title, language: 'en', fonts, signal, onPage }), signal);
    give({ holds: 'handout', version, form: 'pdf' }, new Blob([bytes.slice()], { type: 'application/pdf' }));
    return '';
  } catch (error) {
    if (signal.aborted) return HANDOUT.cancelled;
    if (error instanceof ForeignLettersError) return foreignLettersText(error.problem);
    if (error instanceof TypeError) return HANDOUT.lettersMissing;
    throw error;
  }
}

export async function giveSvg({ plan, pickupIndex }: Workbench, give: Give): Said {
  const { fileSvg } = await import('../../renderer/file');
  give({ holds: 'drawing', form: 'svg' }, fileSvg(plan, pickupIndex));
  return '';
}

/** The drawing as a picture of so many dots to the inch. Cancelled by the signal. */
export async function givePng({ plan, pickupIndex }: Workbench, dots: number, give: Give, signal: AbortSignal): Said {
  try {
    const { fileDrawing, fileSvg } = await orCancelled(import('../../renderer/file'), signal);
    const size = pngSize(fileDrawing(plan, pickupIndex), dots);
    if (!size) return pngTooLarge(dots);
    const picture = await orCancelled(pngOf(fileSvg(plan, pickupIndex), size, dots, signal), signal);
    give({ holds: 'drawing', form: 'png' }, picture);
    return '';
  } catch (error) {
    if (signal.aborted) return HANDOUT.cancelled;
    throw error;
  }
}

export function giveCsv({ plan, pickup }: Workbench, give: Give): Said {
  give({ holds: 'plan', form: 'csv' }, planCsv(planDocument(plan, {}, pickup?.pickup.id)));
  return Promise.resolve('');
}

export async function giveText({ pickup, voice }: Workbench, give: Give): Said {
  if (pickup) give({ holds: 'instructions', form: 'txt' }, `${instructions(pickup, voice).join('\n\n')}\n`);
  return Promise.resolve('');
}

export function giveHtml({ plan, pickup }: Workbench, give: Give): Said {
  give({ holds: 'instructions', form: 'html' }, instructionsPage(plan, {}, pickup?.pickup.id));
  return Promise.resolve('');
}

/** Copies the instructions as HTML and as plain text, so that headings and tables come along where they can be pasted. */
export async function copyInstructions({ plan, pickup, voice }: Workbench): Said {
  if (!pickup) return '';
  const kinds = {
    'text/html': instructionsHtml(plan, {}, pickup.pickup.id),
    'text/plain': instructions(pickup, voice).join('\n\n'),
  };
  try {
    const items = Object.entries(kinds).map(([type, text]) => [type, new Blob([text], { type })] as const);
    await navigator.clipboard.write([new ClipboardItem(Object.fromEntries(items))]);
    return HANDOUT.copied;
  } catch {
    return HANDOUT.notCopied;
  }
}
