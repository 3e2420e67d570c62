import type { Design } from '../piece';
import { writeDesign } from '../piece';

/** One design as the browser keeps it between visits: one record of the database. */
export interface KeptWork {
  readonly id: string;
  readonly name: string;
  /** When it was last changed, ms since 1970. */
  readonly at: number;
  /** Whether the knitter changed or opened it; an untouched sample is not worth a list. */
  readonly own: boolean;
  /** The design, written as a design file. */
  readonly text: string;
  /** Counts the writings, from 1, so that nobody writes over what he has not seen; 0 for what was never written. */
  readonly revision: number;
}

/** A design as it is to be kept. */
export function workOf(id: string, design: Design, own: boolean, at: number, revision: number): KeptWork {
  return { id, name: design.name, at, own, text: writeDesign(design), revision };
}

/** Whether something out of a store is a work that can be kept. */
export function isWork(value: unknown): value is Omit<KeptWork, 'id' | 'revision'> & { readonly revision?: unknown } {
  if (typeof value !== 'object' || value === null) return false;
  const { name, at, own, text } = value as Partial<Record<keyof KeptWork, unknown>>;
  return typeof name === 'string' && typeof at === 'number' && typeof own === 'boolean' && typeof text === 'string';
}
