import type { CloseUpKind } from '../../text';
import type { DrawnElement } from '../../renderer';
import { boundOff, castOnEdge, live, provisional, step } from './kinds/level';
import { garter, selvage, slipped, slope } from './kinds/sides';
import { paint } from './paint';
import { HEIGHT, mirrored, WIDTH, type Scene } from './scene';
import { drawLabel, drawMark } from './sign';
import { stack } from './stack';

/** A drawing of one kind of opening, in mm, y down. */
export interface CloseUp {
  readonly kind: CloseUpKind;
  readonly width: number;
  readonly height: number;
  readonly elements: readonly DrawnElement[];
}

const SCENES: Readonly<Record<CloseUpKind, () => Scene>> = {
  'bound-off': boundOff,
  'cast-on': castOnEdge,
  provisional,
  live,
  selvage: () => selvage(1),
  'selvage-half': () => selvage(0.5),
  'selvage-strand': () => selvage(0),
  slope,
  'garter-bump': () => garter('bump'),
  'garter-between': () => garter('between'),
  'garter-hollow': () => garter('hollow'),
  chain: () => slipped('chain'),
  'chain-gap': () => slipped('gap'),
  step: () => step(false),
  'step-hole': () => step(true),
};

/** What a close-up shows, before it is drawn. */
export function sceneOf(kind: CloseUpKind, hand: 'right' | 'left'): Scene {
  const scene = SCENES[kind]();
  return hand === 'right' ? scene : mirrored(scene);
}

/**
 * A close-up of where the needle goes: fabric as it is held, the edge on top and the right side facing, the needle from
 * the hand that works. All close-ups have one size.
 */
export function drawCloseUp(kind: CloseUpKind, hand: 'right' | 'left'): CloseUp {
  const key = `${kind} ${hand}`;
  const known = drawn.get(key) ?? newCloseUp(kind, hand);
  drawn.set(key, known);
  return known;
}

/** They are always the same, so each is drawn once. */
const drawn = new Map<string, CloseUp>();

function newCloseUp(kind: CloseUpKind, hand: 'right' | 'left'): CloseUp {
  const { strands, marks, labels } = sceneOf(kind, hand);
  const group = (children: DrawnElement[]): DrawnElement => ({ name: 'g', attributes: { fill: 'none' }, children });
  const elements = [
    group(stack(strands).flatMap((layer) => paint(layer, strands))),
    group(marks.flatMap(drawMark)),
    group(labels.flatMap(drawLabel)),
  ];
  return { kind, width: WIDTH, height: HEIGHT, elements };
}
