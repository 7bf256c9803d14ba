/**
 * Dates of one thing as a network: each happening is one unknown day, statements bound it, and
 * orders say that one was not later than another. Days are numbers (see `dayNumber`); infinities
 * are open bounds.
 */
export interface DateNetwork {
  readonly statements: readonly DateStatement[];
}

export type DateStatement =
  /** The happening was on a day of one of these stretches: alternatives, such as the decades of a code. */
  | {
      readonly kind: 'WITHIN';
      readonly id: string;
      readonly node: string;
      readonly alternatives: readonly DayStretch[];
    }
  /** The first was not later than the second, but for some days of grace (0 or more). */
  | {
      readonly kind: 'ORDER';
      readonly id: string;
      readonly earlier: string;
      readonly later: string;
      readonly graceDays: number;
    };

/** First and last day, both included. */
export interface DayStretch {
  readonly first: number;
  readonly last: number;
}

/** What remains of each happening's days: the stretches on which it may still have been. */
export type Possible = ReadonlyMap<string, readonly DayStretch[]>;

const always: readonly DayStretch[] = [
  { first: Number.NEGATIVE_INFINITY, last: Number.POSITIVE_INFINITY },
];

/**
 * The days that are left when every statement holds at once; null when no days are left.
 *
 * Orders with a grace of 0 or more days leave the sets of solutions closed under taking the earlier
 * (or the later) day of two solutions throughout. So bounds alone decide whether there is a
 * solution, alternatives included, and the first and the last day found are days of a solution
 * (Jeavons and Cooper, Tractable constraints on ordered domains, 1995: min- and max-closed).
 */
export function possibleDays(statements: readonly DateStatement[]): Possible | null {
  const possible = new Map<string, readonly DayStretch[]>();
  const daysOf = (node: string): readonly DayStretch[] => possible.get(node) ?? always;
  for (const statement of statements) {
    if (statement.kind === 'ORDER') continue;
    possible.set(statement.node, shared(daysOf(statement.node), statement.alternatives));
  }
  const orders = statements.filter((statement) => statement.kind === 'ORDER');
  for (let isSettled = false; !isSettled;) {
    isSettled = true;
    for (const { earlier, later, graceDays } of orders) {
      const [before, after] = [daysOf(earlier), daysOf(later)];
      const cut = shared(before, [{ ...allDays, last: lastOf(after) + graceDays }]);
      const raised = shared(after, [{ ...allDays, first: firstOf(before) - graceDays }]);
      if (cut.length === 0 || raised.length === 0) return null;
      if (lastOf(cut) < lastOf(before) || firstOf(raised) > firstOf(after)) isSettled = false;
      possible.set(earlier, cut);
      possible.set(later, raised);
    }
  }
  return [...possible.values()].some((days) => days.length === 0) ? null : possible;
}

const allDays: DayStretch = { first: Number.NEGATIVE_INFINITY, last: Number.POSITIVE_INFINITY };

export const firstOf = (days: readonly DayStretch[]): number =>
  days.reduce((least, { first }) => Math.min(least, first), Number.POSITIVE_INFINITY);

export const lastOf = (days: readonly DayStretch[]): number =>
  days.reduce((most, { last }) => Math.max(most, last), Number.NEGATIVE_INFINITY);

/** The days that two lists of stretches have in common. */
export function shared(one: readonly DayStretch[], other: readonly DayStretch[]): DayStretch[] {
  return one.flatMap((left) =>
    other.flatMap((right) => {
      const first = Math.max(left.first, right.first);
      const last = Math.min(left.last, right.last);
      return first <= last ? [{ first, last }] : [];
    }),
  );
}
