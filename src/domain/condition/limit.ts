/**
 * Where a reading was taken: out of the set on a tester, or in its circuit at working voltages.
 * A tester finds obvious duds; only the circuit proves a tube (common practice, no source).
 */
export type ConditionTier = 'TESTER' | 'IN_CIRCUIT';

/** What a quantity may be, inclusive at both ends, in one unit. */
export interface Limit {
  readonly quantityCode: string;
  /** Decimal string; null where there is no lower end. */
  readonly lower: string | null;
  /** Decimal string; null where there is no upper end. */
  readonly upper: string | null;
  /** UCUM code. */
  readonly unitCode: string;
  /** null: applies wherever the reading was taken. */
  readonly tier: ConditionTier | null;
  /** Where the figure comes from: a data sheet, a handbook page, the collector's own rule. */
  readonly source: string | null;
}
