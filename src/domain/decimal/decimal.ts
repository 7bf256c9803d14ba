/** An exact decimal number: coefficient × 10^−decimals. */
export interface Decimal {
  readonly coefficient: bigint;
  readonly decimals: number;
}
