import type { Money } from '../money/money.js';

/** Something that happened on a day, ISO 8601. */
export interface Dated {
  readonly day: string;
  readonly money: Money;
}

/** One item: when it came and went, what it cost when, and what it was held to be worth when. */
export interface BookedItem {
  /** null: never recorded; it is taken as there from its first cost on, else always. */
  readonly cameOn: string | null;
  /** null: it is still there. */
  readonly leftOn: string | null;
  readonly costs: readonly Dated[];
  /** In any order; the newest up to a day counts. */
  readonly values: readonly Dated[];
}

export interface DayBalance {
  readonly day: string;
  readonly heldCount: number;
  readonly valuedCount: number;
  /** What the items held that day had cost by then. */
  readonly costs: readonly Money[];
  /** What those of them with a value were worth by the newest value up to then. */
  readonly worths: readonly Money[];
}

/** The collection on a day: what is held, what that had cost, what it was worth. */
export function balanceOn(items: readonly BookedItem[], day: string): DayBalance {
  const held = items.filter(({ cameOn, leftOn, costs }) => {
    const from = cameOn ?? costs.map((cost) => cost.day).sort()[0] ?? '';
    return from <= day && (leftOn === null || leftOn > day);
  });
  const worths = held.flatMap(({ values }) => {
    const known = values.filter((value) => value.day <= day);
    const newest = known.sort((one, other) => (one.day < other.day ? 1 : -1))[0];
    return newest ? [newest.money] : [];
  });
  return {
    day,
    heldCount: held.length,
    valuedCount: worths.length,
    costs: held.flatMap(({ costs }) =>
      costs.filter((cost) => cost.day <= day).map(({ money }) => money),
    ),
    worths,
  };
}

/** Up to so many months (`2026-05`) with the one of today, from the first day on, in order. */
export function latestMonths(firstDay: string, today: string, most: number): string[] {
  const [year, month] = [Number(today.slice(0, 4)), Number(today.slice(5, 7))];
  return Array.from({ length: most }, (_, back) => {
    const ordinal = year * 12 + month - most + back;
    return `${Math.floor(ordinal / 12)}-${String((ordinal % 12) + 1).padStart(2, '0')}`;
  }).filter((each) => each >= firstDay.slice(0, 7));
}

/** `2026-02` → `2026-02-28` */
export function lastDayOf(month: string): string {
  const [year, ordinal] = [Number(month.slice(0, 4)), Number(month.slice(5, 7))];
  // Day 0 of the next month.
  return new Date(Date.UTC(year, ordinal, 0)).toISOString().slice(0, 10);
}

/** The days to strike a balance on: the end of each year from the first day on, and today. */
export function balanceDays(firstDay: string, today: string): string[] {
  const [first, last] = [Number(firstDay.slice(0, 4)), Number(today.slice(0, 4))];
  const days: string[] = [];
  for (let year = first; year < last; year += 1) days.push(`${year}-12-31`);
  return [...days, today];
}
