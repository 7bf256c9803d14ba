import type { GraphQLResolveInfo } from 'graphql';
import type { SqlValue } from '../../db/reader.js';
import type { ApiContext } from './apiContext.js';
import { keyOf, type Order, type SortKind } from './cursor.js';
import { askedOfRows, loadRelations } from './loadRelations.js';
import { pageOf, type Page } from './page.js';
import { pageSize, type PageArgs } from './pageArgs.js';
import { requestedNames } from './requestedNames.js';
import { columnsFor, type Columns } from './spareColumns.js';
import type { Row } from './typeReads.js';

export interface RootPage {
  typeName: string;
  /** What follows FROM: a table, with its joins. */
  from: string;
  /** Select list, with `id` among the names. */
  columns: Columns;
  /** Table whose `id` settles ties. */
  table: string;
  /** SQL expression that sorts, never null, and its parameters. */
  sortBy: string;
  sortParameters?: readonly SqlValue[];
  /** Text unless said otherwise. */
  sortKind?: SortKind;
  /** Tells orders of one list apart where `sortBy` is too long to travel in a cursor. */
  sortName?: string;
  direction?: 'ASC' | 'DESC';
  /** Conditions with their parameters; all must hold. */
  where?: readonly { sql: string; parameters: readonly SqlValue[] }[];
}

/** One page of a list at the root of a query, with every relation asked for below it. */
export async function rootPage(
  context: ApiContext,
  info: GraphQLResolveInfo,
  { first, after }: PageArgs,
  page: RootPage,
): Promise<Page<Row>> {
  const { reader } = context.database;
  const columns = columnsFor(page.columns, askedOfRows(info));
  const { from, table, sortBy, sortParameters = [], direction = 'ASC' } = page;
  const size = pageSize(first);
  const order: Order = {
    name: `${page.typeName} ${page.sortName ?? sortBy} ${direction}`,
    kind: page.sortKind ?? 'text',
  };
  const key = after === null || after === undefined ? null : keyOf(after, order);
  const conditions = [...(page.where ?? [])];
  const counted = [...conditions];
  if (key) {
    const beyond = direction === 'ASC' ? '>' : '<';
    conditions.push({
      sql: `(${sortBy}, ${table}.id) ${beyond} (?, ?)`,
      parameters: [...sortParameters, ...key],
    });
  }
  const rows = await reader.rows<Row & { sortKey: string | number }>(
    `SELECT ${columns}, ${sortBy} AS "sortKey" FROM ${from} ${whereAll(conditions)}
     ORDER BY "sortKey" ${direction}, ${table}.id ${direction} LIMIT ?`,
    [...sortParameters, ...parametersOf(conditions), size + 1],
  );
  let total = 0;
  if (requestedNames(info).has('totalCount')) {
    const [count] = await reader.rows<{ total: number }>(
      `SELECT COUNT(*) AS "total" FROM ${from} ${whereAll(counted)}`,
      parametersOf(counted),
    );
    total = count?.total ?? 0;
  }
  const result = pageOf(rows, size, order, (row) => [row.sortKey, row.id], key !== null, total);
  await loadRelations(context, info, page.typeName, result.nodes, []);
  return result;
}

const whereAll = (conditions: readonly { sql: string }[]): string =>
  conditions.length === 0 ? '' : `WHERE ${conditions.map(({ sql }) => `(${sql})`).join(' AND ')}`;

const parametersOf = (conditions: readonly { parameters: readonly SqlValue[] }[]): SqlValue[] =>
  conditions.flatMap(({ parameters }) => [...parameters]);
