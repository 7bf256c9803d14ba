import type { ApiContext } from '../../api/kit/apiContext.js';
import { dateOfDay } from '../../domain/dates/dayNumber.js';
import { dateQuantile } from '../../domain/pace/dateQuantile.js';
import { finishDays } from '../../domain/pace/finishDays.js';
import { progressAhead, type ProgressPoint } from '../../domain/pace/progressAhead.js';
import { paceBasis } from '../pace/paceBasis.js';
import { paceOfPerson } from '../pace/paceOfPerson.js';
import type { ForecastOfProject } from './forecastOfProjects.js';
import type { PlannedProject } from './plans.reads.js';
import type { FinishForecast, WeekAhead } from './finishForecast.type.js';

export interface ForecastInTime {
  finish: FinishForecast | null;
  weeksAhead: WeekAhead[];
}

/**
 * When each project would be done if it came first, and how far it comes until then; without dates
 * where no pace is known.
 */
export async function finishForecasts(
  context: ApiContext,
  projects: readonly PlannedProject[],
  forecasts: readonly ForecastOfProject[],
  { isProgressAsked }: { isProgressAsked: boolean },
): Promise<ForecastInTime[]> {
  const people = [...new Set(projects.flatMap(({ personId }) => personId ?? []))];
  const paces = new Map(
    await Promise.all(
      people.map(
        async (id) => [id, await paceOfPerson(context.database.reader, id, context.nowMs)] as const,
      ),
    ),
  );
  return projects.map(({ id, personId, seed }, index) => {
    const of = personId === null ? undefined : paces.get(personId);
    const forecast = forecasts[index]?.forecast;
    if (!of || !forecast || of.weekHours.length === 0) {
      return { finish: null, weeksAhead: [] };
    }
    const { weekHours, isAway, blockWeeks, todayNumber } = of;
    const choices = { seed, weekHours, isAway, blockWeeks, today: todayNumber };
    const left = { id, totals: forecast.totals };
    const days = finishDays([left], choices).get(id) as Float64Array;
    return {
      finish: {
        p50On: dateQuantile(days, 0.5),
        p80On: dateQuantile(days, 0.8),
        p95On: dateQuantile(days, 0.95),
        basis: paceBasis(of, context.nowMs, whatTheBandIs),
      },
      weeksAhead: isProgressAsked ? progressAhead(left, days, choices).map(shownWeek) : [],
    };
  });
}

const whatTheBandIs = [
  'Weeks ahead are read off the same trials as the dates: in each, what is left is done in proportion to its hours. The band runs from what four of five trials have done at least to what one of five has; its lower edge reaches the whole on the day that four of five are done by.',
];

/** Cut off, not rounded: a share of 1 says that all is done. */
const tenThousandths = (share: number): number => Math.floor(share * 10_000) / 10_000;

const shownWeek = (point: ProgressPoint): WeekAhead => ({
  on: dateOfDay(point.day),
  finishedShare: tenThousandths(point.finished),
  p80DoneShare: tenThousandths(point.byEightInTen),
  p50DoneShare: tenThousandths(point.byFiveInTen),
  p20DoneShare: tenThousandths(point.byTwoInTen),
});
