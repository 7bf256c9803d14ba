import type { ConditionTier } from './limit.js';
import type { VerdictWord } from './verdict.js';

/** A reading on a component, after its verdict. */
export interface JudgedReading {
  readonly readingId: string;
  readonly quantityCode: string;
  readonly tier: ConditionTier;
  readonly verdict: VerdictWord;
  readonly takenAtMs: number;
}
