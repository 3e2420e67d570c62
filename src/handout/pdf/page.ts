import type { DrawnElement } from '../../renderer';

/** A page as plain data: its size in mm, and what is drawn on it, in mm from its upper left corner, y down. */
export interface Page {
  readonly width: number;
  readonly height: number;
  readonly elements: readonly DrawnElement[];
}
