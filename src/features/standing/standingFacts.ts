import type { Basis as DomainBasis } from '../../domain/basis.js';
import type { ReadinessStanding } from '../../domain/readiness/readinessStanding.js';
import type { Completeness } from './completeness.type.js';
import type { Completion } from './completion.type.js';
import type { CostToDate } from './costToDate.type.js';
import type { HoursInvested } from './hoursInvested.type.js';
import type { RemainingWork } from './remainingWork.type.js';

/** The answers that hold for a project as for an item. */
export interface WorkStanding {
  hours: HoursInvested;
  completion: Completion;
  remaining: RemainingWork;
}

/** Everything that is computed of one item, as it is kept beside it. */
export interface StandingFacts extends WorkStanding {
  completeness: Completeness;
  cost: CostToDate;
  /** Without the lapse of checks, which the clock decides when it is read. */
  readiness: ReadinessStanding;
  /** By project id. */
  projects: Record<string, WorkStanding & { cost: CostToDate }>;
}

/** The API's form of the domain's `basis`. */
export const shownBasis = (
  basis: Omit<DomainBasis, 'asOfMs'>,
  nowMs: number,
  assumptions: readonly string[] = [],
) => ({
  method: basis.method,
  counted: basis.counted.filter(({ count }) => count > 0),
  assumptions: [...assumptions],
  asOf: new Date(nowMs).toISOString(),
});

/** To the hundredth: 36 seconds are the least that is shown of an hour. */
export const hundredths = (value: number): number => Math.round(value * 100) / 100;
