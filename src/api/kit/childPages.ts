import { listParameter } from '../../db/dialect.js';
import type { SqlValue } from '../../db/reader.js';
import { keyOf, type Order, type SortKind } from './cursor.js';
import { pageOf } from './page.js';
import { pageSize } from './pageArgs.js';
import { grouped } from './relations.js';
import { columnsFor, type Columns } from './spareColumns.js';
import type { Relation, Row } from './typeReads.js';

interface ChildPages {
  table: string;
  /** As `selectColumns` or `spareColumns` makes them, from `table`; with `id` and the sort key. */
  columns: Columns;
  parentColumn: string;
  /** Sort column, never null, and the name that it has in the rows. */
  sortColumn: string;
  sortName: string;
  /** What sorts in place of the bare column where that may be null: COALESCE(…), never null. */
  sortExpression?: string;
  /** Text unless said otherwise. */
  sortKind?: SortKind;
  direction: 'ASC' | 'DESC';
  where?: string;
  /** What the `?` in `where` stand for. */
  whereParameters?: readonly SqlValue[];
}

/** A connection below a parent: one statement for all parents, each with a page of its own. */
export const childPages =
  (typeName: string, options: ChildPages): Relation =>
  async (context, parents, args, asked, askedOfRows) => {
    const { reader } = context.database;
    const columns = columnsFor(options.columns, askedOfRows);
    const { table, parentColumn, sortColumn, sortName, direction } = options;
    const size = pageSize(args['first']);
    const cursorOrder: Order = {
      name: `${typeName} in ${parentColumn} ${sortName} ${direction}`,
      kind: options.sortKind ?? 'text',
    };
    const after = typeof args['after'] === 'string' ? keyOf(args['after'], cursorOrder) : null;
    const ids = listParameter(parents.map((parent) => parent.id));
    const parent = `${table}.${parentColumn}`;
    const own = options.where ? ` AND ${options.where}` : '';
    const ownParameters = options.whereParameters ?? [];
    const sort = options.sortExpression ?? `${table}.${sortColumn}`;
    const order = `${sort} ${direction}, ${table}.id ${direction}`;
    const later = after
      ? ` AND (${sort}, ${table}.id) ${direction === 'ASC' ? '>' : '<'} (?, ?)`
      : '';
    const only = parents.length === 1 ? parents[0]?.id : undefined;
    // One parent needs no numbering: the engine can walk an index and stop.
    const statement =
      only === undefined
        ? `SELECT * FROM (
             SELECT ${columns}, ${parent} AS "parentId",
               ROW_NUMBER() OVER (PARTITION BY ${parent} ORDER BY ${order}) AS "place"
             FROM ${table} WHERE ${reader.dialect.isAnyOf(parent)}${own}${later}
           ) AS numbered WHERE "place" <= ? ORDER BY "parentId", "place"`
        : `SELECT ${columns}, ${parent} AS "parentId" FROM ${table}
           WHERE ${parent} = ?${own}${later} ORDER BY ${order} LIMIT ?`;
    const children = await reader.rows<Row>(statement, [
      only ?? ids,
      ...ownParameters,
      ...(after ?? []),
      size + 1,
    ]);
    const totals = new Map<unknown, number>();
    if (asked.has('totalCount')) {
      const counts = await reader.rows<{ parentId: string; total: number }>(
        `SELECT ${parent} AS "parentId", COUNT(*) AS total FROM ${table}
         WHERE ${reader.dialect.isAnyOf(parent)}${own} GROUP BY ${parent}`,
        [ids, ...ownParameters],
      );
      for (const { parentId, total } of counts) totals.set(parentId, total);
    }
    const pages = grouped(parents, children).map((rows, index) =>
      pageOf(
        rows,
        size,
        cursorOrder,
        (row) => [row[sortName] as string, row.id],
        after !== null,
        totals.get(parents[index]?.id) ?? 0,
      ),
    );
    return { values: pages, children: pages.flatMap((page) => page.nodes), childType: typeName };
  };
