import { DateTime } from 'luxon';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { argumentProblem } from '../../api/kit/argumentProblem.js';

/** Whole days of the collection's zone, both included, as instants: the end is not included. */
export interface ReportPeriod {
  fromDay: string;
  toDay: string;
  from: string;
  until: string;
  zone: string;
  collectionName: string;
}

const longestDays = 3660;

/** @throws GraphQLError when a day does not exist, or the days are in the wrong order. */
export async function reportPeriod(
  { database: { reader } }: ApiContext,
  fromDay: string,
  toDay: string,
): Promise<ReportPeriod> {
  const [collection] = await reader.rows<{ zone: string; name: string }>(
    'SELECT zone AS "zone", name AS "name" FROM collection',
  );
  const { zone, name } = collection ?? { zone: 'UTC', name: 'My collection' };
  const [first, last] = [fromDay, toDay].map((day) => DateTime.fromISO(day, { zone }));
  if (!first?.isValid || !last?.isValid) {
    throw argumentProblem('Give both days as YYYY-MM-DD, days that exist: 2026-05-01.');
  }
  if (last < first)
    throw argumentProblem(`The last day, ${toDay}, is before the first, ${fromDay}.`);
  if (last.diff(first, 'days').days > longestDays) {
    throw argumentProblem('The days lie more than ten years apart. Ask for less at once.');
  }
  const instant = (at: DateTime): string => at.toUTC().toJSDate().toISOString();
  return {
    fromDay,
    toDay,
    from: instant(first.startOf('day')),
    until: instant(last.plus({ days: 1 }).startOf('day')),
    zone,
    collectionName: name,
  };
}
