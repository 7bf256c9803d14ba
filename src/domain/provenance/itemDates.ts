import type { DayRange } from '../dates/compareDates.js';
import { dayNumber, dateOfDay } from '../dates/dayNumber.js';
import type { LocalDate } from '../dates/localDate.js';
import {
  firstOf,
  lastOf,
  possibleDays,
  type DateStatement,
  type DayStretch,
} from './dateNetwork.js';
import { possibleStretches } from './possibleStretches.js';
import { smallestConflict } from './smallestConflict.js';

/** A statement about a date, in words, and the records that it comes from. */
export interface DatedStatement extends DayRange {
  readonly id: string;
  readonly words: string;
}

/** What bears on when an item was made and what happened to it. */
export interface DateFacts {
  readonly today: LocalDate;
  /** What is said of the making itself: the record, the years of the model, the serial number. */
  readonly making: readonly DatedStatement[];
  /** What happened to it later; nothing can have happened before the making. */
  readonly events: readonly DatedStatement[];
  readonly codes: readonly CodeFact[];
}

/** A date code on a part in the item. */
export interface CodeFact {
  readonly id: string;
  readonly words: string;
  /** ORIGINAL: it was there at the making. REPLACEMENT: put in by a repair. UNKNOWN: says nothing. */
  readonly origin: 'ORIGINAL' | 'REPLACEMENT' | 'UNKNOWN';
  /** Each thing that the code may mean. */
  readonly readings: readonly { readonly earliest: LocalDate; readonly latest: LocalDate }[];
  /** The part was there by this day at the latest; null if not recorded. */
  readonly fittedBy: LocalDate | null;
}

export interface CodeFinding {
  readonly id: string;
  /** Readings that stand up to everything else, as first and last day; empty where none does. */
  readonly possible: readonly DayRange[];
  /** When the part was put in, by a repair; null for original parts and those of unknown origin. */
  readonly repair: DayRange | null;
}

export interface ItemDates {
  /** Null where the statements conflict. */
  readonly making: DayRange | null;
  readonly codes: readonly CodeFinding[];
  /** The fewest statements that cannot all be true, in words; empty where all can. */
  readonly conflict: readonly { readonly id: string; readonly words: string }[];
  readonly statementCount: number;
}

const making = 'making';

/** Puts everything that is known of an item's dates into one network and reads off what is left. */
export function itemDates(facts: DateFacts): ItemDates {
  const words = new Map<string, string>();
  const statements: DateStatement[] = [];
  const within = (
    id: string,
    node: string,
    alternatives: readonly DayRange[],
    said: string,
  ): void => {
    words.set(id, said);
    statements.push({ kind: 'WITHIN', id, node, alternatives: alternatives.map(stretchOf) });
  };
  const order = (id: string, earlier: string, later: string, said: string): void => {
    words.set(id, said);
    statements.push({ kind: 'ORDER', id, earlier, later, graceDays: 0 });
  };
  within('today', making, [{ earliest: null, latest: facts.today }], `It is ${facts.today}.`);
  for (const one of facts.making) within(one.id, making, [one], one.words);
  for (const one of facts.events) {
    within(one.id, one.id, [one], one.words);
    order(
      `${one.id} after making`,
      making,
      one.id,
      'Nothing happens to a thing before it is made.',
    );
  }
  for (const code of facts.codes) {
    if (code.readings.length === 0) continue;
    within(code.id, code.id, code.readings, code.words);
    if (code.origin === 'ORIGINAL') {
      order(`${code.id} original`, code.id, making, 'The part is on record as original.');
    }
    if (code.origin === 'REPLACEMENT') {
      const repair = repairOf(code.id);
      order(`${code.id} repair`, code.id, repair, 'A part is made before it is put in.');
      order(`${repair} after making`, making, repair, 'A part is replaced after the making.');
      const latest = code.fittedBy ?? facts.today;
      within(`${repair} by`, repair, [{ earliest: null, latest }], `It was in place by ${latest}.`);
    }
  }
  const possible = possibleDays(statements);
  const conflict = possible === null ? (smallestConflict(statements) ?? []) : [];
  return {
    making: rangeOf(possible?.get(making)),
    codes: facts.codes.map(({ id, origin }) => ({
      id,
      possible: (possible === null ? [] : (possibleStretches(statements, id) ?? [])).map(dayRange),
      repair: origin === 'REPLACEMENT' ? rangeOf(possible?.get(repairOf(id))) : null,
    })),
    conflict: conflict.map((id) => ({ id, words: words.get(id) ?? '' })),
    statementCount: statements.length,
  };
}

const repairOf = (codeId: string): string => `${codeId} put in`;

const stretchOf = ({ earliest, latest }: DayRange): DayStretch => ({
  first: earliest === null ? Number.NEGATIVE_INFINITY : dayNumber(earliest),
  last: latest === null ? Number.POSITIVE_INFINITY : dayNumber(latest),
});

const dayRange = ({ first, last }: DayStretch): DayRange => ({
  earliest: Number.isFinite(first) ? dateOfDay(first) : null,
  latest: Number.isFinite(last) ? dateOfDay(last) : null,
});

const rangeOf = (days: readonly DayStretch[] | undefined): DayRange | null =>
  days === undefined ? null : dayRange({ first: firstOf(days), last: lastOf(days) });
