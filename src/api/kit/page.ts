import { cursorOf, type Order, type SortKey } from './cursor.js';
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
  order: Order,
  keyOfRow: (row: Row) => SortKey,
  hasPreviousPage: boolean,
  totalCount: number,
): Page<Row> {
  const nodes = rows.slice(0, size);
  const cursor = (node: Row): string => cursorOf(order, keyOfRow(node));
  const [first, last] = [nodes[0], nodes.at(-1)];
  // Cursors are made when they are asked for: most readers want the nodes alone.
  return {
    nodes,
    totalCount,
    get edges() {
      return nodes.map((node) => ({ node, cursor: cursor(node) }));
    },
    get pageInfo() {
      return {
        hasNextPage: rows.length > size,
        hasPreviousPage,
        startCursor: first === undefined ? null : cursor(first),
        endCursor: last === undefined ? null : cursor(last),
      };
    },
  };
}
