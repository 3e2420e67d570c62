import type { Pickup } from '../piece';
import { verdictOf } from './check';
import type { Note, PlannedEdge } from './plan';
import { mirrorableParts } from './sections';
import type { WorkedStretch } from './stretches';

/** A tape that differs from the computed length by less than this share is not worth a word. */
const TAPE_DIFFERS = 0.005;

/** Where a tape says another length than the computed one. */
export function tapeNotes(stretches: readonly WorkedStretch[], pickup: Pickup): Note[] {
  return stretches.flatMap((one): Note[] => {
    const computedMm = pickup.measure === 'join' ? one.joinMm : one.edgeMm;
    if (one.measuredMm === null || !one.measured.hasGauge) return [];
    if (Math.abs(one.measuredMm / computedMm - 1) < TAPE_DIFFERS) return [];
    const edge = { piece: one.piece.id, edge: one.measured.id };
    return [{ kind: 'measured-differs', edge, measuredMm: one.measuredMm, computedMm }];
  });
}

/** Sections that can't be what is wished. */
export function sectionNotes({ sections }: Pickup, picked: number): Note[] {
  if (!sections) return [];
  if (sections.counts === 'same') return sections.by === 'length' ? [] : [{ kind: 'same-needs-length' }];
  if (sections.by === 'landmarks') return [];
  const { parts } = sections;
  if (parts % 2 === 1 || (picked % parts) % 2 === 0) return [];
  return [{ kind: 'sections-cannot-mirror', count: picked, parts, better: mirrorableParts(picked, parts) }];
}

/** Edges whose count the knitter fixed and that will not lie flat. */
export function stretchNotes(edges: readonly PlannedEdge[], pickup: Pickup): Note[] {
  return edges.flatMap((edge): Note[] => {
    const fixed = edge.rate.kind !== 'length';
    if (!fixed || edge.changed === null || edge.wanted === null || Math.abs(edge.count - edge.wanted) <= 1) return [];
    const verdict = verdictOf(edge.changed, pickup.flat);
    if (verdict === 'lies flat') return [];
    return [
      {
        kind: 'stretched',
        edge: { piece: edge.piece.id, edge: edge.measured.id },
        stretch: edge.changed,
        verdict,
      },
    ];
  });
}
