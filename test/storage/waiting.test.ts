import { beforeEach, describe, expect, it } from 'vitest';
import { Waiting, workOf } from '../../src/storage';
import { readSample } from '../samples/sample';
import { MemoryStore } from './store';

const pullover = readSample('pullover').design;
const vest = readSample('vest').design;

let store: MemoryStore;
let waiting: Waiting;
beforeEach(() => {
  store = new MemoryStore();
  waiting = new Waiting(() => store);
});

describe('a work that waits', () => {
  it('comes back as it was put there, until it is removed', () => {
    const work = workOf('a', pullover, true, 5, 3);
    expect(waiting.add(work)).toBe(true);
    expect(waiting.list()).toEqual([work]);
    waiting.remove(work);
    expect(waiting.list()).toEqual([]);
    expect(store.length).toBe(0);
  });

  it('is not removed where a later one took its place', () => {
    const first = workOf('a', pullover, true, 5, 3);
    const later = workOf('a', vest, true, 6, 3);
    waiting.add(first);
    waiting.add(later);
    waiting.remove(first);
    expect(waiting.list()).toEqual([later]);
  });

  it('of a version that had no database counts as never written', () => {
    const { revision: _, ...old } = workOf('a', pullover, true, 5, 0);
    store.setItem('edgewise.work.a', JSON.stringify(old));
    expect(waiting.list()).toEqual([{ ...old, revision: 0 }]);
  });
});

describe('a small store', () => {
  it('that holds what is no work of ours is read past and left alone', () => {
    store.setItem('edgewise.work.a', 'not JSON');
    store.setItem('edgewise.work.b', '{"at": "yesterday"}');
    store.setItem('edgewise.work.c', 'null');
    store.setItem('another.page', 'its own');
    const work = workOf('d', pullover, true, 5, 1);
    waiting.add(work);
    expect(waiting.list()).toEqual([work]);
    waiting.remove({ ...work, id: 'a' });
    expect(store.length).toBe(5);
  });

  it('that is full or shut lets nothing wait, and does not disturb', () => {
    const work = workOf('a', pullover, true, 5, 1);
    store.full = true;
    expect(waiting.add(work)).toBe(false);
    store.shut = true;
    expect(waiting.list()).toEqual([]);
    waiting.remove(work);
    const none = new Waiting(() => {
      throw new DOMException('shut', 'SecurityError');
    });
    expect(none.add(work)).toBe(false);
    expect(none.list()).toEqual([]);
  });
});
