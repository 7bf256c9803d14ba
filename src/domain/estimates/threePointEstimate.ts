import type { EstimateDistribution } from './estimateDistribution.js';

/** What a task may take, in hours, from its start: if all goes well, most likely, if little does. */
export interface ThreePointEstimate {
  readonly optimisticHours: number;
  readonly likelyHours: number;
  readonly pessimisticHours: number;
  /** PERT_BETA when left out. */
  readonly distribution?: EstimateDistribution;
}
