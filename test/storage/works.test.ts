import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { readText, Works, workOf, type KeptWork } from '../../src/storage';
import { readSample, SAMPLES } from '../samples/sample';
import { freshDatabase, refuseWrites } from './browser';

const pullover = readSample('pullover').design;
const vest = readSample('vest').design;

let works: Works;
beforeEach(() => {
  freshDatabase();
  works = new Works();
});

const work = (id: string, fields: Partial<KeptWork> = {}): KeptWork => ({
  ...workOf(id, pullover, true, 1, 0),
  ...fields,
});
const changed = (name: string) => workOf('', { ...pullover, name }, true, 1, 0).text;

describe('what is kept', () => {
  it.each(SAMPLES)('comes back as it was: %s', async (name) => {
    const { design } = readSample(name);
    expect(await works.write(workOf('a', design, true, 7, 0))).toEqual({ ok: true, revision: 1 });
    const kept = await works.get('a');
    expect(kept).toMatchObject({ id: 'a', name: design.name, at: 7, own: true, revision: 1 });
    const opened = await readText(kept!.text);
    expect(opened).toMatchObject({ ok: true, result: { design } });
  });

  it('is one record for each work, listed the latest first', async () => {
    await works.write(work('a', { at: 1 }));
    await works.write(work('b', { at: 3 }));
    await works.write(work('c', { at: 2 }));
    await works.write(work('a', { at: 4, revision: 1 }));
    expect((await works.list()).map(({ id }) => id)).toEqual(['a', 'b', 'c']);
  });

  it('is none under an id that was never written', async () => {
    expect(await works.get('a')).toBeNull();
    expect(await works.remove('a')).toBeNull();
    expect(await works.list()).toEqual([]);
  });

  it('of untouched samples is only the latest few and the one just written; own work never gives way', async () => {
    for (let at = 1; at <= 20; at++) await works.write(work(`own-${at}`, { at }));
    for (let at = 21; at <= 40; at++) await works.write(work(`sample-${at}`, { at, own: false }));
    await works.write(work('late', { at: 0, own: false }));
    const list = await works.list();
    expect(list.filter(({ own }) => own)).toHaveLength(20);
    expect(list.filter(({ own }) => !own).map(({ at }) => at)).toEqual([40, 39, 38, 37, 36, 35, 0]);
  });

  it('is there for another page of the same browser, and after the page was closed', async () => {
    await works.write(work('a'));
    expect(await new Works().get('a')).toMatchObject({ id: 'a' });
    await works.close();
    expect(await works.get('a')).toMatchObject({ id: 'a' });
  });
});

describe('a writing', () => {
  it('counts on from what it was made from', async () => {
    for (const revision of [0, 1, 2]) {
      expect(await works.write(work('a', { revision, text: changed(`${revision}`) }))).toEqual({
        ok: true,
        revision: revision + 1,
      });
    }
  });

  it('never writes over a newer one, and hands that over', async () => {
    await works.write(work('a'));
    await works.write(work('a', { revision: 1, text: changed('first') }));
    const outcome = await works.write(work('a', { revision: 1, text: changed('second') }));
    expect(outcome).toMatchObject({ ok: false, newer: { revision: 2, text: changed('first') } });
    expect(await works.get('a')).toMatchObject({ revision: 2, text: changed('first') });
  });

  it('that says the same as the newer one is done already', async () => {
    await works.write(work('a'));
    await works.write(work('a', { revision: 1, text: changed('same') }));
    expect(await works.write(work('a', { revision: 1, text: changed('same') }))).toEqual({ ok: true, revision: 2 });
  });

  it('of one of two pages at once is refused, whichever comes second', async () => {
    await works.write(work('a'));
    const outcomes = await Promise.all(
      ['first', 'second'].map((name) => new Works().write(work('a', { revision: 1, text: changed(name) }))),
    );
    expect(outcomes.map(({ ok }) => ok).sort()).toEqual([false, true]);
  });

  it('keeps again what was taken away meanwhile', async () => {
    await works.write(work('a'));
    const removed = await works.remove('a');
    expect(removed).toMatchObject({ id: 'a', revision: 1 });
    expect(await works.get('a')).toBeNull();
    expect(await works.write(removed!)).toEqual({ ok: true, revision: 2 });
    expect(await works.get('a')).toMatchObject({ text: removed!.text });
  });
});

describe('a database', () => {
  it.each(['QuotaExceededError', 'UnknownError'])(
    'that refuses with %s says so and keeps what it had',
    async (name) => {
      const unhandled = vi.fn();
      process.on('unhandledRejection', unhandled);
      await works.write(work('a'));
      const end = refuseWrites(name);
      const writing = works.write(workOf('a', vest, true, 2, 1));
      await expect(writing).rejects.toMatchObject({ name });
      await expect(writing).rejects.toThrow(DOMException);
      end();
      expect(await works.get('a')).toMatchObject({ revision: 1, name: pullover.name });
      expect(await works.write(workOf('a', vest, true, 2, 1))).toEqual({ ok: true, revision: 2 });
      await new Promise((resolve) => setTimeout(resolve, 10));
      process.off('unhandledRejection', unhandled);
      expect(unhandled).not.toHaveBeenCalled();
    },
  );

  it('that can not be opened says so, and is opened when it can be again', async () => {
    const { open } = indexedDB;
    indexedDB.open = () => {
      throw new DOMException('shut', 'SecurityError');
    };
    await expect(works.list()).rejects.toThrow(DOMException);
    indexedDB.open = open;
    expect(await works.list()).toEqual([]);
  });

  it('gives way to a newer page', async () => {
    await works.write(work('a'));
    const upgraded = new Promise<string[]>((resolve, reject) => {
      const request = indexedDB.open('edgewise', 2);
      request.onsuccess = () => resolve([...request.result.objectStoreNames]);
      request.onblocked = () => reject(new Error('blocked'));
    });
    expect(await upgraded).toEqual(['works']);
    await expect(works.list()).rejects.toMatchObject({ name: 'VersionError' });
  });
});
