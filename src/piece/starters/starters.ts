import type { Gauge } from '../../units';
import type { Measure, MeasureKey, Starter, StarterKind } from './kinds';

const mm = (key: MeasureKey, usual: number, least: number, most: number): Measure => ({
  key,
  unit: 'mm',
  usual,
  least,
  most,
});

const count = (key: 'stitches' | 'rows', usual: number, least: number, most: number): Measure => ({
  key,
  unit: key,
  usual,
  least,
  most,
});

const STOCKINETTE: Gauge = { stitches: 22, rows: 30, over: 100 };
/** A ridge, two rows, as high as a stitch is wide. */
const GARTER: Gauge = { stitches: 18, rows: 36, over: 100 };
/** Heel stitch, every second stitch slipped: a slipped chain, two rows, as high as a stitch is wide. */
const HEEL: Gauge = { stitches: 32, rows: 64, over: 100 };

const LENGTH = mm('length', 350, 40, 900);
const ARMHOLE = mm('armhole', 200, 60, 450);
const SHOULDER = mm('shoulder', 95, 15, 250);
const DROP = mm('shoulder-drop', 25, 0, 100);
const CHEST = mm('chest', 500, 180, 1000);
const NECK = mm('neck-width', 180, 60, 400);
const BODY = [CHEST, LENGTH, ARMHOLE, SHOULDER, NECK] as const;

const cardigan = (id: string): Starter => ({
  id,
  measures: [
    mm('front-width', 240, 90, 600),
    LENGTH,
    ARMHOLE,
    SHOULDER,
    mm('half-neck', 80, 30, 250),
    mm('neck-depth', 80, 20, 500),
    DROP,
  ],
  gauge: true,
  usualGauge: STOCKINETTE,
  fabric: 'stockinette',
});

const body = (id: string, ...more: Measure[]): Starter => ({
  id,
  measures: [...BODY, ...more],
  gauge: true,
  usualGauge: STOCKINETTE,
  fabric: 'stockinette',
});

/**
 * Every starter with what is asked for it, in the order of asking. The usual sizes are our own choice: a pullover for a
 * grown person, 100 cm round the chest.
 */
export const STARTERS: Readonly<Record<StarterKind, Starter>> = {
  strip: {
    id: 'strip',
    measures: [count('stitches', 10, 1, 400), count('rows', 88, 2, 2000)],
    gauge: false,
    usualGauge: STOCKINETTE,
    fabric: 'stockinette',
  },
  rectangle: {
    id: 'rectangle',
    measures: [mm('width', 500, 20, 2500), mm('height', 700, 20, 2500)],
    gauge: true,
    usualGauge: STOCKINETTE,
    fabric: 'stockinette',
  },
  'round-neck': body('front', mm('neck-depth', 80, 20, 500), DROP),
  'v-neck': body('front', mm('v-depth', 200, 40, 700), DROP),
  'cardigan-left': cardigan('left-front'),
  'cardigan-right': cardigan('right-front'),
  back: body('back', mm('back-neck-depth', 15, 5, 120), DROP),
  sleeve: {
    id: 'sleeve',
    measures: [
      mm('wrist', 220, 60, 600),
      mm('upper-arm', 350, 120, 700),
      mm('sleeve-length', 440, 20, 800),
      mm('cap-height', 130, 20, 300),
    ],
    gauge: true,
    usualGauge: STOCKINETTE,
    fabric: 'stockinette',
  },
  raglan: {
    id: 'front',
    measures: [CHEST, LENGTH, mm('raglan-depth', 220, 60, 500), NECK, mm('neck-depth', 60, 20, 500)],
    gauge: true,
    usualGauge: STOCKINETTE,
    fabric: 'stockinette',
  },
  'heel-flap': {
    id: 'heel-flap',
    measures: [count('stitches', 32, 4, 200), count('rows', 32, 4, 200)],
    gauge: true,
    usualGauge: HEEL,
    // Heel stitch stands in columns and draws in, as a rib does.
    fabric: 'rib',
  },
  shawl: {
    id: 'shawl',
    measures: [mm('shawl-width', 1400, 200, 2500), mm('shawl-depth', 700, 100, 1500)],
    gauge: true,
    usualGauge: GARTER,
    fabric: 'garter',
  },
  'garter-square': {
    id: 'square',
    measures: [mm('side', 300, 20, 2000)],
    gauge: true,
    usualGauge: GARTER,
    fabric: 'garter',
  },
};
