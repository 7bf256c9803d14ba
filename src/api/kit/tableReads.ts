import { listParameter } from '../../db/dialect.js';
import { columnsFor, type Columns } from './spareColumns.js';
import type { Relation, Row, TypeReads } from './typeReads.js';

/** The reads of a type whose plain fields are the columns of one table. */
export const tableReads = (
  typeName: string,
  table: string,
  columns: Columns,
  relations: Record<string, Relation> = {},
): TypeReads & { table: string; columns: string } => ({
  typeName,
  table,
  columns: columnsFor(columns, undefined),
  relations,
  byIds: ({ database: { reader } }, ids, asked) =>
    reader.rows<Row>(
      `SELECT ${columnsFor(columns, asked)} FROM ${table} WHERE ${reader.dialect.isAnyOf(`${table}.id`)}`,
      [listParameter(ids)],
    ),
});
