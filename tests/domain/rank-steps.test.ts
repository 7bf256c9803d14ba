import { describe, expect, it } from 'vitest';
import { rankSteps } from '../../src/domain/shack/rankSteps.js';
import { shackModel } from '../../src/domain/shack/shackModel.js';
import { shackSteps, type ShackStep } from '../../src/domain/shack/shackSteps.js';
import { accessory, DAY_MS, finding, item, rigOnTheAir } from '../support/readinessFacts.js';

const withFinding = (rigId: string) =>
  rigOnTheAir({
    rig: item(rigId, { findings: [finding({ findingId: `f ${rigId}` })] }),
    requiredRoles: [],
    accessories: [],
  });
const task = (taskId: string, expectedHours: number, kind = 'REPAIR') => ({
  taskId,
  title: taskId,
  kind,
  expectedHours,
});
const noPrice = () => null;

describe('the best next step', () => {
  it('is the one that brings a rig on the air in the fewest hours', () => {
    const model = shackModel([withFinding('slow'), withFinding('quick')], DAY_MS);
    const tasks = new Map([
      ['slow', [task('Rewind the transformer', 9)]],
      ['quick', [task('New lead', 1)]],
    ]);
    const { before, ranked } = rankSteps(model, shackSteps(model, tasks), noPrice, 'HOUR');
    expect(before).toMatchObject({ alone: 0, atOnce: 0 });
    expect(
      ranked.map(({ itemId, gainAlone, gainAtOnce }) => [itemId, gainAlone, gainAtOnce]),
    ).toEqual([
      ['quick', 1, 1],
      ['slow', 1, 1],
    ]);
    expect(ranked[0]?.reason).toContain('1 rig more on the air at once');
  });

  it('says what remains when a step alone brings nothing, and ranks the whole before it', () => {
    const facts = withFinding('rig');
    const model = shackModel([{ ...facts, finalChecks: [] }], DAY_MS);
    const { ranked } = rankSteps(model, shackSteps(model, new Map()), noPrice, 'HOUR');
    expect(ranked.map(({ kind, gainAtOnce }) => [kind, gainAtOnce])).toEqual([
      ['WHOLE_ITEM', 1],
      ['CHECK', 0],
      ['MEND', 0],
    ]);
    expect(ranked[1]?.reason).toContain('there remain “rig” has an open finding');
  });

  it('finds that two rigs on one supply need another supply, not work', () => {
    const shared = ['one', 'other'].map((rigId) =>
      rigOnTheAir({ rig: item(rigId), accessories: [accessory('supply')] }),
    );
    const model = shackModel(shared, DAY_MS);
    const { before, ranked } = rankSteps(model, shackSteps(model, new Map()), noPrice, 'HOUR');
    expect(before).toMatchObject({ alone: 2, atOnce: 1 });
    expect(ranked).toMatchObject([{ kind: 'PURCHASE', gainAlone: 0, gainAtOnce: 1 }]);
  });

  it('by money: the cheaper first, and what has no known price after what has', () => {
    const model = shackModel(['a', 'b', 'c'].map(withFinding), DAY_MS);
    const prices: Record<string, number | null> = { a: null, b: 9000, c: 2000 };
    const priceOf = ({ itemId }: ShackStep): number | null => prices[itemId] ?? null;
    const { ranked } = rankSteps(model, shackSteps(model, new Map()), priceOf, 'MONEY');
    expect(ranked.map(({ itemId }) => itemId)).toEqual(['c', 'b', 'a']);
  });

  it('puts work that nothing waits for last, and says so', () => {
    const model = shackModel([withFinding('rig')], DAY_MS);
    const tasks = new Map([['rig', [task('New lead', 3), task('Polish', 0.5, 'CABINET')]]]);
    const { ranked } = rankSteps(model, shackSteps(model, tasks), noPrice, 'HOUR');
    expect(ranked.map(({ taskIds }) => taskIds)).toEqual([['New lead'], ['Polish']]);
    expect(ranked[1]?.reason).toBe('Nothing recorded that keeps a rig off the air waits for it.');
  });

  it('ranks some hundred steps within seconds', () => {
    const facts = Array.from({ length: 120 }, (_, index) => {
      const supply = `supply ${index % 30}`;
      return {
        ...withFinding(`rig ${index}`),
        finalChecks: [],
        requiredRoles: [{ roleCode: 'SUPPLY', roleName: 'power supply', accessoryIds: [supply] }],
        accessories: [accessory(supply)],
      };
    });
    const model = shackModel(facts, DAY_MS);
    const steps = shackSteps(model, new Map());
    expect(steps.length).toBeGreaterThan(300);
    const began = performance.now();
    const { ranked } = rankSteps(model, steps, noPrice, 'HOUR');
    const seconds = (performance.now() - began) / 1000;
    expect(ranked).toHaveLength(steps.length);
    expect(seconds).toBeLessThan(20);
  });
});
