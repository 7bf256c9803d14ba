import type { EarningRule, Evidence, WeightedStep } from '../../domain/earnedValue/earningRule.js';
import type { TaskEntity } from './task.entity.js';

/** A task's earning rule as the arithmetic takes it. */
export function earningRuleOf(
  task: Pick<TaskEntity, 'earningRule' | 'percentComplete' | 'percentEvidence'> & MaybeEvidence,
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

/** What was kept before evidence had kinds is a note. */
type MaybeEvidence = Partial<
  Pick<
    TaskEntity,
    'percentEvidenceKind' | 'percentEvidenceReadingId' | 'percentEvidenceAttachmentId'
  >
>;

function evidenceOf(task: Pick<TaskEntity, 'percentEvidence'> & MaybeEvidence): Evidence | null {
  const reference =
    task.percentEvidenceReadingId ?? task.percentEvidenceAttachmentId ?? task.percentEvidence;
  if (reference === null) return null;
  return { kind: task.percentEvidenceKind ?? 'NOTE', reference };
}
