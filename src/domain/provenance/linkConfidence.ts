/** What bears on one statement about the past. */
export interface EvidenceWeight {
  readonly bearing: 'SUPPORTS' | 'CONTRADICTS';
  readonly strength: 'WEAK' | 'MODERATE' | 'STRONG';
  /** A person's word, a seller's for one, is itself a claim and supports none. */
  readonly isStatement: boolean;
  /** Two pieces of the same source are one piece: what sort of evidence it is. */
  readonly kind: string;
}

export type ConfidenceLevel =
  'CLAIMED' | 'WEAKLY_SUPPORTED' | 'SUPPORTED' | 'WELL_SUPPORTED' | 'DISPUTED' | 'CONTRADICTED';

export interface LinkConfidence {
  readonly level: ConfidenceLevel;
  /** The rule that gave the level, in a sentence. */
  readonly rule: string;
}

const weights = { WEAK: 1, MODERATE: 2, STRONG: 3 } as const;

const rules: Readonly<Record<ConfidenceLevel, string>> = {
  CLAIMED: 'Nothing but people’s word: a claim until evidence bears on it.',
  WEAKLY_SUPPORTED: 'Only weak evidence supports it.',
  SUPPORTED: 'One sort of evidence of moderate strength supports it, and none speaks against it.',
  WELL_SUPPORTED:
    'Strong evidence, or moderate evidence of two sorts, supports it, and none speaks against it.',
  DISPUTED: 'Evidence speaks against it, and none stronger than what supports it.',
  CONTRADICTED: 'The strongest evidence that bears on it speaks against it.',
};

/**
 * How far a link of the chain can be relied on. (The steps are common practice of provenance
 * research, no source; the rule is always shown with the level.)
 */
export function linkConfidence(evidence: readonly EvidenceWeight[]): LinkConfidence {
  const level = levelOf(evidence.filter(({ isStatement }) => !isStatement));
  return { level, rule: rules[level] };
}

function levelOf(evidence: readonly EvidenceWeight[]): ConfidenceLevel {
  const supporting = evidence.filter(({ bearing }) => bearing === 'SUPPORTS');
  const best = strongest(supporting);
  const worst = strongest(evidence.filter(({ bearing }) => bearing === 'CONTRADICTS'));
  if (worst > best) return 'CONTRADICTED';
  if (worst > 0) return 'DISPUTED';
  if (best === 0) return 'CLAIMED';
  if (best === weights.WEAK) return 'WEAKLY_SUPPORTED';
  const sorts = new Set(
    supporting.filter(({ strength }) => strength !== 'WEAK').map(({ kind }) => kind),
  );
  return best === weights.STRONG || sorts.size > 1 ? 'WELL_SUPPORTED' : 'SUPPORTED';
}

const strongest = (evidence: readonly EvidenceWeight[]): number =>
  Math.max(0, ...evidence.map(({ strength }) => weights[strength]));
