import { lognormalParameters } from '../estimates/lognormalParameters.js';
import { lognormalAmount } from './lognormalAmount.js';
import { certainAmount, type UncertainAmount } from './uncertainAmount.js';

/** Parts of one type, all at the one price that is not known. */
export interface HarvestGroup {
  readonly count: number;
  readonly price: UncertainAmount;
}

/**
 * What parts bring together: of each group a binomial number proves fit to sell, at one price. Mean
 * and variance are exact; the sum is taken as the lognormal that has both.
 *
 * Source of the last step: L. F. Fenton, "The Sum of Log-Normal Probability Distributions in Scatter
 * Transmission Systems", IRE Transactions on Communications Systems 8(1), 1960.
 * @param usableShare chance, 0 to 1, that a part proves fit to sell
 */
export function partsWorth(groups: readonly HarvestGroup[], usableShare: number): UncertainAmount {
  let mean = 0;
  let variance = 0;
  for (const { count, price } of groups) {
    const sold = count * usableShare;
    const soldSquare = sold * (1 - usableShare) + sold ** 2;
    mean += sold * price.mean;
    variance += soldSquare * (price.variance + price.mean ** 2) - (sold * price.mean) ** 2;
  }
  if (mean <= 0) return certainAmount(0);
  if (variance <= 0) return certainAmount(mean);
  const { mu, sigma } = lognormalParameters(mean, Math.sqrt(variance) / mean);
  return { ...lognormalAmount(Math.exp(mu), sigma), mean, variance };
}
