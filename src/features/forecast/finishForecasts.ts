import type { ApiContext } from '../../api/kit/apiContext.js';
import { dateQuantile } from '../../domain/pace/dateQuantile.js';
import { finishDays } from '../../domain/pace/finishDays.js';
import { paceBasis } from '../pace/paceBasis.js';
import { paceOfPerson } from '../pace/paceOfPerson.js';
import type { ForecastOfProject } from './forecastOfProjects.js';
import type { PlannedProject } from './plans.reads.js';
import type { FinishForecast } from './projectForecast.type.js';

/** When each project would be done if it came first; null where no pace is known. */
export async function finishForecasts(
  context: ApiContext,
  projects: readonly PlannedProject[],
  forecasts: readonly ForecastOfProject[],
): Promise<(FinishForecast | null)[]> {
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
    if (!of || !forecast || of.weekHours.length === 0) return null;
    const { weekHours, isAway, blockWeeks, todayNumber } = of;
    const choices = { seed, weekHours, isAway, blockWeeks, today: todayNumber };
    const days = finishDays([{ id, totals: forecast.totals }], choices).get(id) as Float64Array;
    return {
      p50On: dateQuantile(days, 0.5),
      p80On: dateQuantile(days, 0.8),
      p95On: dateQuantile(days, 0.95),
      basis: paceBasis(of, context.nowMs),
    };
  });
}
