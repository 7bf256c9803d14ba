import { cursorOf, type SortKey } from './cursor.js';
import type { PageInfo } from './pageInfo.type.js';

/** A page as the connection types show it. */
export interface Page<Row> {
  nodes: Row[];
  edges: { cursor: string; node: Row }[];
  pageInfo: PageInfo;
  totalCount: number;
}

/**
 * @param rows up to one more than the page holds: the surplus row says that more follows.
 * @param totalCount 0 where nobody asked for it.
 */
export function pageOf<Row>(
  rows: readonly Row[],
  size: number,
  keyOfRow: (row: Row) => SortKey,
  hasPreviousPage: boolean,
  totalCount: number,
): Page<Row> {
  const nodes = rows.slice(0, size);
  const edges = nodes.map((node) => ({ node, cursor: cursorOf(keyOfRow(node)) }));
  return {
    nodes,
    edges,
    totalCount,
    pageInfo: {
      hasNextPage: rows.length > size,
      hasPreviousPage,
      startCursor: edges[0]?.cursor ?? null,
      endCursor: edges.at(-1)?.cursor ?? null,
    },
  };
}
