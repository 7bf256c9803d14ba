import type { ApiContext } from '../../api/kit/apiContext.js';
import { computedReads } from '../../api/kit/computedReads.js';
import { heldRows } from '../../api/kit/heldRows.js';
import { one } from '../../api/kit/relations.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { hundredths } from '../standing/standingFacts.js';
import { forecastBasis } from './forecastBasis.js';
import {
  forecastOfProjects,
  mostTrials,
  type ForecastOfProject,
  type ForecastWish,
} from './forecastOfProjects.js';
import { finishForecasts } from './finishForecasts.js';
import { readPlans, type PlannedProject } from './plans.reads.js';
import { shownHours, thousandths } from './shownHours.js';

const forecast: Relation = async (context, parents, args, asked) => {
  const wish: ForecastWish = { isCalibrated: args['isCalibrated'] !== false, trials: mostTrials };
  const ids = parents.map(({ id }) => id);
  const plans = new Map((await readPlans(context.database.reader, ids)).map((p) => [p.id, p]));
  const projects = ids.flatMap((id) => plans.get(id) ?? []);
  const told = await forecastOfProjects(context, projects, wish);
  const isProgressAsked = asked.has('weeksAhead');
  const inTime =
    isProgressAsked || asked.has('finish')
      ? await finishForecasts(context, projects, told, { isProgressAsked })
      : [];
  const rows = told.map((each, index) => ({
    ...shown(context, projects[index] as PlannedProject, each, wish),
    ...inTime[index],
  }));
  const byId = new Map(rows.map((row) => [row.id, row]));
  const values = ids.map((id) => byId.get(id) ?? null);
  return { values, children: rows, childType: 'ProjectForecast' };
};

function shown(
  { nowMs }: ApiContext,
  project: PlannedProject,
  told: ForecastOfProject,
  { isCalibrated }: ForecastWish,
): Row {
  const { forecast: of, trials, tasks } = told;
  const taskIdOf = (key: string) => tasks.get(key)?.task.id;
  return {
    id: project.id,
    hours: shownHours(of.hours),
    longestChain: shownHours(of.chain),
    analyticMeanHours: hundredths(of.analytic.meanHours),
    analyticVarianceHours: thousandths(of.analytic.varianceHours),
    trials,
    basis: forecastBasis(told, project, { isCalibrated, nowMs }),
    tasks: of.tasks.map(({ id, remaining, criticality }) => ({
      id,
      taskId: taskIdOf(id),
      kind: remaining.kind,
      spentHours: hundredths(tasks.get(id)?.spentHours ?? 0),
      multiplier: thousandths(tasks.get(id)?.multiplier ?? 1),
      expectedHours: hundredths(remaining.meanHours),
      p50Hours: hundredths(remaining.hoursAt(0.5)),
      p80Hours: hundredths(remaining.hoursAt(0.8)),
      criticality: Math.round(criticality * 10_000) / 10_000,
    })),
    tornado: of.tornado.map((bar) => ({
      id: bar.id,
      taskId: taskIdOf(bar.id),
      lowHours: hundredths(bar.lowHours),
      highHours: hundredths(bar.highHours),
      p80IfCertainHours: hundredths(bar.p80IfCertainHours),
    })),
  };
}

/** What forecasts add to a project. */
export const forecastRelationsOfProject: Record<string, Relation> = { forecast };

export const forecastReads = [
  computedReads('ProjectForecast', {
    tasks: heldRows('TaskForecast', 'tasks'),
    tornado: heldRows('TornadoBar', 'tornado'),
  }),
  computedReads('TaskForecast', { task: one('Task', 'taskId') }),
  computedReads('TornadoBar', { task: one('Task', 'taskId') }),
] as const;
