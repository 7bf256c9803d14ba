/** A span of time on the axis, in years with fractions: 1970.5 is the middle of 1970. */
export interface Band {
  from: number;
  to: number;
}

/** Year and fraction of a calendar day. */
export function yearOf(day: string): number {
  const start = Date.UTC(Number(day.slice(0, 4)), 0, 1);
  const end = Date.UTC(Number(day.slice(0, 4)) + 1, 0, 1);
  return Number(day.slice(0, 4)) + (Date.parse(`${day}T00:00:00Z`) - start) / (end - start);
}

/** From the first to the last day that a date allows; an open end reaches to the edge given. */
export function bandOf(
  earliestOn: string | null,
  latestOn: string | null,
  edge: Band,
): Band | null {
  if (earliestOn === null && latestOn === null) return null;
  return {
    from: earliestOn === null ? edge.from : yearOf(earliestOn),
    // A day lasts until the next one begins.
    to: latestOn === null ? edge.to : yearOf(latestOn) + 1 / 365,
  };
}

/** The whole years from the first to the last day of all, with a little room at both ends. */
export function edgeOf(days: readonly (string | null)[], today: string): Band {
  const years = [...days, today].flatMap((day) => (day === null ? [] : [yearOf(day)]));
  return { from: Math.floor(Math.min(...years)) - 1, to: Math.ceil(Math.max(...years)) + 1 };
}

/** Years to be marked on the axis: every one, fifth, tenth, so that at most a dozen are. */
export function marksOf({ from, to }: Band): number[] {
  const step = [1, 2, 5, 10, 20, 50, 100].find((each) => (to - from) / each <= 12) ?? 200;
  const marks = [];
  for (let year = Math.ceil(from / step) * step; year <= to; year += step) marks.push(year);
  return marks;
}
