import { DesignError } from './problems';

/** The version this program writes, and the latest it can read. */
export const VERSION = 1;

export type JsonObject = Readonly<Record<string, unknown>>;

/** Turns a document of one version into one of the next; must not change what it is given. */
export type Migration = (document: JsonObject) => JsonObject;

/** From each version to the one after it. A document of version 1 needs none. */
const MIGRATIONS: ReadonlyMap<number, Migration> = new Map();

/**
 * Brings a document of any earlier version up to `newest`, one version at a time.
 * @throws DesignError when the version is missing, not a version, or later than `newest`.
 */
export function migrate(
  document: JsonObject,
  migrations: ReadonlyMap<number, Migration> = MIGRATIONS,
  newest: number = VERSION,
): { document: JsonObject; from: number } {
  const found = document.version;
  const at = 'version';
  if (found === undefined) throw new DesignError({ kind: 'no-version', at, newest });
  if (typeof found !== 'number' || !Number.isSafeInteger(found) || found < 1) {
    throw new DesignError({ kind: 'bad-version', at, found, newest });
  }
  if (found > newest) throw new DesignError({ kind: 'future-version', at, found, newest });
  let current = document;
  for (let version = found; version < newest; version++) {
    const step = migrations.get(version);
    if (!step) throw new DesignError({ kind: 'bad-version', at, found, newest });
    current = { ...step(current), version: version + 1 };
  }
  return { document: current, from: found };
}
