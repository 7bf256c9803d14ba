import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completion, type BudgetedTask } from '../../src/domain/earnedValue/completion.js';
import { earnedShare } from '../../src/domain/earnedValue/earnedShare.js';
import type { EarningRule } from '../../src/domain/earnedValue/earningRule.js';
import { earningRuleProblems } from '../../src/domain/earnedValue/earningRuleProblems.js';
import { arbitraryEstimate, estimateOf } from '../support/estimateStory.js';

const zeroHundred: EarningRule = { kind: 'ZERO_HUNDRED' };
const fiftyFifty: EarningRule = { kind: 'FIFTY_FIFTY' };
const note = { kind: 'NOTE', reference: 'front panel and two of three shields' } as const;
const percent = (value: number, evidence: typeof note | null): EarningRule => ({
  kind: 'PERCENT_WITH_EVIDENCE',
  percent: value,
  evidence,
});
const task = (told: Partial<BudgetedTask>): BudgetedTask => ({
  id: 'task',
  state: 'IN_PROGRESS',
  earningRule: zeroHundred,
  estimate: estimateOf(2, 4, 12),
  ...told,
});

describe('what a task has earned', () => {
  it.each([
    ['0/100, begun', zeroHundred, 'IN_PROGRESS', 0],
    ['0/100, done', zeroHundred, 'DONE', 1],
    ['50/50, not begun', fiftyFifty, 'NOT_STARTED', 0],
    ['50/50, begun', fiftyFifty, 'IN_PROGRESS', 0.5],
    ['50/50, done', fiftyFifty, 'DONE', 1],
    ['50/50, given up', fiftyFifty, 'DROPPED', 0],
    ['60 % with a note', percent(60, note), 'IN_PROGRESS', 0.6],
    ['60 % on somebody’s word', percent(60, null), 'IN_PROGRESS', 0],
  ] as const)('%s', (_told, rule, state, share) => {
    expect(earnedShare(rule, state).share).toBe(share);
  });

  it('on a claim that nothing shows is nothing, and says so', () => {
    expect(earnedShare(percent(60, null), 'IN_PROGRESS').basis).toBe(
      '60 % is claimed but nothing shows it, so nothing is earned.',
    );
  });

  it('in weighted steps is the weight of those done, whatever the weights add up to', () => {
    const steps = [
      { name: 'strip', weight: 1, isDone: true },
      { name: 'wash', weight: 2, isDone: true },
      { name: 'rewire', weight: 3, isDone: false },
    ];
    expect(earnedShare({ kind: 'WEIGHTED_STEPS', steps }, 'IN_PROGRESS')).toEqual({
      share: 0.5,
      basis: '2 of 3 weighted steps are done.',
    });
  });

  it('is refused under a rule that cannot be', () => {
    expect(earningRuleProblems({ kind: 'WEIGHTED_STEPS', steps: [] })).toMatchObject([
      { code: 'NO_STEPS', path: ['steps'] },
    ]);
    const steps = [
      { name: 'wash', weight: 1, isDone: true },
      { name: 'dry', weight: 0, isDone: true },
      { name: 'wax', weight: NaN, isDone: true },
    ];
    expect(earningRuleProblems({ kind: 'WEIGHTED_STEPS', steps })).toMatchObject([
      { code: 'WEIGHT_NOT_ABOVE_ZERO', path: ['steps', '1', 'weight'] },
      { code: 'WEIGHT_NOT_ABOVE_ZERO', path: ['steps', '2', 'weight'] },
    ]);
    for (const value of [-1, 101, NaN]) {
      expect(earningRuleProblems(percent(value, note))).toMatchObject([
        { code: 'PERCENT_OUT_OF_RANGE', path: ['percent'] },
      ]);
      expect(() => earnedShare(percent(value, note), 'IN_PROGRESS')).toThrow(RangeError);
    }
  });
});

describe('completion', () => {
  it('weighs tasks by their estimates: (2, 4, 12) is 5 hours, (6, 9, 18) is 10', () => {
    const { share, budgetedHours, earnedHours } = completion([
      task({ id: 'recap', state: 'DONE' }),
      task({ id: 'align', earningRule: fiftyFifty, estimate: estimateOf(6, 9, 18) }),
    ]);
    expect(budgetedHours).toBeCloseTo(15, 12);
    expect(earnedHours).toBeCloseTo(10, 12);
    expect(share).toBeCloseTo(2 / 3, 12);
  });

  it('is null, not 0 or 1, where nothing is budgeted', () => {
    expect(completion([]).share).toBeNull();
    expect(completion([task({ state: 'DROPPED' })]).share).toBeNull();
    expect(completion([task({ estimate: null })]).share).toBeNull();
  });

  it('tells what it counted, what it left out, and what nothing shows', () => {
    const { basis } = completion([
      task({ id: 'done', state: 'DONE' }),
      task({ id: 'dropped', state: 'DROPPED' }),
      task({ id: 'unestimated', estimate: null }),
      task({ id: 'claimed', earningRule: percent(90, null) }),
      task({ id: 'shown', earningRule: percent(90, note) }),
      task({ id: 'finished', earningRule: percent(90, null), state: 'DONE' }),
    ]);
    expect(basis.counted).toEqual([
      { what: 'tasks weighed', count: 4 },
      { what: 'dropped tasks left out', count: 1 },
      { what: 'tasks without an estimate', count: 1 },
    ]);
    expect(basis.unestimatedTaskIds).toEqual(['unestimated']);
    expect(basis.unevidencedTaskIds).toEqual(['claimed']);
  });

  it('lies between 0 and 1, reaches 1 when all is done, and no finished task lowers it', () => {
    const tasks = fc.array(
      fc.record({
        state: fc.constantFrom('NOT_STARTED', 'IN_PROGRESS', 'DONE'),
        earningRule: fc.constantFrom(zeroHundred, fiftyFifty, percent(30, note), percent(99, null)),
        estimate: arbitraryEstimate,
      }),
      { minLength: 1, maxLength: 10 },
    );
    fc.assert(
      fc.property(tasks, (told) => {
        const rows = told.map((row, index) => task({ ...row, id: `t${index}` }));
        const before = completion(rows).share!;
        expect(before).toBeGreaterThanOrEqual(0);
        expect(before).toBeLessThanOrEqual(1);
        const [first, ...others] = rows;
        const after = completion([{ ...first!, state: 'DONE' }, ...others]).share!;
        expect(after).toBeGreaterThanOrEqual(before);
        expect(completion(rows.map((row) => ({ ...row, state: 'DONE' }))).share).toBe(1);
      }),
    );
  });
});
