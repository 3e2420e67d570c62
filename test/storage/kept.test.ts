import { beforeEach, describe, expect, it } from 'vitest';
import { Kept } from '../../src/storage';
import { readSample, SAMPLES } from '../samples/sample';
import { MemoryStore } from './store';

const pullover = readSample('pullover').design;
const vest = readSample('vest').design;

let store: MemoryStore;
let tab: MemoryStore;
let kept: Kept;

beforeEach(() => {
  store = new MemoryStore();
  tab = new MemoryStore();
  kept = new Kept(store, tab);
});

/** Another tab of the same browser. */
const anotherTab = () => new Kept(store, new MemoryStore());

describe('what is kept', () => {
  it.each(SAMPLES)('comes back as it was: %s', async (name) => {
    const { design } = readSample(name);
    kept.keep('a', design, true, 1);
    expect(await kept.read('a')).toEqual(design);
  });

  it('is the last of its name only', async () => {
    kept.keep('a', pullover, true, 1);
    kept.keep('a', { ...pullover, name: 'Changed' }, true, 2);
    expect((await kept.read('a'))?.name).toBe('Changed');
    expect(kept.list()).toHaveLength(1);
  });

  it('is listed the latest first, with its name, time and owner', () => {
    kept.keep('a', pullover, false, 1);
    kept.keep('b', vest, true, 2);
    expect(kept.list()).toEqual([
      { id: 'b', name: vest.name, at: 2, own: true },
      { id: 'a', name: pullover.name, at: 1, own: false },
    ]);
  });

  it('of untouched samples is only the latest few; what a knitter made never gives way', () => {
    for (let at = 1; at <= 20; at++) kept.keep(`own-${at}`, pullover, true, at);
    for (let at = 21; at <= 40; at++) kept.keep(`sample-${at}`, vest, false, at);
    const list = kept.list();
    expect(list.filter(({ own }) => own)).toHaveLength(20);
    const samples = list.filter(({ own }) => !own).map(({ at }) => at);
    expect(samples).toEqual([40, 39, 38, 37, 36, 35, 34]);
  });

  it('never gives way to itself, even where its clock is behind', async () => {
    for (let at = 1; at <= 12; at++) kept.keep(`sample-${at}`, pullover, false, 100 + at);
    kept.keep('late', vest, false, 1);
    expect(await kept.read('late')).toEqual(vest);
  });
});

describe('the work to go on with', () => {
  it('is none on a first visit', () => {
    expect(kept.last()).toBeNull();
  });

  it("is this tab's own, whatever another tab did since", async () => {
    kept.keep('mine', pullover, true, 1);
    anotherTab().keep('theirs', vest, true, 2);
    expect(kept.last()).toBe('mine');
    expect(await kept.read('mine')).toEqual(pullover);
  });

  it('is the latest of all in a new tab, and where the own one is gone', () => {
    kept.keep('mine', pullover, true, 1);
    anotherTab().keep('theirs', vest, true, 2);
    expect(anotherTab().last()).toBe('theirs');
    store.removeItem('edgewise.work.mine');
    expect(kept.last()).toBe('theirs');
  });
});

describe('a store', () => {
  it('that holds what is no work of ours is read past', async () => {
    store.setItem('edgewise.work.a', 'not JSON');
    store.setItem('edgewise.work.b', '{"at": "yesterday"}');
    store.setItem('edgewise.work.c', JSON.stringify({ id: 'c', name: 'C', at: 3, own: true, text: '{"format": 1}' }));
    store.setItem('another.page', 'its own');
    expect(kept.list().map(({ id }) => id)).toEqual(['c']);
    expect(await kept.read('a')).toBeNull();
    expect(await kept.read('c')).toBeNull();
    kept.keep('d', pullover, true, 4);
    expect(store.getItem('another.page')).toBe('its own');
  });

  it('that is full says so and keeps what it had', async () => {
    kept.keep('a', pullover, true, 1);
    store.full = true;
    expect(() => kept.keep('a', vest, true, 2)).toThrow(DOMException);
    expect(await kept.read('a')).toEqual(pullover);
  });

  it('that is shut says so', async () => {
    store.shut = true;
    expect(() => kept.last()).toThrow(DOMException);
    await expect(kept.read('a')).rejects.toThrow(DOMException);
  });
});
