import type { LocalDate } from '../../domain/dates/localDate.js';
import type { WrittenOrder } from '../../domain/dates/writtenDate.js';
import type { AccessoryRole } from '../items/accessoryRole.js';
import type { ItemKind } from '../items/itemKind.js';
import type { ListDelimiter } from './listDelimiter.js';
import type { ListEncoding } from './listEncoding.js';
import type { ListField } from './listField.js';

/** What a person can say about a list; null leaves it to be found out, or to be asked about. */
export interface ImportOptions {
  kind: ItemKind;
  isDryRun: boolean;
  encoding: ListEncoding | null;
  delimiter: ListDelimiter | null;
  /** How the list writes day and month where both are numbers. */
  dateOrder: WrittenOrder | null;
  decimalMark: '.' | ',' | null;
  /** Currency of prices without one in their row. */
  currency: string | null;
  /** Role of accessories without one in their row. */
  role: AccessoryRole | null;
  /** A purchase dated by its year or month alone counts as of the first day of it. */
  takesFirstDay: boolean;
  mapping: readonly { column: string; field: ListField }[];
  ignore: readonly string[];
  /** The last day that a date in the list may name. */
  latestDay: LocalDate;
  /** Problems beyond this number are counted and not kept. */
  mostProblems: number;
}
