import type { Relation } from '../../api/kit/typeReads.js';
import { multiplierOf } from '../../domain/calibration/calibration.js';
import { remainingHours } from '../../domain/estimates/remainingHours.js';
import { scaledEstimate } from '../../domain/forecast/scaledEstimate.js';
import { estimateHistory } from '../calibration/finishedTasks.reads.js';
import { hundredths } from '../standing/standingFacts.js';
import { estimateOf } from '../tasks/estimateOf.js';
import type { TaskEntity } from '../tasks/task.entity.js';
import { hoursOfSlices, readCountedByTask } from '../work/countedByTask.reads.js';
import { thousandths } from './shownHours.js';
import type { TaskRemaining } from './taskRemaining.type.js';

const remaining: Relation = async (context, parents) => {
  const tasks = parents as unknown as TaskEntity[];
  const ids = tasks.map(({ id }) => id);
  const counted = await readCountedByTask(context.database.reader, ids, context.nowMs);
  const { calibration } = await estimateHistory(context);
  const values = tasks.map((task): TaskRemaining => {
    const spentHours = hoursOfSlices(counted.get(task.id));
    const multiplier = multiplierOf(calibration, task.kind);
    const left = remainingHours({
      state: task.status,
      estimate: scaledEstimate(estimateOf(task), multiplier),
      spentHours,
    });
    return {
      kind: left.kind,
      spentHours: hundredths(spentHours),
      multiplier: thousandths(multiplier),
      expectedHours: hundredths(left.meanHours),
      p50Hours: hundredths(left.hoursAt(0.5)),
      p80Hours: hundredths(left.hoursAt(0.8)),
      p95Hours: hundredths(left.hoursAt(0.95)),
      varianceHours: thousandths(left.varianceHours),
    };
  });
  return { values, children: [], childType: null };
};

/** What forecasts add to a task. */
export const forecastRelationsOfTask: Record<string, Relation> = { remaining };
