import { IDBFactory } from 'fake-indexeddb';

/** A fresh browser database for the test that follows. */
export function freshDatabase(): void {
  globalThis.indexedDB = new IDBFactory();
}

/** Lets the database refuse to write until the result is called. */
export function refuseWrites(name: string): () => void {
  const { prototype } = IDBObjectStore;
  const put = prototype.put;
  prototype.put = () => {
    throw new DOMException('refused', name);
  };
  return () => (prototype.put = put);
}
