/**
 * How the three points of an estimate are read as a distribution of hours.
 *
 * PERT_BETA: the beta on optimistic to pessimistic with alpha = 1 + 4(m - a)/(b - a), alpha + beta
 * = 6 (Operations Research 7(5), 1959, p. 646-669). TRIANGULAR: straight lines from both ends to
 * the likely figure; it gives the ends more weight. LOGNORMAL: the mean and variance of the PERT
 * beta, without an upper end: the pessimistic figure may be passed. The choice of these two moments
 * is our own, no source.
 */
export type EstimateDistribution = 'PERT_BETA' | 'TRIANGULAR' | 'LOGNORMAL';
