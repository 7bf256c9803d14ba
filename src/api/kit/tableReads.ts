import { listParameter } from '../../db/dialect.js';
import type { Relation, Row, TypeReads } from './typeReads.js';

/** The reads of a type whose plain fields are the columns of one table. */
export const tableReads = (
  typeName: string,
  table: string,
  columns: string,
  relations: Record<string, Relation> = {},
): TypeReads & { table: string; columns: string } => ({
  typeName,
  table,
  columns,
  relations,
  byIds: ({ database: { reader } }, ids) =>
    reader.rows<Row>(
      `SELECT ${columns} FROM ${table} WHERE ${reader.dialect.isAnyOf(`${table}.id`)}`,
      [listParameter(ids)],
    ),
});
