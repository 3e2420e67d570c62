/** The words of a pick-up's run of edges: what it goes along, in which order and direction, and how to change that. */
import type { MeasuredEdge } from '../shaping';
import type { Pickup, Units } from '../piece';
import { shownName } from './edgeName';
import { drawnEdgeSize } from './drawing';
import { lengthText, plainNumber } from './numbers';
import { counted } from './words';

export const RUN = {
  name: 'Name of the pick-up',
  worked: 'Worked',
  round: 'in the round',
  flat: 'flat, in rows',
  order: 'In working order',
  more: 'More',
  earlier: 'Earlier',
  later: 'Later',
  startHere: 'Start here',
  otherWay: 'The other way',
  remove: 'Take out',
  from: 'From',
  to: 'to',
  partHelp: 'Of the edge as it is worked, in % or as a length.',
  turnRound: 'Work it the other way round',
  add: 'Add to it',
  edge: 'An edge',
  addEdge: 'Add',
  noneLeft: 'every edge is in it',
  piece: 'On the piece',
  between: 'From here',
  until: 'to there',
  addBetween: 'Add them',
  pickBetween: 'Pick up along them',
  pickEdge: 'Pick up along it',
  another: 'Another pick-up',
  newPickup: 'New pick-up',
  duplicate: 'Duplicate',
  removePickup: 'Remove pick-up',
  cancel: 'Leave it',
  teach:
    'A pick-up runs along one edge or several, in the order in which they are worked: a neckband round the neck, a band up the front, a border all round.',
  teachWay:
    'With the right side facing, a right-handed knitter goes along the outline counterclockwise, so name the first edge and the last one that way round.',
  teachWayLeft:
    'With the right side facing, a left-handed knitter goes along the outline clockwise, so name the first edge and the last one that way round.',
} as const;

/** A label for those who don't see the line that a control stands in: `More: Front, left neck`. */
export function ofTitle(label: string, title: string): string {
  return `${label}: ${title}`;
}

/** `All round Front`. */
export function allRoundText(piece: string): string {
  return `All round ${piece}`;
}

/** Beside it where a run is there already: it takes its place. */
export function allRoundInsteadText(piece: string): string {
  return `All round ${piece} instead`;
}

/** `9 sts × 14 rows, 6.5 cm`; with the part where it is not the whole edge. */
export function stretchSize(edge: MeasuredEdge, part: readonly [number, number], units: Units): string {
  const size = drawnEdgeSize(edge.stitches, edge.rows);
  const whole = part[0] === 0 && part[1] === 1;
  const length = edge.hasGauge ? `, ${lengthText(edge.edgeMm * (part[1] - part[0]), units)}` : '';
  return whole ? `${size}${length}` : `${partText(part)} of ${size}${length}`;
}

/** `25% to 100%`, as shares of an edge in working order. */
export function partText([from, to]: readonly [number, number]): string {
  return `${percent(from)}% to ${percent(to)}%`;
}

/** A share of an edge as a field shows it: `33.33`. */
export function percent(share: number): string {
  return plainNumber(share * 100, 2);
}

/** A place along an edge that is no place between the others. */
export function partRefused(least: number, most: number, kept: string): string {
  return `A place between ${percent(least)}% and ${percent(most)}% of the edge is needed, so ${kept}% stays.`;
}

export function partUnread(typed: string, kept: string): string {
  return `“${typed.trim()}” is neither a percentage nor a length, so ${kept}% stays.`;
}

export function partNoGauge(typed: string, kept: string): string {
  return `“${typed.trim()}” is a length, and this piece has none without a gauge: give a percentage. Until then ${kept}% stays.`;
}

/** The gist of the run, beside its closed panel: `8 edges, in the round`. */
export function runGist({ along, joined }: Pick<Pickup, 'along' | 'joined'>): string {
  return `${counted(along.length, 'edge')}, ${joined ? RUN.round : RUN.flat}`;
}

/** The name that a new pick-up gets unless it is given another: `Pick-up 3`. */
export function newPickupName(count: number): string {
  return count === 0 ? 'Pick-up' : `Pick-up ${count + 1}`;
}

/** The name of a copy: `Neckband, copy`. */
export function copiedName(name: string): string {
  return `${shownName(name)}, copy`;
}

/** What a screen reader hears of what was done. */
export const RUN_SAID = {
  moved: (title: string, place: number, of: number) => `${title} is now ${place} of ${of}.`,
  turned: (title: string, way: string) => `${title} is now worked ${way}.`,
  start: (title: string) => `It now starts with ${title}.`,
  takenOut: (title: string) => `${title} was taken out.`,
  part: (title: string, part: readonly [number, number]) => `${title}: ${partText(part)}.`,
  along: (pickup: Pick<Pickup, 'name' | 'along'>) =>
    `${shownName(pickup.name)} now runs along ${counted(pickup.along.length, 'edge')}.`,
  round: 'The whole run is now worked the other way round.',
  named: (name: string) => `It is now called ${shownName(name)}.`,
  joined: (joined: boolean) => `It is now worked ${joined ? RUN.round : RUN.flat}.`,
  added: (name: string) => `${shownName(name)} was added.`,
  removed: (name: string) => `${shownName(name)} was removed.`,
} as const;

/** Why something could not be done to a run. */
export const RUN_REFUSED = {
  last: 'A pick-up needs one edge at least: add another one first, or remove the pick-up.',
  noName: 'A pick-up needs a name, so the old one stays.',
  taken: 'These edges are in it already, so nothing was added.',
} as const;
