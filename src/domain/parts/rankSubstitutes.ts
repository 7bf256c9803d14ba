/** From the best: what a person wrote down and what was computed use the same words. */
export const gradeOrder = [
  'DIRECT',
  'PARALLEL_HEATERS_ONLY',
  'WITH_CHANGES',
  'LAST_RESORT',
] as const;
export type SubstitutionGrade = (typeof gradeOrder)[number];

export interface RankedPart {
  readonly designation: string;
  /** How many are on the shelf and not put aside. */
  readonly inStock: number;
  /** null while what it rests on is not confirmed: after every proven grade. */
  readonly grade: SubstitutionGrade | null;
  /** In minor units, for one; null when no price was noted. */
  readonly lastPriceMinorUnits: number | null;
  /** ISO 4217; prices are compared in one currency only. */
  readonly lastPriceCurrency: string | null;
}

/** What is in stock first, then by grade, then the cheaper by the price last noted, then by name. */
export function rankSubstitutes<Candidate extends RankedPart>(
  candidates: readonly Candidate[],
): Candidate[] {
  const rank = ({ grade }: Candidate): number =>
    grade === null ? gradeOrder.length : gradeOrder.indexOf(grade);
  return [...candidates].sort(
    (one, other) =>
      Number(other.inStock > 0) - Number(one.inStock > 0) ||
      rank(one) - rank(other) ||
      byPrice(one, other) ||
      (one.designation < other.designation ? -1 : 1),
  );
}

/** Amounts of two currencies are not compared: their order is by currency code. */
function byPrice(one: RankedPart, other: RankedPart): number {
  if (one.lastPriceMinorUnits === null || other.lastPriceMinorUnits === null) {
    return Number(one.lastPriceMinorUnits === null) - Number(other.lastPriceMinorUnits === null);
  }
  const [mine, theirs] = [one.lastPriceCurrency ?? '', other.lastPriceCurrency ?? ''];
  if (mine !== theirs) return mine < theirs ? -1 : 1;
  return one.lastPriceMinorUnits - other.lastPriceMinorUnits;
}
