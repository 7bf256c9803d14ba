import type { SqlValue } from '../../db/reader.js';
import { keyOf, type Order, type SortKind } from './cursor.js';
import { pageOf } from './page.js';
import { pageSize } from './pageArgs.js';
import { grouped, ofParents, parentsParameter } from './relations.js';
import { columnsFor, type Columns } from './spareColumns.js';
import type { Relation, Row } from './typeReads.js';

interface ChildPages {
  table: string;
  /** As `selectColumns` or `spareColumns` makes them, from `table`; with `id` and `sortColumn`. */
  columns: Columns;
  parentColumn: string;
  /** Sort column, never null, and the name that it has in the rows. */
  sortColumn: string;
  sortName: string;
  /** What sorts in place of the bare column: never null, and read only where it is needed. */
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
    const { table, parentColumn, sortColumn, sortName, direction, sortExpression } = options;
    // Cursors alone need what a row is sorted by, where that is no column of its own.
    const isSortShown = sortExpression && (asked.has('pageInfo') || asked.has('edges'));
    const columns = `${columnsFor(options.columns, askedOfRows)}${
      isSortShown ? `, ${sortExpression} AS "${sortName}"` : ''
    }`;
    const size = pageSize(args['first']);
    const cursorOrder: Order = {
      name: `${typeName} in ${parentColumn} ${sortName} ${direction}`,
      kind: options.sortKind ?? 'text',
    };
    const after = typeof args['after'] === 'string' ? keyOf(args['after'], cursorOrder) : null;
    const parent = `${table}.${parentColumn}`;
    const own = options.where ? ` AND ${options.where}` : '';
    const ownParameters = options.whereParameters ?? [];
    const sort = sortExpression ?? `${table}.${sortColumn}`;
    const order = `${sort} ${direction}, ${table}.id ${direction}`;
    const later = after
      ? ` AND (${sort}, ${table}.id) ${direction === 'ASC' ? '>' : '<'} (?, ?)`
      : '';
    const isOfParents = ofParents(reader.dialect, parents, parent);
    // One parent needs no numbering: the engine can walk an index and stop.
    const statement =
      parents.length > 1
        ? `SELECT * FROM (
             SELECT ${columns}, ${parent} AS "parentId",
               ROW_NUMBER() OVER (PARTITION BY ${parent} ORDER BY ${order}) AS "place"
             FROM ${table} WHERE ${isOfParents}${own}${later}
           ) AS numbered WHERE "place" <= ? ORDER BY "parentId", "place"`
        : `SELECT ${columns} FROM ${table}
           WHERE ${isOfParents}${own}${later} ORDER BY ${order} LIMIT ?`;
    const children = await reader.rows<Row>(statement, [
      parentsParameter(parents),
      ...ownParameters,
      ...(after ?? []),
      size + 1,
    ]);
    const totals = new Map<unknown, number>();
    if (asked.has('totalCount')) {
      const counts = await reader.rows<{ parentId: string; total: number }>(
        `SELECT ${parent} AS "parentId", COUNT(*) AS total FROM ${table}
         WHERE ${isOfParents}${own} GROUP BY ${parent}`,
        [parentsParameter(parents), ...ownParameters],
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
    const [only] = pages;
    const shown = pages.length === 1 && only ? only.nodes : pages.flatMap((page) => page.nodes);
    return { values: pages, children: shown, childType: typeName };
  };
