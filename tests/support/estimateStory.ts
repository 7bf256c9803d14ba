import fc from 'fast-check';
import type { TaskToForecast } from '../../src/domain/estimates/forecastRemaining.js';
import type { ThreePointEstimate } from '../../src/domain/estimates/threePointEstimate.js';

export function estimateOf(
  optimisticHours: number,
  likelyHours: number,
  pessimisticHours: number,
): ThreePointEstimate {
  return { optimisticHours, likelyHours, pessimisticHours };
}

/** Any estimate in order, wide, narrow or a single figure. */
export const arbitraryEstimate = fc
  .tuple(
    fc.integer({ min: 0, max: 4000 }),
    fc.integer({ min: 0, max: 4000 }),
    fc.integer({ min: 1, max: 4000 }),
  )
  .map((quarters) => {
    const [a, m, b] = quarters.sort((x, y) => x - y);
    return estimateOf(a / 4, m / 4, b / 4);
  });

export const arbitraryTasks = fc
  .array(
    fc.record({
      state: fc.constantFrom('NOT_STARTED', 'IN_PROGRESS', 'DONE', 'DROPPED'),
      estimate: fc.option(arbitraryEstimate, { nil: null, freq: 8 }),
      spentHours: fc.integer({ min: 0, max: 1500 }),
    }),
    { maxLength: 8 },
  )
  .map((rows) => rows.map((row, index): TaskToForecast => ({ ...row, id: `task-${index}` })));
