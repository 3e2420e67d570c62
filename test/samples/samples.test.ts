import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDesign, writeDesign } from '../../src/piece';
import { planSample, readSample, sampleFile, SAMPLES, samplesFolder } from './sample';

/** What each sample is there to show: its pick-ups, with what is picked up and the sections. */
const SHOWS = {
  blanket: { border: { picked: 496, sections: [56, 56, 136, 56, 56, 136] } },
  'cardigan-front': { 'front-band': { picked: 114, sections: [19, 19, 19, 19, 19, 19] } },
  'heel-flap': { 'first-gusset': { picked: 16, sections: [] }, 'second-gusset': { picked: 16, sections: [] } },
  pullover: { neckband: { picked: 84, sections: [14, 14, 14, 14, 14, 14] } },
  strip: { band: { picked: 71, sections: [18, 18, 17, 18] } },
  vest: {
    neckband: { picked: 106, sections: [39, 39, 5, 9, 9, 5] },
    'armhole-band-left': { picked: 88, sections: [22, 22, 22, 22] },
    'armhole-band-right': { picked: 88, sections: [22, 22, 22, 22] },
  },
} as const;

/** Notes that a sample is meant to have; every other sample has none. */
const NOTES: Partial<Record<(typeof SAMPLES)[number], string[]>> = {
  // 71 stitches over four sections leave three over: 18, 18, 17, 18.
  strip: ['sections-cannot-mirror'],
};

it('has a stated expectation for every file in the folder', () => {
  expect(readdirSync(samplesFolder).sort()).toEqual(SAMPLES.map((name) => `${name}.edgewise.json`));
  expect(Object.keys(SHOWS).sort()).toEqual([...SAMPLES]);
});

describe.each(SAMPLES)('%s', (name) => {
  it('is read without a notice', () => {
    expect(readSample(name).notices).toEqual([]);
  });

  it('comes back the same from a file', () => {
    const { design } = readSample(name);
    const again = readDesign(writeDesign(design));
    expect(again.notices).toEqual([]);
    expect(again.design).toEqual(design);
    expect(writeDesign(again.design)).toBe(writeDesign(design));
  });

  it('says what it is in its name', () => {
    const { design } = readSample(name);
    expect(design.name.length).toBeGreaterThan(3);
    for (const { name: of } of [...design.pieces, ...design.pickups]) expect(of).toMatch(/^[A-Z]/);
  });

  it('is written as a tidy file', () => {
    const text = readFileSync(sampleFile(name), 'utf8');
    expect(text.endsWith('}\n')).toBe(true);
    expect(text.split('\n').filter((line) => line.length > 120 || /\s$/.test(line))).toEqual([]);
  });

  it('is planned as stated', () => {
    const shown = planSample(name).pickups.map(({ pickup, picked, sections }) => [
      pickup.id,
      { picked, sections: sections.map(({ count }) => count) },
    ]);
    expect(Object.fromEntries(shown)).toEqual(SHOWS[name]);
  });

  it('has no note but the ones it is meant to have', () => {
    const kinds = planSample(name).pickups.flatMap(({ notes }) => notes.map(({ kind }) => kind));
    expect(kinds).toEqual(NOTES[name] ?? []);
  });

  it('needs no first row, and its total fits the band', () => {
    for (const { pickup, picked, target, firstRow } of planSample(name).pickups) {
      expect(picked).toBe(target);
      expect(firstRow.groups).toEqual([]);
      expect((target - pickup.band.plus) % pickup.band.multiple).toBe(0);
    }
  });

  it('picks up close to what its edges want', () => {
    for (const { wanted, target } of planSample(name).pickups) {
      expect(Math.abs(target / wanted - 1)).toBeLessThan(0.0125);
    }
  });

  it('starts and ends every edge with a pick', () => {
    for (const { edges, points } of planSample(name).pickups) {
      for (const { firstPoint, pointsEnd } of edges) {
        expect(points[firstPoint]?.n).not.toBeNull();
        expect(points[pointsEnd - 1]?.n).not.toBeNull();
      }
    }
  });
});
