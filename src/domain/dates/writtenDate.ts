import type { LocalDate } from './localDate.js';

/** The order in which a list as a whole writes day and month. */
export type WrittenOrder = 'DAY_FIRST' | 'MONTH_FIRST';

type OrderRead = 'day first' | 'month first';
type CenturyRead = 'in the 1900s' | 'in the 2000s';
export type ReadAs = OrderRead | CenturyRead | `${OrderRead}, ${CenturyRead}`;

export interface DateCandidate {
  readonly date: LocalDate;
  readonly readAs: ReadAs;
}

/** What a written date turned out to be. */
export type WrittenDate =
  | { readonly kind: 'date'; readonly date: LocalDate }
  /** A year or a month without a day, as EDTF level 0. */
  | { readonly kind: 'partial'; readonly edtf: string }
  /** Two readings or more are possible; someone must be asked. */
  | { readonly kind: 'ambiguous'; readonly candidates: readonly DateCandidate[] }
  | { readonly kind: 'unreadable'; readonly why: string };
