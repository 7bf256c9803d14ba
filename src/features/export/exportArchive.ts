import type { Database } from '../../db/database.js';
import { writeArchive } from './writeArchive.js';
import { writeWholeFile } from './writeWholeFile.js';

/** Writes the whole collection into one JSON archive, as of one instant. */
export const exportArchive = (database: Database, path: string, writtenAt: string): Promise<void> =>
  database.snapshot((reader) =>
    writeWholeFile(path, writeArchive(database.dataSource, reader, writtenAt)),
  );
