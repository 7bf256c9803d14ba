/** The four amounts that earned value compares, all in one unit: hours, or minor units of money. */
export interface EarnedValueAmounts {
  readonly budgetAtCompletion: number;
  readonly earnedValue: number;
  readonly actualCost: number;
  /** What was to be done by now; null when the work was never put on a calendar. */
  readonly plannedValue: number | null;
}

/** A figure is null where it is not defined: a division by nothing, or no plan to compare with. */
export interface EarnedValueFigures {
  readonly percentEarned: number | null;
  readonly costVariance: number;
  readonly scheduleVariance: number | null;
  readonly costPerformanceIndex: number | null;
  /** Drifts to 1 as work is finished however late it is: of little use near the end. */
  readonly schedulePerformanceIndex: number | null;
  readonly estimateAtCompletion: {
    /** The rest costs as the work so far did: BAC / CPI. */
    readonly atRateSoFar: number | null;
    /** The rest costs what was budgeted for it: AC + BAC - EV. */
    readonly atBudgetedRate: number;
    /** The rest suffers from both rates: AC + (BAC - EV) / (CPI SPI). */
    readonly atBothRates: number | null;
  };
  /** EAC at the rate so far, less AC. */
  readonly estimateToComplete: number | null;
  /** BAC less EAC at the rate so far. */
  readonly varianceAtCompletion: number | null;
  /** The rate the rest must keep to meet the budget; null when the budget is spent. */
  readonly toCompleteIndexForBudget: number | null;
  /** The rate the rest must keep to meet the EAC at the rate so far; null when none is left. */
  readonly toCompleteIndexForEstimate: number | null;
}

/**
 * Earned value's figures: variances, indices and forecasts as commonly taught under ANSI/EIA-748 and
 * NASA/SP-2012-599 (Earned Value Management Implementation Handbook, February 2013).
 */
export function earnedValueFigures(amounts: EarnedValueAmounts): EarnedValueFigures {
  const { budgetAtCompletion, earnedValue, actualCost, plannedValue } = amounts;
  const leftToEarn = budgetAtCompletion - earnedValue;
  const costPerformanceIndex = quotient(earnedValue, actualCost);
  const schedulePerformanceIndex =
    plannedValue === null ? null : quotient(earnedValue, plannedValue);

  const atRateSoFar =
    costPerformanceIndex === null ? null : quotient(budgetAtCompletion, costPerformanceIndex);
  const restAtBothRates =
    costPerformanceIndex === null || schedulePerformanceIndex === null
      ? null
      : quotient(leftToEarn, costPerformanceIndex * schedulePerformanceIndex);
  const estimateToComplete = atRateSoFar === null ? null : atRateSoFar - actualCost;

  return {
    percentEarned: quotient(100 * earnedValue, budgetAtCompletion),
    costVariance: earnedValue - actualCost,
    scheduleVariance: plannedValue === null ? null : earnedValue - plannedValue,
    costPerformanceIndex,
    schedulePerformanceIndex,
    estimateAtCompletion: {
      atRateSoFar,
      atBudgetedRate: actualCost + leftToEarn,
      atBothRates: restAtBothRates === null ? null : actualCost + restAtBothRates,
    },
    estimateToComplete,
    varianceAtCompletion: atRateSoFar === null ? null : budgetAtCompletion - atRateSoFar,
    toCompleteIndexForBudget: quotient(leftToEarn, budgetAtCompletion - actualCost),
    toCompleteIndexForEstimate:
      estimateToComplete === null ? null : quotient(leftToEarn, estimateToComplete),
  };
}

function quotient(dividend: number, divisor: number): number | null {
  return divisor > 0 ? dividend / divisor : null;
}
