interface MonthHours {
  month: string;
  hours: number;
}

/** From the first month to the last without a gap: a month without work counts 0. */
export function everyMonth(months: readonly MonthHours[]): MonthHours[] {
  const hoursOf = new Map(months.map(({ month, hours }) => [month, hours]));
  const sorted = [...hoursOf.keys()].sort();
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined) return [];
  const all: MonthHours[] = [];
  for (let month = first; month <= last; month = monthAfter(month)) {
    all.push({ month, hours: hoursOf.get(month) ?? 0 });
  }
  return all;
}

/** 2026-12 → 2027-01 */
function monthAfter(month: string): string {
  const next = new Date(`${month}-01T00:00:00Z`);
  next.setUTCMonth(next.getUTCMonth() + 1);
  return next.toISOString().slice(0, 7);
}
