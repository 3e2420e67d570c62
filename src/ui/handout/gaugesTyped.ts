import { gaugesFault } from '../../text';
import { readNumber, writeNumber, type Gauge } from '../../units';

/** Gauges are typed over this, mm. */
const OVER = 100;
const LEAST = 4;
const MOST = { stitches: 200, rows: 300 } as const;

/** `20 × 28, 24 × 32` as gauges to 10 cm, or why it is none. A comma between gauges has a space behind it; one without is a decimal comma. */
export function readGauges(
  typed: string,
): { readonly ok: true; readonly gauges: readonly Gauge[] } | { readonly ok: false; readonly why: string } {
  const gauges: Gauge[] = [];
  for (const part of typed.split(/;|\n|,\s+|,$/).map((one) => one.trim())) {
    if (part === '') continue;
    const [stitches, rows, more] = part.split(/\s*(?:[x×*/]|\bby\b)\s*/i).map(valueOf);
    const fits = (value: number | null | undefined, most: number): value is number =>
      typeof value === 'number' && value >= LEAST && value <= most;
    if (more !== undefined || !fits(stitches, MOST.stitches) || !fits(rows, MOST.rows)) {
      return { ok: false, why: gaugesFault(part) };
    }
    gauges.push({ stitches, rows, over: OVER });
  }
  return { ok: true, gauges };
}

function valueOf(text: string): number | null {
  const read = readNumber(text);
  return read.ok ? read.value : null;
}

/** Gauges as they are typed. */
export function writeGauges(gauges: readonly Gauge[]): string {
  const said = (value: number) => writeNumber(value, { digits: 2, language: 'en' });
  return gauges
    .map(({ stitches, rows, over }) => `${said((stitches * OVER) / over)} × ${said((rows * OVER) / over)}`)
    .join(', ');
}
