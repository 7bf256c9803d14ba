import type { Database } from '../../db/database.js';
import type { Reader } from '../../db/reader.js';
import { recordEntities } from '../entities.js';
import { archivedColumns } from './archivedColumn.js';
import { archiveFormat, archiveVersion } from './archiveFormat.js';
import { tableRows } from './tableRows.js';

/**
 * Everything recorded, history included, as one JSON document, piece by piece: a row a line. The
 * same records make the same text on both engines; `writtenAt` is all that differs.
 * @param reader a snapshot, so that a write in between does not tear it
 */
export async function* writeArchive(
  dataSource: Database['dataSource'],
  reader: Reader,
  writtenAt: string,
): AsyncGenerator<string> {
  const head = { format: archiveFormat, version: archiveVersion, writtenAt };
  yield `${JSON.stringify(head).slice(0, -1)},"tables":{`;
  let before = '\n';
  for (const entity of recordEntities) {
    const metadata = dataSource.getMetadata(entity);
    yield `${before}${JSON.stringify(metadata.tableName)}:[`;
    before = ',\n';
    let isFirst = true;
    for await (const rows of tableRows(reader, metadata.tableName, archivedColumns(metadata))) {
      yield `${isFirst ? '' : ','}\n${rows.map((row) => JSON.stringify(row)).join(',\n')}`;
      isFirst = false;
    }
    yield isFirst ? ']' : '\n]';
  }
  yield '\n}}\n';
}
