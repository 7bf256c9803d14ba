import type { StepOutcome } from '../../domain/bringUp/stepOutcome.js';

/** What a step of a bring-up said before it was put right. */
export interface StepVersion {
  holds: boolean[];
  readings: { quantity: string; value: string; unit: string }[];
  /** As the limits judged it when it was put right. */
  outcome: StepOutcome;
  doneAt: string;
  note: string | null;
  replacedAt: string;
  /** What was wrong with it. */
  reason: string;
  wasNeverDone: boolean;
}
