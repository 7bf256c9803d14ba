import type { Checklist } from '../../db/checklist.js';
import type { EvidenceStanding } from './evidenceStanding.js';

/** What rests on evidence says on which. */
export function checkEvidence(
  check: Checklist,
  standing: EvidenceStanding,
  evidence: string | null,
): void {
  check.that(
    standing === 'CLAIM' || evidence !== null,
    'Name the evidence; without any this is a claim.',
    ['evidence'],
  );
}
