import type { MeasuredEdge } from '../shaping';

/** One step in the order of knitting: `stitches` at once (below 0 taken in, above 0 brought out), then `rows` rows. */
export interface KnitStep {
  readonly stitches: number;
  readonly rows: number;
}

/** A stretch of an edge that is knitted in one go. */
export type KnitPart =
  | {
      readonly kind: 'climb';
      readonly side: 'left' | 'right';
      readonly bottom: number;
      readonly steps: readonly KnitStep[];
    }
  | { readonly kind: 'flat'; readonly bottom: number; readonly stitches: number };

/** A clause of a schedule. */
export type KnitItem =
  | { readonly kind: 'together'; readonly amounts: readonly number[]; readonly every: number; readonly out: boolean }
  | { readonly kind: 'single'; readonly rates: readonly KnitRate[]; readonly out: boolean }
  | { readonly kind: 'even'; readonly rows: number };

export interface KnitRate {
  readonly every: number;
  readonly times: number;
}

/**
 * The worked steps of an edge in the order of knitting, bottom up. A rising stretch of outline is the right edge of
 * its fabric, a falling one the left edge, listed top to bottom and so reversed here; stitches that lie flat at a
 * turn stand alone. A step that goes left takes the fabric in on either edge, since the fabric lies on the left of
 * the outline.
 */
export function knitParts(edge: Pick<MeasuredEdge, 'worked' | 'from'>): KnitPart[] {
  const parts: KnitPart[] = [];
  let y = edge.from[1];
  let run: KnitStep[] = [];
  let direction = 0;
  let start = y;
  const close = () => {
    if (run.length > 0) {
      parts.push(
        direction > 0
          ? { kind: 'climb', side: 'right', bottom: start, steps: run }
          : { kind: 'climb', side: 'left', bottom: y, steps: [...run].reverse() },
      );
    }
    run = [];
    start = y;
  };
  for (const { across, up } of edge.worked) {
    if (Math.sign(up) !== direction) close();
    direction = Math.sign(up);
    if (up === 0) {
      const last = parts.at(-1);
      if (last?.kind === 'flat') parts[parts.length - 1] = { ...last, stitches: last.stitches + across };
      else parts.push({ kind: 'flat', bottom: y, stitches: across });
    } else {
      run.push({ stitches: across, rows: Math.abs(up) });
      y += up;
    }
  }
  close();
  return parts.sort((a, b) => a.bottom - b.bottom || (a.kind === 'flat' ? -1 : 0) - (b.kind === 'flat' ? -1 : 0));
}

/** Steps gathered into the clauses of a schedule; the stitches and the rows of the clauses are those of the steps. */
export function knitItems(steps: readonly KnitStep[]): KnitItem[] {
  const items: KnitItem[] = [];
  for (let i = 0; i < steps.length;) {
    const step = steps[i]!;
    if (step.stitches === 0) {
      pushEven(items, step.rows);
      i += 1;
      continue;
    }
    const alike = sameWay(steps, i);
    const together = togetherFrom(alike);
    const taken = together > 0 ? together : singlesFrom(alike);
    const { item, left } = together > 0 ? togetherItem(alike.slice(0, taken)) : singleItem(alike.slice(0, taken));
    items.push(item);
    pushEven(items, left);
    i += taken;
  }
  return items;
}

function pushEven(items: KnitItem[], rows: number): void {
  const last = items.at(-1);
  if (rows === 0) return;
  if (last?.kind === 'even') items[items.length - 1] = { kind: 'even', rows: last.rows + rows };
  else items.push({ kind: 'even', rows });
}

/** The steps from `i` on that all take in, or all bring out. */
function sameWay(steps: readonly KnitStep[], i: number): KnitStep[] {
  const sign = Math.sign(steps[i]?.stitches ?? 0);
  const rest = steps.slice(i);
  const end = rest.findIndex((step) => Math.sign(step.stitches) !== sign);
  return end < 0 ? rest : rest.slice(0, end);
}

/**
 * How many steps, from the first, are bound off or cast on in one breath: up to the last of two or more stitches, at
 * one interval; the last may be followed by more rows, which are then worked even. 0 where the first is a single one.
 */
function togetherFrom(steps: readonly KnitStep[]): number {
  const first = steps[0];
  if (!first || Math.abs(first.stitches) < 2) return 0;
  let last = 0;
  for (let i = 1; i < steps.length && steps[i - 1]!.rows === first.rows && steps[i]!.rows >= first.rows; i++) {
    if (Math.abs(steps[i]!.stitches) >= 2) last = i;
  }
  return last + 1;
}

function singlesFrom(steps: readonly KnitStep[]): number {
  const end = steps.findIndex((step) => Math.abs(step.stitches) > 1);
  return end < 0 ? steps.length : end;
}

function togetherItem(steps: readonly KnitStep[]): { item: KnitItem; left: number } {
  const amounts = steps.map((step) => Math.abs(step.stitches));
  const out = steps[0]!.stitches > 0;
  // A single one takes a row; what follows until the next shaping is worked even.
  const every = steps.length === 1 ? Math.min(1, steps[0]!.rows) : steps[0]!.rows;
  return { item: { kind: 'together', amounts, every, out }, left: steps.at(-1)!.rows - every };
}

function singleItem(steps: readonly KnitStep[]): { item: KnitItem; left: number } {
  const rates: { every: number; times: number }[] = [];
  for (const { rows } of steps) {
    const last = rates.at(-1);
    if (last?.every === rows) last.times += 1;
    else rates.push({ every: rows, times: 1 });
  }
  const out = steps[0]!.stitches > 0;
  const last = rates.at(-1)!;
  const before = rates.at(-2);
  // The rows after the last one are no interval: nothing follows at their end.
  if (last.times === 1 && (!before || before.every < last.every)) {
    const every = before?.every ?? Math.min(1, last.every);
    if (before) {
      before.times += 1;
      rates.pop();
    } else last.every = every;
    return { item: { kind: 'single', rates, out }, left: steps.at(-1)!.rows - every };
  }
  return { item: { kind: 'single', rates, out }, left: 0 };
}
