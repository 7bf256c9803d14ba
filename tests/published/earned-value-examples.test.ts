import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { earnedShare } from '../../src/domain/earnedValue/earnedShare.js';
import { earnedValueFigures } from '../../src/domain/earnedValue/earnedValueFigures.js';

// Source: status report at the end of period 12 in the exercises of a textbook on project management
// (task table with EV, AC, PV, CV, SV; indices CPI, SPI and PCIB; EACf and VAC: the notation of Larson
// and Gray, Project Management: The Managerial Process, chapter 13), as worked and printed in
// "HW 9 IE5411" (coursehero.com/file/pbt8e). Hundreds of dollars; tasks 5 and 6 are half done.
describe('the status report of a textbook, eight tasks at the end of period 12', () => {
  const half = { kind: 'FIFTY_FIFTY' } as const;
  const whole = { kind: 'ZERO_HUNDRED' } as const;
  const table = [
    { budget: 8, rule: whole, state: 'DONE', ac: 10, pv: 8, cv: -2, sv: 0 },
    { budget: 40, rule: whole, state: 'DONE', ac: 50, pv: 40, cv: -10, sv: 0 },
    { budget: 30, rule: whole, state: 'DONE', ac: 40, pv: 30, cv: -10, sv: 0 },
    { budget: 20, rule: whole, state: 'DONE', ac: 40, pv: 20, cv: -20, sv: 0 },
    { budget: 40, rule: half, state: 'IN_PROGRESS', ac: 30, pv: 20, cv: -10, sv: 0 },
    { budget: 60, rule: half, state: 'IN_PROGRESS', ac: 40, pv: 40, cv: -10, sv: -10 },
    { budget: 20, rule: whole, state: 'NOT_STARTED', ac: 0, pv: 0, cv: 0, sv: 0 },
    { budget: 30, rule: whole, state: 'NOT_STARTED', ac: 0, pv: 0, cv: 0, sv: 0 },
  ] as const;
  const earnedBy = ({ budget, rule, state }: (typeof table)[number]): number =>
    budget * earnedShare(rule, state).share;

  it.each(table)('a task of $budget: cost variance $cv, schedule variance $sv', (task) => {
    const figures = earnedValueFigures({
      budgetAtCompletion: task.budget,
      earnedValue: earnedBy(task),
      actualCost: task.ac,
      plannedValue: task.pv,
    });
    expect(figures).toMatchObject({ costVariance: task.cv, scheduleVariance: task.sv });
  });

  it('all of it: 148 earned of 248 for 210 where 158 was planned; 352 at completion', () => {
    const sum = (value: (task: (typeof table)[number]) => number): number =>
      table.reduce((total, task) => total + value(task), 0);
    const figures = earnedValueFigures({
      budgetAtCompletion: sum(({ budget }) => budget),
      earnedValue: sum(earnedBy),
      actualCost: sum(({ ac }) => ac),
      plannedValue: sum(({ pv }) => pv),
    });
    expect(figures).toMatchObject({ costVariance: -62, scheduleVariance: -10 });
    expect(figures.costPerformanceIndex).toBeCloseTo(0.7047, 3);
    expect(figures.schedulePerformanceIndex).toBeCloseTo(0.94, 2);
    expect(figures.percentEarned).toBeCloseTo(60, 0);
    expect(figures.estimateAtCompletion.atRateSoFar).toBeCloseTo(352, 0);
    expect(figures.varianceAtCompletion).toBeCloseTo(-104, 0);
  });
});

// Source: exercise of a textbook (chapter 7, activity 1) as worked and printed at studylib.net,
// document 9750501: PV 23,000, EV 20,000, AC 25,000, BAC 120,000.
it('the textbook project of one year: CV -5,000, SV -3,000, CPI 0.8, SPI 0.8696, EAC 150,000', () => {
  const figures = earnedValueFigures({
    budgetAtCompletion: 120_000,
    plannedValue: 23_000,
    earnedValue: 20_000,
    actualCost: 25_000,
  });
  expect(figures).toMatchObject({ costVariance: -5000, scheduleVariance: -3000 });
  expect(figures.costPerformanceIndex).toBeCloseTo(0.8, 10);
  expect(figures.schedulePerformanceIndex).toBeCloseTo(0.8696, 4);
  expect(figures.estimateAtCompletion.atRateSoFar).toBeCloseTo(150_000, 6);
});

