import type { ThreePointEstimate } from '../../domain/estimates/threePointEstimate.js';
import type { TaskEntity } from './task.entity.js';

/** A task's estimate, kept in whole minutes, in hours. */
export const estimateOf = (
  task: Pick<TaskEntity, 'optimisticMinutes' | 'likelyMinutes' | 'pessimisticMinutes'>,
): ThreePointEstimate => ({
  optimisticHours: task.optimisticMinutes / 60,
  likelyHours: task.likelyMinutes / 60,
  pessimisticHours: task.pessimisticMinutes / 60,
});
