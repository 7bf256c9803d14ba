import { Refusal } from '../../db/refusal.js';
import type { RowSource } from '../../db/rowSource.js';
import { plannedDates, type PlannedTask } from '../../domain/earnedValue/plannedDates.js';
import { meanOfEstimate } from '../../domain/earnedValue/taskRecord.js';
import { taskOrder } from '../../domain/network/taskOrder.js';
import type { IsAway } from '../../domain/pace/awayDays.js';
import type { ProjectEntity } from '../projects/project.entity.js';
import { readTasksForItems } from '../tasks/tasksForItems.reads.js';

/**
 * The tasks of a project on a calendar, in an order in which they can be done. What is done already
 * was planned for the first day; what was dropped is in no plan.
 * @throws Refusal when the plan would last over a hundred years.
 */
export async function planTasks(
  source: RowSource,
  { id, itemId }: ProjectEntity,
  pace: { startsOn: string; hoursPerWeek: number; isAway: IsAway },
): Promise<PlannedTask[]> {
  const all = await readTasksForItems(source.rows.bind(source), source.dialect, [itemId]);
  const tasks = all.filter(({ projectId, state }) => projectId === id && state !== 'DROPPED');
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const edges = tasks.flatMap((task) =>
    task.predecessorIds.map((beforeId) => ({ beforeId, afterId: task.id })),
  );
  const ordered = taskOrder([...byId.keys()], edges).flatMap((taskId) => byId.get(taskId) ?? []);
  const budgeted = ordered.map((task) => ({
    taskId: task.id,
    budgetHours: meanOfEstimate(task.estimate),
    isDone: task.state === 'DONE',
  }));
  const done = budgeted
    .filter(({ isDone }) => isDone)
    .map(({ taskId, budgetHours }) => ({
      taskId,
      budgetHours,
      plannedStartOn: pace.startsOn,
      plannedFinishOn: pace.startsOn,
    }));
  try {
    return [
      ...done,
      ...plannedDates(
        budgeted.filter(({ isDone }) => !isDone),
        pace,
      ),
    ];
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw Refusal.conflict('At so few hours a week this plan would last over a hundred years.', [
      'hoursPerWeek',
    ]);
  }
}
