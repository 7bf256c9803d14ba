import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completion } from '../../src/domain/earnedValue/completion.js';
import { earnedShare } from '../../src/domain/earnedValue/earnedShare.js';
import {
  earnedValueFigures,
  type EarnedValueFigures,
} from '../../src/domain/earnedValue/earnedValueFigures.js';

function expectFigures(figures: EarnedValueFigures, expected: object): void {
  for (const [name, value] of Object.entries(expected)) {
    const figure = name
      .split('.')
      .reduce<unknown>((held, key) => (held as Record<string, unknown>)[key], figures);
    expect(figure, name).toBeTypeOf('number');
    expect(Math.abs((figure as number) - value), name).toBeLessThanOrEqual(
      Math.max(0.00005, 0.000001 * Math.abs(value)),
    );
  }
}

// Source: worked problem printed at ceboardexamgenerator.com (BAC 5 million, EV 1.5, AC 1.8).
it('the board examination problem: a budget of 5 million, 1.5 earned for 1.8', () => {
  expectFigures(
    earnedValueFigures({
      budgetAtCompletion: 5_000_000,
      earnedValue: 1_500_000,
      actualCost: 1_800_000,
      plannedValue: null,
    }),
    {
      costPerformanceIndex: 0.8333,
      'estimateAtCompletion.atRateSoFar': 6_000_000,
      'estimateAtCompletion.atBudgetedRate': 5_300_000,
      estimateToComplete: 4_200_000,
      varianceAtCompletion: -1_000_000,
      toCompleteIndexForBudget: 1.09375,
    },
  );
});

// Source: the same page, another problem, which prints CPI = .857.
it('the board examination problem of 3 million earned for 3.5', () => {
  const { costPerformanceIndex } = earnedValueFigures({
    budgetAtCompletion: 5_000_000,
    earnedValue: 3_000_000,
    actualCost: 3_500_000,
    plannedValue: null,
  });
  expect(costPerformanceIndex).toBeCloseTo(0.857, 3);
});

// No publication: computed from the usual formulas with another program.
it('a budget of 10,000 with 4,000 planned, 3,500 earned for 4,200: every figure', () => {
  expectFigures(
    earnedValueFigures({
      budgetAtCompletion: 10_000,
      plannedValue: 4_000,
      earnedValue: 3_500,
      actualCost: 4_200,
    }),
    {
      percentEarned: 35,
      costVariance: -700,
      scheduleVariance: -500,
      costPerformanceIndex: 0.83333,
      schedulePerformanceIndex: 0.875,
      'estimateAtCompletion.atRateSoFar': 12_000,
      'estimateAtCompletion.atBudgetedRate': 10_700,
      'estimateAtCompletion.atBothRates': 13_114.2857,
      estimateToComplete: 7_800,
      varianceAtCompletion: -2_000,
      toCompleteIndexForBudget: 1.12069,
      toCompleteIndexForEstimate: 0.83333,
    },
  );
});

describe('figures that are not defined', () => {
  it('are null, not infinite, before anything is spent', () => {
    expect(
      earnedValueFigures({
        budgetAtCompletion: 40,
        earnedValue: 0,
        actualCost: 0,
        plannedValue: 0,
      }),
    ).toEqual({
      percentEarned: 0,
      costVariance: 0,
      scheduleVariance: 0,
      costPerformanceIndex: null,
      schedulePerformanceIndex: null,
      estimateAtCompletion: { atRateSoFar: null, atBudgetedRate: 40, atBothRates: null },
      estimateToComplete: null,
      varianceAtCompletion: null,
      toCompleteIndexForBudget: 1,
      toCompleteIndexForEstimate: null,
    });
  });

  it('are null when the budget is spent, when nothing is earned, when nothing was planned', () => {
    const spent = earnedValueFigures({
      budgetAtCompletion: 40,
      earnedValue: 0,
      actualCost: 40,
      plannedValue: null,
    });
    expect(spent.toCompleteIndexForBudget).toBeNull();
    const overspent = earnedValueFigures({
      budgetAtCompletion: 40,
      earnedValue: 30,
      actualCost: 50,
      plannedValue: null,
    });
    expect(overspent.toCompleteIndexForBudget).toBeNull();
    expect(spent.costPerformanceIndex).toBe(0);
    expect(spent.estimateAtCompletion.atRateSoFar).toBeNull();
    expect(spent.scheduleVariance).toBeNull();
    expect(spent.schedulePerformanceIndex).toBeNull();
  });

  it('never hold an infinity or a NaN', () => {
    const amount = fc.integer({ min: 0, max: 1000 });
    fc.assert(
      fc.property(amount, amount, amount, fc.option(amount), (budget, earned, cost, planned) => {
        const figures = earnedValueFigures({
          budgetAtCompletion: budget,
          earnedValue: Math.min(budget, earned),
          actualCost: cost,
          plannedValue: planned,
        });
        const { estimateAtCompletion, ...others } = figures;
        for (const figure of [...Object.values(others), ...Object.values(estimateAtCompletion)]) {
          expect(figure === null || Number.isFinite(figure)).toBe(true);
        }
      }),
    );
  });
});

// Law: where EAC = BAC / CPI, the rate that the rest must keep to meet it is the rate so far.
it('the rate needed for the estimate at the rate so far is that rate', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 100_000 }),
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      fc.integer({ min: 1, max: 100_000 }),
      (budgetAtCompletion, share, actualCost) => {
        const figures = earnedValueFigures({
          budgetAtCompletion,
          earnedValue: budgetAtCompletion * share,
          actualCost,
          plannedValue: null,
        });
        const ratio = figures.toCompleteIndexForEstimate! / figures.costPerformanceIndex!;
        expect(ratio).toBeCloseTo(1, 8);
      },
    ),
  );
});

// No publication: computed from the definition of weighted milestones (40 h; .1 .2 .4 .3).
it('forty hours in four weighted steps, the first two done, have earned 12', () => {
  const steps = [0.1, 0.2, 0.4, 0.3].map((weight, index) => ({
    name: `step ${index + 1}`,
    weight,
    isDone: index < 2,
  }));
  const { earnedHours } = completion([
    {
      id: 'recap',
      state: 'IN_PROGRESS',
      earningRule: { kind: 'WEIGHTED_STEPS', steps },
      estimate: { optimisticHours: 40, likelyHours: 40, pessimisticHours: 40 },
    },
  ]);
  expect(earnedHours).toBeCloseTo(12, 12);
});

// Source: the 0/100 example printed at symplprocess: a $5,000 package earns 0 until accepted.
it('a 5,000 package under 0/100 earns nothing until it is accepted, then 5,000', () => {
  const rule = { kind: 'ZERO_HUNDRED' } as const;
  const earned = (state: 'IN_PROGRESS' | 'DONE') => 5000 * earnedShare(rule, state).share;
  expect(earned('IN_PROGRESS')).toBe(0);
  expect(earned('DONE')).toBe(5000);
  const slipped = earnedValueFigures({
    budgetAtCompletion: 5000,
    earnedValue: earned('IN_PROGRESS'),
    actualCost: 0,
    plannedValue: 5000,
  });
  expect(slipped.scheduleVariance).toBe(-5000);
});
