import type { EarningRule, Evidence, WeightedStep } from '../../domain/earnedValue/earningRule.js';
import type { KeptEvidence } from './checkEvidence.js';
import type { TaskEntity } from './task.entity.js';

/** A task's earning rule as the arithmetic takes it. */
export function earningRuleOf(
  task: Pick<
    TaskEntity,
    | 'earningRule'
    | 'percentComplete'
    | 'percentEvidence'
    | 'percentEvidenceKind'
    | 'percentEvidenceReadingId'
  >,
  steps: readonly WeightedStep[],
): EarningRule {
  switch (task.earningRule) {
    case 'ZERO_HUNDRED':
    case 'FIFTY_FIFTY':
      return { kind: task.earningRule };
    case 'WEIGHTED_STEPS':
      return { kind: task.earningRule, steps };
    case 'PERCENT_WITH_EVIDENCE':
      return {
        kind: task.earningRule,
        percent: task.percentComplete ?? 0,
        evidence: evidenceOf(task),
      };
  }
}

function evidenceOf({
  percentEvidence,
  percentEvidenceKind,
  percentEvidenceReadingId,
}: Pick<TaskEntity, keyof KeptEvidence>): Evidence | null {
  const reference = percentEvidenceReadingId ?? percentEvidence;
  if (reference === null) return null;
  return { kind: percentEvidenceKind ?? 'NOTE', reference };
}
