import { Table, TableCheck, TableIndex, type QueryRunner, type TableIndexOptions } from 'typeorm';
import type { Drafted } from './columns.js';

interface Beside {
  indices?: TableIndexOptions[];
  /** Name → condition. */
  checks?: Record<string, string>;
}

/** Creates one table with its keys and indexes, on either engine. */
export async function createTable(
  runner: QueryRunner,
  name: string,
  columns: readonly Drafted[],
  { indices = [], checks = {} }: Beside = {},
): Promise<void> {
  const table = new Table({
    name,
    columns: columns.map(({ column }) => column),
    foreignKeys: columns.flatMap(({ foreignKey }) => foreignKey ?? []),
    indices: [
      ...columns.flatMap(({ index }) => index ?? []),
      ...indices.map((index) => new TableIndex(index)),
    ],
    checks: Object.entries(checks).map(
      ([checkName, expression]) => new TableCheck({ name: checkName, expression }),
    ),
  });
  await runner.createTable(table, false, true, true);
}
