import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { Writer } from '../../src/app/writer';
import { Waiting, Works } from '../../src/storage';
import { readSample } from '../samples/sample';
import { freshDatabase, refuseWrites } from '../storage/browser';

const pullover = readSample('pullover').design;
const renamed = (name: string) => ({ ...pullover, name });

let writer: Writer;
beforeEach(() => {
  freshDatabase();
  localStorage.clear();
  writer = new Writer(() => true);
});

const kept = async (id: string) => await new Works().get(id);

describe('the writer', () => {
  it('writes what was set, once, and the last of it', async () => {
    writer.set('a', pullover);
    writer.set('a', renamed('Later'));
    writer.set('b', pullover);
    expect(await writer.writeAll()).toEqual({ written: ['a', 'b'], newer: [] });
    expect(await kept('a')).toMatchObject({ name: 'Later', revision: 1 });
    expect(writer.isDone).toBe(true);
    expect(await writer.writeAll()).toEqual({ written: [], newer: [] });
  });

  it('has nothing to write of what is kept already', async () => {
    writer.set('a', pullover);
    await writer.writeAll();
    writer.set('a', pullover);
    expect(writer.isDone).toBe(true);
    writer.set('a', { ...pullover });
    expect(await writer.writeAll()).toEqual({ written: [], newer: [] });
    expect(await kept('a')).toMatchObject({ revision: 1 });
  });

  it('does not forget what was set while it wrote', async () => {
    writer.set('a', pullover);
    const writing = writer.writeAll();
    writer.set('a', renamed('Meanwhile'));
    await writing;
    expect(writer.get('a')).toEqual(renamed('Meanwhile'));
    await writer.writeAll();
    expect(await kept('a')).toMatchObject({ name: 'Meanwhile', revision: 2 });
  });

  it('hands back what met something newer, and leaves that alone', async () => {
    const other = new Writer(() => true);
    writer.set('a', pullover);
    await writer.writeAll();
    other.know((await kept('a'))!, pullover);
    other.set('a', renamed('Theirs'));
    await other.writeAll();
    writer.set('a', renamed('Mine'));
    expect(await writer.writeAll()).toEqual({ written: [], newer: [{ id: 'a', design: renamed('Mine') }] });
    expect(await kept('a')).toMatchObject({ name: 'Theirs' });
  });

  it.each([
    ['QuotaExceededError', 'full'],
    ['UnknownError', 'refused'],
  ] as const)('says why nothing is kept (%s), and tries again when it is asked to', async (name, why) => {
    writer.set('a', pullover);
    const end = refuseWrites(name);
    expect(await writer.writeAll()).toEqual({ written: [], newer: [] });
    expect(writer.refusal).toBe(why);
    expect(writer.isDone).toBe(false);
    end();
    await writer.writeAll();
    expect(writer.refusal).toBeNull();
    expect(await kept('a')).toMatchObject({ name: pullover.name });
  });

  it('puts aside what is not written, and takes it back once it is', async () => {
    writer.set('a', pullover);
    await writer.writeAll();
    writer.set('a', renamed('Last'));
    writer.putAside();
    expect(new Waiting(() => localStorage).list()).toMatchObject([{ id: 'a', name: 'Last', revision: 1 }]);
    await writer.writeAll();
    expect(new Waiting(() => localStorage).list()).toEqual([]);
  });

  it('lets a fault of the program through', async () => {
    await expect(writer.try(() => Promise.reject(new TypeError('fault')))).rejects.toThrow(TypeError);
    expect(writer.refusal).toBeNull();
  });
});
