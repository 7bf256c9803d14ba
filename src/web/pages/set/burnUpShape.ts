import type { ProjectOutlookQuery } from '../../gql/graphql.js';
import type { ChartBand, ChartLine } from '../../parts/chartLine.js';

export type Outlook = Extract<NonNullable<ProjectOutlookQuery['node']>, { earnedValue: unknown }>;
type Point = Outlook['earnedValue']['burnUp'][number];
type Week = NonNullable<Outlook['forecast']>['weeksAhead'][number];

interface Names {
  earned: string;
  spent: string;
  scope: string;
  planned: string;
  ahead: string;
  band: string;
}

/**
 * A restoration's hours over time as lines, and what is foreseen as a band: the share of the hours
 * left that the trials have done, of what is not yet earned.
 */
export function burnUpShape(
  { closedAt, earnedValue, forecast }: Outlook,
  names: Names,
): { lines: ChartLine[]; band: ChartBand | undefined; last: Point | undefined } {
  const past = untilClosed(earnedValue.burnUp, closedAt);
  const last = past.at(-1);
  const weeks = untilFairlySure(forecast?.weeksAhead ?? []);
  const end = weeks.at(-1);
  const line = (
    name: string,
    look: ChartLine['look'],
    hoursOf: (point: Point) => number | null,
  ): ChartLine => ({
    name,
    look,
    points: past.flatMap((point) => {
      const value = hoursOf(point);
      return value === null ? [] : [{ at: Date.parse(point.on), value }];
    }),
  });
  const scope = line(names.scope, 'thin', (point) => point.scopeHours);
  const lines = [
    line(names.earned, 'main', (point) => point.earnedHours),
    line(names.spent, 'dashed', (point) => point.spentHours),
    last && end
      ? { ...scope, points: [...scope.points, { at: Date.parse(end.on), value: last.scopeHours }] }
      : scope,
    line(names.planned, 'dotted', (point) => point.plannedHours),
  ].filter(({ points }) => points.length > 0);
  if (!last || weeks.length < 2) return { lines, band: undefined, last };
  const earned = last.earnedHours;
  const earnedAt = (share: number) => earned + (earnedValue.hours.budgetHours - earned) * share;
  lines.push({
    name: names.ahead,
    look: 'ahead',
    points: weeks.map((week) => ({ at: Date.parse(week.on), value: earnedAt(week.p50DoneShare) })),
  });
  const band = {
    name: names.band,
    points: weeks.map((week) => ({
      at: Date.parse(week.on),
      low: earnedAt(week.p80DoneShare),
      high: earnedAt(week.p20DoneShare),
    })),
  };
  return { lines, band, last };
}

/** What came after the work was closed is a level line that tells nothing. */
function untilClosed(points: readonly Point[], closedAt: string | null): readonly Point[] {
  const end = closedAt === null ? -1 : points.findIndex(({ on }) => on >= closedAt.slice(0, 10));
  return end < 0 ? points : points.slice(0, end + 1);
}

/** The slowest trials may take years longer: they are in the other picture. */
function untilFairlySure(weeks: readonly Week[]): readonly Week[] {
  const end = weeks.findIndex(({ p80DoneShare }) => p80DoneShare === 1);
  return end < 0 ? weeks : weeks.slice(0, end + 1);
}
