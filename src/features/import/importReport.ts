import type { ListDelimiter } from './listDelimiter.js';
import type { ListField } from './listField.js';
import type { ListProblem } from './listProblems.js';

/** What a column was taken for. */
export interface TakenColumn {
  column: string;
  /** Null: none of the fields. Its content goes to the note, unless `isIgnored`. */
  field: ListField | null;
  isIgnored: boolean;
}

/** What came of reading a list. */
export interface ImportReport {
  isDryRun: boolean;
  rowsRead: number;
  /** 0, or all of them. */
  rowsLoaded: number;
  encoding: string;
  delimiter: ListDelimiter;
  columns: TakenColumn[];
  newModels: string[];
  newPlaces: string[];
  newParties: string[];
  remarks: string[];
  problemCount: number;
  problems: ListProblem[];
}
