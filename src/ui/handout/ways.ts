import { ForeignLettersError, type Page } from '../../handout';
import type { Workbench } from '../workbench.svelte';
import { foreignLettersText, HANDOUT, instructions, planCsv, planDocument, pngTooLarge } from '../../text';
import { instructionsHtml } from './shim';
import { letterFiles } from './letters';
import { pngOf, pngSize } from './png';

/** Gives a file to the browser to be saved, by its name without the part that says whose it is. */
export type Give = (kind: string, ending: string, data: string | Blob, type: string) => void;

/** What came of it: said in words where it did not work, empty where it did. */
export type Said = Promise<string>;

/** The pages as one document, with the letters in it. Cancelled by the signal. */
export async function givePdf(
  pages: readonly Page[],
  title: string,
  give: Give,
  signal: AbortSignal,
  onPage: (done: number, of: number) => void,
): Said {
  try {
    const [{ writePdf }, fonts] = await Promise.all([import('../../handout/pdf/writePdf'), letterFiles()]);
    const bytes = await writePdf(pages, { title, language: 'en', fonts, signal, onPage });
    give('handout', '.pdf', new Blob([bytes.slice()], { type: 'application/pdf' }), 'application/pdf');
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
  give('drawing', '.svg', fileSvg(plan, pickupIndex), 'image/svg+xml');
  return '';
}

export async function givePng({ plan, pickupIndex }: Workbench, dots: number, give: Give): Said {
  const { fileDrawing, fileSvg } = await import('../../renderer/file');
  const size = pngSize(fileDrawing(plan, pickupIndex), dots);
  if (!size) return pngTooLarge(dots);
  give('drawing', '.png', await pngOf(fileSvg(plan, pickupIndex), size), 'image/png');
  return '';
}

export function giveCsv({ plan, pickup }: Workbench, give: Give): Said {
  give('openings', '.csv', planCsv(planDocument(plan, {}, pickup?.pickup.id)), 'text/csv');
  return Promise.resolve('');
}

export async function giveText({ pickup, voice }: Workbench, give: Give): Said {
  if (pickup) give('instructions', '.txt', `${instructions(pickup, voice).join('\n\n')}\n`, 'text/plain');
  return Promise.resolve('');
}

export function giveHtml({ plan, pickup, voice }: Workbench, give: Give): Said {
  if (pickup) give('instructions', '.html', instructionsHtml(plan.design.name, pickup, voice), 'text/html');
  return Promise.resolve('');
}

/** Copies the instructions as HTML and as plain text, so that headings and tables come along where they can be pasted. */
export async function copyInstructions({ plan, pickup, voice }: Workbench): Said {
  if (!pickup) return '';
  const kinds = {
    'text/html': instructionsHtml(plan.design.name, pickup, voice),
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
