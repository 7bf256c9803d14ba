import type { ImportReport } from '../features/import/importReport.js';
import type { Surroundings } from './surroundings.js';

const mostNames = 20;

/** Tells a person what came of reading a list. */
export function showImport({ print }: Surroundings, report: ImportReport): void {
  print(`Read as ${report.encoding}, cells divided by ${report.delimiter.toLowerCase()}.`);
  for (const { column, field, isIgnored } of report.columns) {
    const taken = isIgnored ? 'ignored' : (field?.toLowerCase().replaceAll('_', ' ') ?? null);
    print(`  ${column} → ${taken ?? 'not known, kept in the note'}`);
  }
  const verb = report.rowsLoaded > 0 ? 'Added' : 'Would add';
  showNames(print, `${verb} models`, report.newModels);
  showNames(print, `${verb} places`, report.newPlaces);
  showNames(print, `${verb} parties, as persons`, report.newParties);
  report.remarks.forEach(print);
  for (const { line, column, message } of report.problems) {
    const where = [line === null ? null : `Line ${line}`, column].filter(Boolean).join(', ');
    print(where === '' ? message : `${where}: ${message}`);
  }
  const unseen = report.problemCount - report.problems.length;
  if (unseen > 0) print(`… and ${unseen} problems more.`);
  if (report.rowsLoaded > 0) print(`Loaded ${report.rowsLoaded} rows.`);
  else if (report.problemCount === 0) print(`${report.rowsRead} rows, and nothing to mend.`);
}

function showNames(print: (line: string) => void, what: string, names: readonly string[]): void {
  if (names.length === 0) return;
  const more = names.length > mostNames ? ` and ${names.length - mostNames} more` : '';
  print(`${what} (${names.length}): ${names.slice(0, mostNames).join(', ')}${more}.`);
}
