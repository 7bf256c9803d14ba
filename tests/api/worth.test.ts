import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { money, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';
import { worthStory, type WorthStory } from '../support/worthStory.js';

describe.each(['sqlite', 'postgres'] as const)('cost and worth on %s', (engine) => {
  let api: TestApi;
  let story: WorthStory;

  beforeEach(async () => {
    api = await testApi(engine);
    story = await worthStory(api);
  });
  afterEach(() => api.close());

  it('reckons cost to come from missing parts and planned costs, the same each time', async () => {
    await story.inspect();
    const asked = `costToCome { currency money { expected { amount } p50 { minorUnits } p80 { minorUnits } }
      withOwnTime { p80 { amount } } lines { kind what count noteCount } unpriced { what count }
      headroom { amount } chanceOfBreach problems { message } basis { method counted { what count } } }`;
    expect((await story.project(asked)).costToCome).toMatchObject({
      lines: [],
      unpriced: [{ what: '6146B', count: 1 }],
      money: { expected: { amount: '0.00' } },
      chanceOfBreach: 0,
    });
    await story.note('40.00');
    await story.done('planCost', 'plannedCost', {
      projectId: story.projectId,
      kind: 'SERVICE',
      description: 'Rewinding',
      estimate: {
        optimistic: money('60.00'),
        likely: money('90.00'),
        pessimistic: money('180.00'),
      },
    });
    await story.done('recordExpense', 'expense', {
      itemId: story.rigId,
      projectId: story.projectId,
      spentOn: '2026-05-02',
      amount: money('50.00'),
      description: 'Cord',
    });
    const told = (await story.project(asked)).costToCome;
    expect(told.lines).toMatchObject([
      { kind: 'PART', what: '6146B', count: 1, noteCount: 1 },
      { kind: 'SERVICE', what: 'Rewinding', noteCount: null },
    ]);
    expect(told.money.p80.minorUnits).toBeGreaterThan(told.money.p50.minorUnits);
    expect(told).toMatchObject({ withOwnTime: null, headroom: { amount: '150.00' }, problems: [] });
    expect(told.chanceOfBreach).toBeGreaterThan(0.2);
    expect((await story.project(asked)).costToCome).toEqual(told);
    await story.done('addStock', 'stockLot', {
      partTypeId: story.tubeId,
      quantity: 1,
      receivedOn: '2026-05-10',
      condition: 'UNUSED',
    });
    expect((await story.project(asked)).costToCome.lines).toHaveLength(1);
  });

  it('says nothing in a currency that there is no rate for', async () => {
    await story.inspect();
    await story.note('40.00', { amount: money('40.00', 'GBP') });
    const asked = 'costToCome { money { p50 { amount } } chanceOfBreach problems { message } }';
    const { costToCome } = await story.project(asked);
    expect(costToCome).toMatchObject({ money: null, chanceOfBreach: null });
    expect(costToCome.problems[0].message).toMatch(/no rate between GBP and EUR/);
    await story.done('setRate', 'exchangeRate', {
      fromCurrency: 'GBP',
      toCurrency: 'EUR',
      ratedOn: '2026-05-01',
      rate: '1.25',
      source: 'Bank',
    });
    const after = (await story.project(asked)).costToCome;
    expect(after.problems).toEqual([]);
    expect(Number(after.money.p50.amount)).toBeCloseTo(50, -1);
  });

  it('shows worth as it stands, at the target and between, with what it rests on', async () => {
    await story.value('NOT_WORKING', '100.00');
    await story.value('AS_MADE', '800.00');
    await story.value('AS_MADE', '9999.00', { basis: 'REPLACEMENT' });
    const asked = `query ($id: ID!) { node(id: $id) { ... on Rig { worth {
      presentStandard asItStands { likely { amount } how } atTarget { standard low { minorUnits } likely { amount } high { minorUnits } how }
      byStandard { standard } asParts { likely { amount } } problems { message } basis { assumptions } } } } }`;
    const { worth } = (await api.ask(asked, { id: story.rigId })).node;
    expect(worth).toMatchObject({
      presentStandard: 'NOT_WORKING',
      asItStands: { likely: { amount: '100.00' }, how: 'NOTED' },
      atTarget: {
        standard: 'WORKING_AND_CLEAN',
        likely: { amount: '400.00' },
        how: 'INTERPOLATED',
      },
      asParts: null,
    });
    expect(worth.byStandard).toHaveLength(4);
    // An index of its own carries the euro on from then.
    const index = await story.done('importIndex', 'priceIndex', {
      name: 'Prices of Ossenwick',
      currency: 'EUR',
      source: 'Town hall',
      csv: 'period,value\n2026-05,100.0\n2026-06,110.0\n',
    });
    const after = (await api.ask(asked, { id: story.rigId })).node.worth;
    expect(after.asItStands.likely.amount).toBe('110.00');
    expect(after.basis.assumptions.join()).toContain('Prices of Ossenwick (Town hall)');
    // Loaded by mistake: struck out it is kept, and carries nothing on; taken back it does again.
    const strike = async (version: number, isStruck: boolean) => {
      await story.done('changeIndex', 'priceIndex', { id: index.id, version, isStruck });
      return (await api.ask(asked, { id: story.rigId })).node.worth.asItStands.likely.amount;
    };
    expect(await strike(1, true)).toBe('100.00');
    const { priceIndexes }: any = await api.ask('{ priceIndexes { nodes { name struckAt } } }');
    expect(priceIndexes.nodes).toEqual([
      { name: 'Prices of Ossenwick', struckAt: expect.any(String) },
    ]);
    expect(await strike(2, false)).toBe('110.00');
    const stale: any = await send(api, 'changeIndex', 'priceIndex', 'id', {
      id: index.id,
      version: 1,
      isStruck: true,
    });
    expect(stale.problems[0].code).toBe('OUT_OF_DATE');
    // A note of the item itself outranks its model's.
    await story.value('NOT_WORKING', '50.00', {
      modelId: null,
      itemId: story.rigId,
      valuedOn: '2026-06-01',
    });
    expect((await api.ask(asked, { id: story.rigId })).node.worth.asItStands.likely.amount).toBe(
      '50.00',
    );
  });

  it('refuses values, terms and outlooks that make no sense, all faults at once', async () => {
    const bad: any = await send(api, 'noteValue', 'valueNote', 'id', {
      modelId: story.modelId,
      itemId: story.rigId,
      basis: 'FAIR_MARKET',
      standard: 'WORKING',
      valuedOn: '2030-01-01',
      likely: money('0'),
      low: money('5', 'GBP'),
      source: '',
    });
    expect(bad.problems.length).toBeGreaterThanOrEqual(6);
    const terms: any = await send(api, 'setWorthTerms', 'worthTerms', 'id', {
      version: 0,
      saleCostPercent: 120,
      partEffortMinutes: -1,
    });
    expect(terms.problems).toHaveLength(2);
    await story.done('setWorthTerms', 'worthTerms', { version: 0, hourRate: money('12.50') });
    const twice = await Promise.all(
      [20, 30].map((spareUsePercent) =>
        send(api, 'setWorthTerms', 'worthTerms', 'version', { version: 1, spareUsePercent }),
      ),
    );
    expect(twice.filter(({ problems }) => problems.length > 0)).toHaveLength(1);
  });
});
