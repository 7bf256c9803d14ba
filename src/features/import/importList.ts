import type { Act, Database } from '../../db/database.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { ImportOptions } from './importOptions.js';
import type { ImportReport } from './importReport.js';
import { ListProblems } from './listProblems.js';
import type { ListSource } from './listSource.js';
import { loadBatch } from './loadBatch.js';
import { readList, type ListRead, type ReadList } from './readList.js';
import { surveyList } from './surveyList.js';

export interface ImportProgress {
  phase: 'checking' | 'loading';
  rowsRead: number;
  /** From 0 to 1. */
  share: number;
}

/**
 * Brings an existing list into the collection: everything in it is checked, and then either all of
 * it is loaded, in one transaction, or nothing. A dry run only checks. The list is read twice, so
 * that memory does not grow with it and nobody waits for the writer while it is checked.
 */
export async function importList(
  database: Database,
  act: Act,
  source: ListSource,
  options: ImportOptions,
  watch: (progress: ImportProgress) => void = () => undefined,
): Promise<ImportReport> {
  const problems = new ListProblems(options.mostProblems);
  const survey = await surveyList(source, options, problems);
  const report = (read?: ListRead, rowsLoaded = 0): ImportReport => ({
    isDryRun: options.isDryRun,
    rowsRead: read?.rowsRead ?? 0,
    rowsLoaded,
    ...survey,
    columns: read?.columns ?? [],
    newModels: read?.names.models.added ?? [],
    newPlaces: read?.names.places.added ?? [],
    newParties: read?.names.parties.added ?? [],
    remarks: remarksOn(read),
    problemCount: problems.count,
    problems: problems.inOrder(),
  });
  if (problems.count > 0) return report();
  const list = (phase: ImportProgress['phase']) => ({
    source,
    survey,
    options,
    problems,
    dialect: database.reader.dialect,
    onProgress: (rowsRead: number, bytesRead: number) => {
      watch({ phase, rowsRead, share: Math.min(1, bytesRead / Math.max(1, source.byteLength)) });
    },
  });
  const checked = await readList({
    ...list('checking'),
    query: (sql, parameters) => database.reader.rows(sql, parameters),
    onBatch: (_batch, names) => {
      forget(names.models.pending, names.places.pending, names.parties.pending);
      return Promise.resolve();
    },
  });
  if (options.isDryRun || problems.count > 0) return report(checked);
  try {
    const loaded = await database.write(act, async (work) => {
      const reading: ReadList = {
        ...list('loading'),
        query: (sql, parameters) => queryInWork(work, sql, parameters),
        onBatch: async (batch, names) => {
          // Sound a moment ago: somebody recorded the same meanwhile, or the file was changed.
          if (problems.count > 0) throw new NothingLoaded();
          await loadBatch(work, options.kind, batch, names);
        },
      };
      const read = await readList(reading);
      if (problems.count > 0) throw new NothingLoaded();
      return read;
    });
    return report(loaded, loaded.rowsRead);
  } catch (error) {
    if (error instanceof Refusal) {
      for (const { message } of error.problems) problems.add(null, null, message);
    } else if (!(error instanceof NothingLoaded)) throw error;
    return report(checked);
  }
}

/** Ends the transaction; what was wrong is in the problems. */
class NothingLoaded extends Error {}

function forget(...lists: unknown[][]): void {
  for (const list of lists) list.length = 0;
}

function remarksOn(read: ListRead | undefined): string[] {
  if (!read || read.purchasesInNotes === 0) return [];
  return [
    `In ${read.purchasesInNotes} rows something is said of a purchase without its price; it is kept in the note of the item.`,
  ];
}
