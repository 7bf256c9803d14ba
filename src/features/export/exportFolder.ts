import { join } from 'node:path';
import type { Database } from '../../db/database.js';
import { recordEntities } from '../entities.js';
import { writeItemList } from './writeItemList.js';
import { writeTableCsv } from './writeTableCsv.js';
import { writeWholeFile } from './writeWholeFile.js';

/**
 * Writes the collection as CSV files into a folder, as of one instant: a file for each kind of
 * record with all its columns, and `rigs.csv` and `accessories.csv` as `reglow import` reads them.
 * @returns the names of the files
 */
export function exportFolder(database: Database, folder: string): Promise<string[]> {
  return database.snapshot(async (reader) => {
    const files: [string, AsyncIterable<string>][] = [
      ['rigs.csv', writeItemList(reader, 'RIG')],
      ['accessories.csv', writeItemList(reader, 'ACCESSORY')],
    ];
    for (const entity of recordEntities) {
      const metadata = database.dataSource.getMetadata(entity);
      const name = `${metadata.tableName.replaceAll('_', '-')}.csv`;
      files.push([name, writeTableCsv(reader, metadata)]);
    }
    for (const [name, text] of files) await writeWholeFile(join(folder, name), text);
    return files.map(([name]) => name);
  });
}
