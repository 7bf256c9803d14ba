export interface LognormalParameters {
  /** Mean of the logarithm. */
  readonly mu: number;
  /** Standard deviation of the logarithm. */
  readonly sigma: number;
}

/** The lognormal with a given mean and coefficient of variation: sigma² = ln(1 + cv²). */
export function lognormalParameters(
  mean: number,
  coefficientOfVariation: number,
): LognormalParameters {
  const variance = Math.log1p(coefficientOfVariation ** 2);
  return { mu: Math.log(mean) - variance / 2, sigma: Math.sqrt(variance) };
}
