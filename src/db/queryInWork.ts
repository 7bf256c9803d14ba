import { numberedParameters } from './numberedParameters.js';
import type { SqlValue } from './reader.js';
import type { UnitOfWork } from './unitOfWork.js';

/** A hand-written statement inside the transaction, with `?` for parameters on both engines. */
export async function queryInWork<Row extends object>(
  work: UnitOfWork,
  sql: string,
  parameters: readonly SqlValue[] = [],
): Promise<Row[]> {
  const statement = work.engine === 'sqlite' ? sql : numberedParameters(sql);
  return work.manager.query<Row[]>(statement, [...parameters]);
}
