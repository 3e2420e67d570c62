import { describe, expect, it } from 'vitest';
import { VERSION } from '../../src/piece';
import { migrate, type JsonObject, type Migration } from '../../src/piece/migrate';

/** Two inventions: version 2 renames a field, version 3 counts in another unit. */
const MIGRATIONS = new Map<number, Migration>([
  [1, ({ title, ...rest }) => ({ ...rest, name: title })],
  [2, (document) => ({ ...document, mm: Number(document.cm) * 10 })],
]);

describe('migrate', () => {
  it('leaves a document of the newest version as it is', () => {
    const document = { format: 'edgewise', version: VERSION, pieces: [] };
    const result = migrate(document);
    expect(result.document).toBe(document);
    expect(result.from).toBe(1);
  });

  it('goes from version to version, and changes nothing it was given', () => {
    const old: JsonObject = Object.freeze({ version: 1, title: 'Hat', cm: 4, note: 'kept' });
    const result = migrate(old, MIGRATIONS, 3);
    expect(result).toEqual({ from: 1, document: { version: 3, name: 'Hat', cm: 4, mm: 40, note: 'kept' } });
    expect(migrate({ version: 2, cm: 1 }, MIGRATIONS, 3)).toEqual({ from: 2, document: { version: 3, cm: 1, mm: 10 } });
  });

  it.each([
    [{}, 'no-version'],
    [{ version: null }, 'bad-version'],
    [{ version: '1' }, 'bad-version'],
    [{ version: 0 }, 'bad-version'],
    [{ version: 1.5 }, 'bad-version'],
    [{ version: 4 }, 'future-version'],
  ])('refuses %o', (document, kind) => {
    expect(() => migrate(document, MIGRATIONS, 3)).toThrow(kind);
  });

  it('refuses a version that no step leads on from', () => {
    expect(() => migrate({ version: 1 }, new Map(), 2)).toThrow('bad-version');
  });
});
