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
export const pageOf = <Row>(
  rows: readonly Row[],
  size: number,
  order: Order,
  keyOfRow: (row: Row) => SortKey,
  hasPreviousPage: boolean,
  totalCount: number,
): Page<Row> =>
  new ReadPage(rows.slice(0, size), rows.length > size, hasPreviousPage, totalCount, (row) =>
    cursorOf(order, keyOfRow(row)),
  );

/**
 * Cursors are made when they are asked for: most readers want the nodes alone. A class, because an
 * object with getters of its own takes a shape of its own, which keeps its rows from being cleared
 * away with the request.
 */
class ReadPage<Row> implements Page<Row> {
  constructor(
    readonly nodes: Row[],
    private readonly hasNextPage: boolean,
    private readonly hasPreviousPage: boolean,
    readonly totalCount: number,
    private readonly cursor: (row: Row) => string,
  ) {}

  get edges(): Page<Row>['edges'] {
    return this.nodes.map((node) => ({ node, cursor: this.cursor(node) }));
  }

  get pageInfo(): PageInfo {
    const [first, last] = [this.nodes[0], this.nodes.at(-1)];
    return {
      hasNextPage: this.hasNextPage,
      hasPreviousPage: this.hasPreviousPage,
      startCursor: first === undefined ? null : this.cursor(first),
      endCursor: last === undefined ? null : this.cursor(last),
    };
  }
}
