import { postgresDialect, sqliteDialect } from './dialect.js';
import { queryInWork } from './queryInWork.js';
import type { Reader } from './reader.js';
import type { UnitOfWork } from './unitOfWork.js';

/**
 * Where plain rows come from: the read side, or a transaction that sees its own writes. 64-bit
 * numbers may come as text from a transaction on PostgreSQL: read them with `Number`.
 */
export type RowSource = Pick<Reader, 'rows' | 'dialect'>;

/** The rows as a unit of work sees them. */
export const rowSourceInWork = (work: UnitOfWork): RowSource => ({
  dialect: work.engine === 'sqlite' ? sqliteDialect : postgresDialect,
  rows: (sql, parameters) => queryInWork(work, sql, parameters),
});
