import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { moveIn, Waiting, workOf, Works } from '../../src/storage';
import { readSample } from '../samples/sample';
import { freshDatabase, refuseWrites } from './browser';
import { MemoryStore } from './store';

const pullover = readSample('pullover').design;
const vest = readSample('vest').design;

let waiting: Waiting;
let works: Works;
beforeEach(() => {
  freshDatabase();
  const store = new MemoryStore();
  waiting = new Waiting(() => store);
  works = new Works();
});

describe('moving in', () => {
  it('takes all that was kept before there was a database, once', async () => {
    waiting.add(workOf('a', pullover, true, 1, 0));
    waiting.add(workOf('b', vest, false, 2, 0));
    expect(await moveIn(waiting, works)).toBe(0);
    expect(await works.list()).toMatchObject([
      { id: 'b', name: vest.name, own: false, at: 2 },
      { id: 'a', name: pullover.name, own: true, at: 1 },
    ]);
    expect(waiting.list()).toEqual([]);
    expect(await moveIn(waiting, works)).toBe(0);
    expect(await works.list()).toHaveLength(2);
  });

  it('writes the last changes of a page that was left over what they were made from', async () => {
    await works.write(workOf('a', pullover, true, 1, 0));
    waiting.add(workOf('a', vest, true, 2, 1));
    await moveIn(waiting, works);
    expect(await works.list()).toMatchObject([{ id: 'a', revision: 2, name: vest.name }]);
  });

  it('changes nothing where they were written after all', async () => {
    await works.write(workOf('a', pullover, true, 1, 0));
    await works.write(workOf('a', vest, true, 2, 1));
    waiting.add(workOf('a', vest, true, 2, 1));
    expect(await moveIn(waiting, works)).toBe(0);
    expect(await works.list()).toMatchObject([{ id: 'a', revision: 2 }]);
    expect(waiting.list()).toEqual([]);
  });

  it('keeps both where the work was changed elsewhere since', async () => {
    await works.write(workOf('a', pullover, true, 1, 0));
    await works.write(workOf('a', { ...pullover, name: 'Elsewhere' }, true, 2, 1));
    waiting.add(workOf('a', { ...pullover, name: 'Here' }, true, 3, 1));
    expect(await moveIn(waiting, works)).toBe(1);
    expect((await works.list()).map(({ name }) => name)).toEqual(['Here', 'Elsewhere']);
    expect(await works.get('a')).toMatchObject({ name: 'Elsewhere', revision: 2 });
    expect(waiting.list()).toEqual([]);
  });

  it('keeps no second one of a sample that nobody changed', async () => {
    await works.write(workOf('a', pullover, false, 1, 0));
    await works.write(workOf('a', vest, true, 2, 1));
    waiting.add(workOf('a', pullover, false, 3, 1));
    waiting.add(workOf('a', pullover, false, 3, 0));
    expect(await moveIn(waiting, works)).toBe(0);
    expect(await works.list()).toMatchObject([{ name: vest.name }]);
  });

  it('loses nothing where the database refuses', async () => {
    const work = workOf('a', pullover, true, 1, 0);
    waiting.add(work);
    const end = refuseWrites('QuotaExceededError');
    await expect(moveIn(waiting, works)).rejects.toThrow(DOMException);
    end();
    expect(waiting.list()).toEqual([work]);
    await moveIn(waiting, works);
    expect(await works.list()).toHaveLength(1);
  });
});