// Source: NASA, EVM Tutorial (nasa.gov/evm/tutorial; before, evm.nasa.gov/tutoriala.html with its
// second page): a task of $240k over 24 months; at the twelfth, $100k was planned (41.6 % of the
// budget), $60k earned, $110k spent. Printed: $60k - $100k = ($40k), $60k - $110k = ($50k).
it('the task of the NASA tutorial: 40 behind schedule, 50 over cost', () => {
  const [budgetAtCompletion, plannedValue] = [240, 100];
  const figures = earnedValueFigures({
    budgetAtCompletion,
    plannedValue,
    earnedValue: 60,
    actualCost: 110,
  });
  expect(figures).toMatchObject({ scheduleVariance: -40, costVariance: -50 });
  const onPlan = earnedValueFigures({
    budgetAtCompletion,
    plannedValue,
    earnedValue: plannedValue,
    actualCost: 110,
  });
  // Printed cut off, not rounded.
  expect(Math.floor((onPlan.percentEarned ?? NaN) * 10) / 10).toBe(41.6);
});

// Source: the fence exercise of R. Mulcahy, PMP Exam Prep, p. 210, as worked and printed at
// studylib.net, document 5898152: four sides, a day and $1,000 each, at the end of the third day.
it('the fence of four sides: 2,500 earned of 4,000 for 2,800 where 3,000 was planned', () => {
  const sides = [
    { state: 'DONE', spent: 1000, planned: 1000 },
    { state: 'DONE', spent: 1200, planned: 1000 },
    { state: 'IN_PROGRESS', spent: 600, planned: 1000 },
    { state: 'NOT_STARTED', spent: 0, planned: 0 },
  ] as const;
  const sum = (value: (side: (typeof sides)[number]) => number): number =>
    sides.reduce((total, side) => total + value(side), 0);
  const figures = earnedValueFigures({
    budgetAtCompletion: 4000,
    plannedValue: sum(({ planned }) => planned),
    earnedValue: sum(({ state }) => 1000 * earnedShare({ kind: 'FIFTY_FIFTY' }, state).share),
    actualCost: sum(({ spent }) => spent),
  });
  expect(figures).toMatchObject({ costVariance: -300, scheduleVariance: -500 });
  expect(figures.costPerformanceIndex).toBeCloseTo(0.893, 3);
  expect(figures.schedulePerformanceIndex).toBeCloseTo(0.833, 3);
  // Printed from the rounded index: 4,000 / .893.
  for (const [figure, printed] of [
    [figures.estimateAtCompletion.atRateSoFar, 4479],
    [figures.estimateToComplete, 1679],
    [figures.varianceAtCompletion, -479],
  ] as const) {
    expect(Math.abs((figure ?? NaN) - printed)).toBeLessThan(4479 * (0.0005 / 0.893));
  }
});

// Source: Defense Acquisition University, Earned Value Management "Gold Card" (as stored at
// studylib.net, documents 8870621 and 8870622), formulas as printed there:
// EAC(CPI) = ACWP + (BAC - BCWP) / CPI; EAC(composite) = ACWP + (BAC - BCWP) / (CPI x SPI);
// VAC = BAC - EAC; TCPI(EAC) = (BAC - BCWP) / (EAC - ACWP); % complete = BCWP / BAC x 100.
it('every figure is that of the card of the Defense Acquisition University', () => {
  const amount = fc.integer({ min: 1, max: 100_000 });
  fc.assert(
    fc.property(
      amount,
      fc.integer({ min: 1, max: 99 }),
      amount,
      amount,
      (bac, percent, spent, planned) => {
        const earned = (bac * percent) / 100;
        const figures = earnedValueFigures({
          budgetAtCompletion: bac,
          earnedValue: earned,
          actualCost: spent,
          plannedValue: planned,
        });
        const [cpi, spi] = [earned / spent, earned / planned];
        const eac = spent + (bac - earned) / cpi;
        const isNear = (found: number | null, printed: number) => {
          expect(found).not.toBeNull();
          const slack = 1e-9 * Math.max(1, Math.abs(printed), Math.abs(eac));
          expect(Math.abs((found ?? NaN) - printed)).toBeLessThanOrEqual(slack);
        };
        isNear(figures.costPerformanceIndex, cpi);
        isNear(figures.schedulePerformanceIndex, spi);
        isNear(figures.percentEarned, (earned / bac) * 100);
        isNear(figures.estimateAtCompletion.atRateSoFar, eac);
        isNear(figures.estimateAtCompletion.atBothRates, spent + (bac - earned) / (cpi * spi));
        isNear(figures.varianceAtCompletion, bac - eac);
        isNear(figures.toCompleteIndexForEstimate, (bac - earned) / (eac - spent));
      },
    ),
  );
});
