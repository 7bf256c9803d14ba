import { setImmediate } from 'node:timers/promises';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { groupedBy } from '../../db/groupedBy.js';
import { multiplierOf, type Calibration } from '../../domain/calibration/calibration.js';
import { scaledEstimate } from '../../domain/forecast/scaledEstimate.js';
import { simulateProject, type ProjectForecast } from '../../domain/forecast/simulateProject.js';
import { estimateHistory } from '../calibration/finishedTasks.reads.js';
import { readTasksForItems, type TaskOfItem } from '../tasks/tasksForItems.reads.js';
import { hoursOfSlices, readCountedByTask } from '../work/countedByTask.reads.js';
import type { PlannedProject } from './plans.reads.js';

export const mostTrials = 10_000;
/** Tasks times trials in one go: some tenths of a second, and some 40 MB while it lasts. */
const mostDraws = 2_500_000;
const fewestTrials = 200;

export interface ForecastOfProject {
  forecast: ProjectForecast;
  trials: number;
  /** By the key that a task draws by: the task, the hours spent on it, its multiplier. */
  tasks: ReadonlyMap<string, { task: TaskOfItem; spentHours: number; multiplier: number }>;
  calibration: Calibration;
}

export interface ForecastWish {
  /** Multiply estimates by what the collector's history says of them. */
  isCalibrated: boolean;
  /** At the most; fewer where there are very many tasks. */
  trials: number;
}

/**
 * Forecasts of some projects, in a fixed number of statements. Between projects the event loop gets
 * its turn, so that others are not kept waiting for all of them.
 */
export async function forecastOfProjects(
  context: ApiContext,
  projects: readonly PlannedProject[],
  wish: ForecastWish,
): Promise<ForecastOfProject[]> {
  const { reader } = context.database;
  const query = reader.rows.bind(reader);
  const itemIds = [...new Set(projects.map(({ itemId }) => itemId))];
  const tasks = await readTasksForItems(query, reader.dialect, itemIds);
  const byProject = groupedBy(tasks, ({ projectId }) => projectId);
  const wanted = projects.flatMap(({ id }) => byProject.get(id)?.map((task) => task.id) ?? []);
  const counted = await readCountedByTask(reader, wanted, context.nowMs);
  const { calibration } = await estimateHistory(context);
  const forecasts: ForecastOfProject[] = [];
  for (const project of projects) {
    const told = (byProject.get(project.id) ?? []).map((task) => ({
      task,
      spentHours: hoursOfSlices(counted.get(task.id)),
      multiplier: wish.isCalibrated ? multiplierOf(calibration, task.kind) : 1,
    }));
    forecasts.push({ ...simulated(project, told, wish.trials), calibration });
    await setImmediate();
  }
  return forecasts;
}

function simulated(
  { seed, correlationPercent }: PlannedProject,
  told: readonly { task: TaskOfItem; spentHours: number; multiplier: number }[],
  atMost: number,
) {
  const open = told.filter(({ task }) => task.state !== 'DONE' && task.state !== 'DROPPED');
  const affordable = Math.floor(mostDraws / Math.max(1, open.length));
  const trials = Math.max(fewestTrials, Math.min(atMost, affordable));
  const keys = new Map(told.map(({ task }) => [task.id, task.drawKey]));
  const forecast = simulateProject(
    told.map(({ task, spentHours, multiplier }) => ({
      id: task.drawKey,
      state: task.state,
      estimate: scaledEstimate(task.estimate, multiplier),
      spentHours,
    })),
    told.flatMap(({ task }) =>
      task.predecessorIds.flatMap((before) => {
        const beforeId = keys.get(before);
        return beforeId === undefined ? [] : [{ beforeId, afterId: task.drawKey }];
      }),
    ),
    { seed, correlation: correlationPercent / 100, trials },
  );
  return { forecast, trials, tasks: new Map(told.map((each) => [each.task.drawKey, each])) };
}
