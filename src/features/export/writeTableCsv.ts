import type { EntityMetadata } from 'typeorm';
import type { Reader } from '../../db/reader.js';
import { archivedColumns } from './archivedColumn.js';
import { csvText } from './csvText.js';
import { tableRows } from './tableRows.js';

/** One kind of record as CSV, piece by piece: every column, under the names of the archive. */
export async function* writeTableCsv(
  reader: Reader,
  metadata: EntityMetadata,
): AsyncGenerator<string> {
  const columns = archivedColumns(metadata);
  yield csvText([columns.map(({ name }) => name)]);
  for await (const rows of tableRows(reader, metadata.tableName, columns)) {
    yield csvText(rows.map((row) => columns.map(({ name }) => row[name])));
  }
}
