import type { Edge, Finish, Selvage } from '../../piece';
import { baseOf, withPathOf } from './paths';

/** What of an edge can be set as a whole; undefined takes a field away. */
export interface EdgeFields {
  readonly name?: string | undefined;
  readonly finish?: Finish | undefined;
  readonly selvage?: Selvage | undefined;
}

/** The edge with these fields; one that is set to undefined is gone, so that the file says nothing of it. */
export function withEdgeFields(edge: Edge, fields: EdgeFields): Edge {
  const { name, finish, selvage, ...rest } = { ...baseOf(edge), ...fields };
  const said = {
    ...rest,
    ...(name === undefined ? {} : { name }),
    ...(finish === undefined ? {} : { finish }),
    ...(selvage === undefined ? {} : { selvage }),
  };
  return withPathOf({ ...said, path: 'straight' }, edge);
}
