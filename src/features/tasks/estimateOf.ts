import type { ThreePointEstimate } from '../../domain/estimates/threePointEstimate.js';
import type { TaskEntity } from './task.entity.js';

/** A task's estimate, kept in whole minutes, in hours. */
export const estimateOf = (
  task: Pick<TaskEntity, 'optimisticMinutes' | 'likelyMinutes' | 'pessimisticMinutes'> &
    Partial<Pick<TaskEntity, 'estimateDistribution'>>,
): ThreePointEstimate => ({
  optimisticHours: task.optimisticMinutes / 60,
  likelyHours: task.likelyMinutes / 60,
  pessimisticHours: task.pessimisticMinutes / 60,
  // Changes that were written down before there was a choice do not name it.
  distribution: task.estimateDistribution ?? 'PERT_BETA',
});
