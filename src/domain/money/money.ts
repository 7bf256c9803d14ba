/** An amount of one currency, never a float: 12.50 EUR is { minorUnits: 1250, currency: 'EUR' }. */
export interface Money {
  /** A whole number within ±(2^53 − 1), so kept exactly; negative for a refund. */
  readonly minorUnits: number;
  /** ISO 4217 alphabetic code. How many decimals it has is the caller's table, not ours. */
  readonly currency: string;
}
