import {
  earnedValueFigures,
  type EarnedValueFigures,
} from '../../domain/earnedValue/earnedValueFigures.js';
import type { EarnedValueAmounts } from '../../domain/earnedValue/earnedValueFigures.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { hundredths } from '../standing/standingFacts.js';
import type { EarnedHours, EarnedMoney, EarnedValueIndices } from './earnedValue.type.js';

const orNull = (value: number | null, round: (value: number) => number): number | null =>
  value === null ? null : round(value);

const tenThousandths = (value: number): number => Math.round(value * 10_000) / 10_000;

const indicesOf = (figures: EarnedValueFigures): EarnedValueIndices => ({
  costPerformance: orNull(figures.costPerformanceIndex, tenThousandths),
  schedulePerformance: orNull(figures.schedulePerformanceIndex, tenThousandths),
  toCompleteForBudget: orNull(figures.toCompleteIndexForBudget, tenThousandths),
});

/** Earned value in hours as the API shows it. */
export function shownEarnedHours(amounts: EarnedValueAmounts): EarnedHours {
  const figures = earnedValueFigures(amounts);
  const { atRateSoFar, atBudgetedRate, atBothRates } = figures.estimateAtCompletion;
  return {
    budgetHours: hundredths(amounts.budgetAtCompletion),
    plannedHours: orNull(amounts.plannedValue, hundredths),
    earnedHours: hundredths(amounts.earnedValue),
    spentHours: hundredths(amounts.actualCost),
    costVarianceHours: hundredths(figures.costVariance),
    scheduleVarianceHours: orNull(figures.scheduleVariance, hundredths),
    indices: indicesOf(figures),
    estimateAtCompletionHours: orNull(atRateSoFar, hundredths),
    estimateAtBudgetedRateHours: hundredths(atBudgetedRate),
    estimateAtBothRatesHours: orNull(atBothRates, hundredths),
  };
}

/** The same in money: the budget is earned and planned in proportion to the hours. */
export function shownEarnedMoney(
  hours: EarnedValueAmounts,
  budget: { minorUnits: number; currency: string },
  spentMinorUnits: number,
): EarnedMoney {
  const { minorUnits, currency } = budget;
  const share = (value: number) =>
    hours.budgetAtCompletion > 0 ? Math.round((minorUnits * value) / hours.budgetAtCompletion) : 0;
  const amounts = {
    budgetAtCompletion: minorUnits,
    earnedValue: share(hours.earnedValue),
    actualCost: spentMinorUnits,
    plannedValue: orNull(hours.plannedValue, share),
  };
  const figures = earnedValueFigures(amounts);
  const { atRateSoFar } = figures.estimateAtCompletion;
  const shown = (value: number) => moneyAmount(Math.round(value), currency);
  return {
    budget: shown(minorUnits),
    planned: amounts.plannedValue === null ? null : shown(amounts.plannedValue),
    earned: shown(amounts.earnedValue),
    spent: shown(spentMinorUnits),
    indices: indicesOf(figures),
    estimateAtCompletion: atRateSoFar === null ? null : shown(atRateSoFar),
  };
}
