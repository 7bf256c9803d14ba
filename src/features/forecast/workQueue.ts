import type { ApiContext } from '../../api/kit/apiContext.js';
import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { Row } from '../../api/kit/typeReads.js';
import { dayNumber } from '../../domain/dates/dayNumber.js';
import { dateQuantile } from '../../domain/pace/dateQuantile.js';
import { finishDays } from '../../domain/pace/finishDays.js';
import { paceBasis } from '../pace/paceBasis.js';
import { paceOfPerson, type PaceOfPerson } from '../pace/paceOfPerson.js';
import { hundredths } from '../standing/standingFacts.js';
import { forecastOfProjects, type ForecastOfProject } from './forecastOfProjects.js';
import { readQueue, type PlannedProject } from './plans.reads.js';

/** Enough for dates to the day, and quick for many projects at once. */
const trials = 2000;
const mostProjects = 100;

interface Dates {
  p50On: string | null;
  p80On: string | null;
}

/** A person's queue with its dates, and what moving one project up would do to them. */
export async function workQueue(
  context: ApiContext,
  personId: string,
  movedUpId: string | null,
): Promise<Row> {
  const all = await readQueue(context.database.reader, personId);
  const queue = all.slice(0, mostProjects);
  const of = await paceOfPerson(context.database.reader, personId, context.nowMs);
  const told = await forecastOfProjects(context, queue, { isCalibrated: true, trials });
  const totals = new Map(queue.map(({ id }, index) => [id, told[index] as ForecastOfProject]));
  const now = datesOf(queue, totals, of);
  return {
    id: personId,
    projects: queue.map(({ id }, index) => ({
      id,
      place: index + 1,
      p50Hours: hundredths(told[index]?.forecast.hours.p50Hours ?? 0),
      p80Hours: hundredths(told[index]?.forecast.hours.p80Hours ?? 0),
      ...now.get(id),
    })),
    ifMovedUp: movedUpId === null ? [] : effects(queue, totals, of, now, movedUpId),
    basis: paceBasis(of, context.nowMs, [
      'One project gets all hours until it is done, then the next, whatever else could go on meanwhile.',
      `Hours left are those of ${trials} seeded trials of each project, by themselves; projects run over or under independently of one another.`,
      ...(all.length > queue.length
        ? [`Only the first ${mostProjects} of ${all.length} projects are shown.`]
        : []),
    ]),
  };
}

function datesOf(
  queue: readonly PlannedProject[],
  totals: ReadonlyMap<string, ForecastOfProject>,
  { weekHours, isAway, blockWeeks, todayNumber: today }: PaceOfPerson,
): Map<string, Dates> {
  const none = { p50On: null, p80On: null };
  if (weekHours.length === 0) return new Map(queue.map(({ id }) => [id, none]));
  // A very large project has fewer trials than the others: all take part by as many as it has.
  const least = Math.min(...[...totals.values()].map((told) => told.trials));
  const waiting = queue.map(({ id }) => ({
    id,
    totals: (totals.get(id) as ForecastOfProject).forecast.totals.subarray(0, least),
  }));
  const days = finishDays(waiting, { seed: 'queue', weekHours, isAway, blockWeeks, today });
  return new Map(
    [...days].map(([id, each]) => [
      id,
      { p50On: dateQuantile(each, 0.5), p80On: dateQuantile(each, 0.8) },
    ]),
  );
}

function effects(
  queue: readonly PlannedProject[],
  totals: ReadonlyMap<string, ForecastOfProject>,
  of: PaceOfPerson,
  now: ReadonlyMap<string, Dates>,
  movedUpId: string,
): Row[] {
  const place = queue.findIndex(({ id }) => id === movedUpId);
  if (place < 0) throw argumentProblem('That project does not wait for this person.');
  const order = [...queue];
  const [moved] = order.splice(place, 1);
  order.splice(Math.max(0, place - 1), 0, moved as PlannedProject);
  const then = datesOf(order, totals, of);
  return order.map(({ id }, index) => {
    const [before, after] = [now.get(id) as Dates, then.get(id) as Dates];
    return {
      id,
      place: index + 1,
      ...after,
      p50DaysLater: daysBetween(before.p50On, after.p50On),
      p80DaysLater: daysBetween(before.p80On, after.p80On),
    };
  });
}

const daysBetween = (before: string | null, after: string | null): number | null =>
  before === null || after === null ? null : dayNumber(after) - dayNumber(before);
