import type { Readable } from 'node:stream';
import { setImmediate } from 'node:timers/promises';
import Parser from 'stream-json/Parser.js';
import type { Act, Database } from '../../db/database.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { recordEntities } from '../entities.js';
import { chainExisting } from '../history/chainExisting.js';
import { rebuildComputed } from '../rebuildComputed.js';
import { archiveVersion } from './archiveFormat.js';
import { ArchiveReader, type TableRow } from './archiveReader.js';
import { TableLoader } from './tableLoader.js';
import { refusalOfArchive } from './refusalOfArchive.js';

/**
 * Loads an archive into an empty collection, all of it or nothing, and computes from it what is
 * computed.
 * @param open gives the bytes from their beginning
 * @returns how many rows each table received
 * @throws Refusal when the collection holds anything, or the archive is not whole and sound
 */
export async function loadArchive(
  database: Database,
  act: Act,
  open: () => Readable,
  onRows: (count: number) => void = () => undefined,
): Promise<Map<string, number>> {
  return database
    .write(act, async (work) => {
      await refuseUnlessEmpty(work);
      const counts = await loadTables(work, open(), onRows);
      await chainExisting(work);
      await rebuildComputed(work);
      return counts;
    })
    .catch((error: unknown) => {
      throw refusalOfArchive(error);
    });
}

async function refuseUnlessEmpty(work: UnitOfWork): Promise<void> {
  for (const entity of recordEntities) {
    const { tableName } = work.manager.connection.getMetadata(entity);
    const found = await queryInWork(work, `SELECT id FROM ${tableName} LIMIT 1`);
    if (found.length > 0) {
      throw Refusal.conflict(
        'An archive is loaded into an empty collection only, and this one holds records already. Name another database (REGLOW_DATABASE or REGLOW_DATA) and load it there.',
      );
    }
  }
}

const rowsBetweenTurns = 1000;

async function loadTables(
  work: UnitOfWork,
  bytes: Readable,
  onRows: (count: number) => void,
): Promise<Map<string, number>> {
  const expected = recordEntities.map((entity) => ({
    entity,
    table: work.manager.connection.getMetadata(entity).tableName,
  }));
  const counts = new Map<string, number>();
  let loader: TableLoader | null = null;
  let total = 0;
  // Where in the order of tables the archive is.
  let position = 0;
  const reader = tableRowsOf(bytes);
  const isOlder = () => reader.version < archiveVersion;
  // An archive of an earlier version has no rows of tables that came later.
  const passOver = (until: string | null) => {
    while (position < expected.length && expected[position]?.table !== until) {
      counts.set(expected[position]?.table ?? '', 0);
      position += 1;
    }
  };
  for await (const { table, row } of reader as AsyncIterable<TableRow>) {
    if (row === null) {
      await loader?.finish();
      if (isOlder() && expected.some((known) => known.table === table)) passOver(table);
      const next = expected[position];
      if (next?.table !== table) throw wrongTable(table, next?.table);
      loader = new TableLoader(work, next.entity, table, isOlder());
      counts.set(table, 0);
      position += 1;
    } else if (loader) {
      await loader.add(row);
      counts.set(table, loader.count);
      if (++total % rowsBetweenTurns === 0) {
        onRows(total);
        await setImmediate();
      }
    }
  }
  await loader?.finish();
  if (isOlder()) passOver(null);
  const missing = expected[position];
  if (missing) throw wrongTable(null, missing.table);
  onRows(total);
  return counts;
}

function tableRowsOf(bytes: Readable): ArchiveReader {
  const tokens = new Parser({ streamValues: false });
  const rows = new ArchiveReader();
  bytes.on('error', (error) => tokens.destroy(error));
  tokens.on('error', (error) => rows.destroy(error));
  return bytes.pipe(tokens).pipe(rows);
}

const wrongTable = (found: string | null, wanted: string | undefined): Refusal =>
  Refusal.invalid(
    wanted === undefined
      ? `The archive has a table “${found ?? ''}” that this version does not.`
      : `The archive has ${found === null ? 'no further table' : `the table “${found}”`} where “${wanted}” must come.`,
  );
