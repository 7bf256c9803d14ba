import { describedEnum } from '../../api/kit/describedEnum.js';

export const EstimateDistribution = describedEnum(
  'EstimateDistribution',
  'How the three points of an estimate are read as a distribution.',
  {
    PERT_BETA: 'The beta on optimistic to pessimistic, its mean (a + 4m + b) / 6: the usual one.',
    TRIANGULAR: 'Straight lines to the likely figure; the ends get more weight than by the beta.',
    LOGNORMAL:
      'Mean and variance of the beta, without an end: the pessimistic figure may be passed.',
  },
);
export type EstimateDistribution = keyof typeof EstimateDistribution;
