import type { ThreePointEstimate } from '../estimates/threePointEstimate.js';

/** A task that is done, with what it was thought to take when work on it began. */
export interface FinishedTask {
  readonly id: string;
  readonly kind: string;
  readonly estimate: ThreePointEstimate;
  /** Above 0: a task without recorded hours says nothing. */
  readonly actualHours: number;
  readonly finishedAtMs: number;
}
