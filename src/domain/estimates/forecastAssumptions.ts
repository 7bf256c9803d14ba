import { LEAST_VARIATION_OF_A_REFUTED_ESTIMATE } from './remainingHours.js';

/** What a forecast of hours left takes for granted, in sentences to show beside it. */
export function forecastAssumptions(facts: {
  readonly trials: number;
  readonly unestimatedCount: number;
  readonly refutedCount: number;
}): string[] {
  const { trials, unestimatedCount, refutedCount } = facts;
  const assumptions = [
    'Each three-point estimate is read as a PERT beta over the whole task; what is left is that, ' +
      'given that the hours spent so far did not finish it.',
    'Tasks run over or under independently of one another. If one cause delays several, the ' +
      'spread is wider than shown.',
    `Percentiles are of ${trials} seeded trials (xoshiro128** seeded by MurmurHash3), by ` +
      'Hyndman and Fan definition 7.',
  ];
  if (refutedCount > 0) {
    const tasks = refutedCount === 1 ? '1 task has' : `${refutedCount} tasks have`;
    assumptions.push(
      `${tasks} passed the pessimistic figure, so the estimate is refuted; what is left is taken ` +
        'from the tail of a lognormal of the same mean and variance, with a spread of at least ' +
        `${LEAST_VARIATION_OF_A_REFUTED_ESTIMATE * 100} % of the mean (our own choice). ` +
        'A new estimate would be better.',
    );
  }
  if (unestimatedCount > 0) {
    const tasks =
      unestimatedCount === 1 ? '1 open task has' : `${unestimatedCount} open tasks have`;
    assumptions.push(`${tasks} no estimate and no hours in this forecast.`);
  }
  return assumptions;
}
