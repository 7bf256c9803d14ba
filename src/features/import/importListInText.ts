import type { Act, Database } from '../../db/database.js';
import type { Refused } from '../../db/refusal.js';
import { homeCurrency } from './homeCurrency.js';
import type { ImportListInput } from './import.inputs.js';
import { importList } from './importList.js';
import type { ImportReport } from './importReport.js';
import { latestDayAt } from './latestDayAt.js';
import { listInText } from './listSource.js';

const longestList = 1_000_000;
const mostProblems = 1000;

export interface Imported {
  report: ImportReport | null;
  problems: Refused[];
}

/** Brings in a list that was sent as text; what is wrong in it is in the report. */
export async function importListInText(
  database: Database,
  act: Act,
  input: ImportListInput,
): Promise<Imported> {
  if (input.csv.length > longestList) {
    const message = `The list has ${input.csv.length} characters; ${longestList} is the most. Send it in parts, or use \`reglow import\`.`;
    return { report: null, problems: [{ code: 'INVALID', message, path: ['csv'] }] };
  }
  const { reader } = database;
  const report = await importList(database, act, listInText(input.csv), {
    kind: input.kind,
    isDryRun: input.isDryRun,
    encoding: 'utf-8',
    delimiter: input.delimiter ?? null,
    dateOrder: input.dateOrder ?? null,
    decimalMark: null,
    currency:
      input.currency ?? (await homeCurrency((sql, parameters) => reader.rows(sql, parameters))),
    role: input.role ?? null,
    takesFirstDay: input.takesFirstDay ?? false,
    mapping: input.mapping ?? [],
    ignore: input.ignore ?? [],
    latestDay: latestDayAt(Date.parse(act.now)),
    mostProblems,
  });
  if (input.isDryRun || report.problemCount === 0) return { report, problems: [] };
  const message = `Nothing was loaded: the list has ${report.problemCount} problems, which the report names by line.`;
  return { report, problems: [{ code: 'INVALID', message, path: ['csv'] }] };
}
