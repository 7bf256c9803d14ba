import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { money, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

describe.each(['sqlite', 'postgres'] as const)('cost and worth on %s', (engine) => {
  let api: TestApi;
  let modelId: string;
  let rigId: string;
  let projectId: string;
  let tubeId: string;

  const done = async (verb: string, field: string, input: object, shown = 'id version') => {
    const answer: any = await send(api, verb, field, shown, input);
    expect(answer.problems).toEqual([]);
    return answer[field];
  };
  const value = (standard: string, likely: string, more: object = {}) =>
    done('noteValue', 'valueNote', {
      modelId,
      basis: 'FAIR_MARKET',
      standard,
      valuedOn: '2026-05-01',
      likely: money(likely),
      source: 'Autumn sale',
      ...more,
    });
  const project = async (shown: string): Promise<any> =>
    (
      await api.ask(`query ($id: ID!) { node(id: $id) { ... on Project { ${shown} } } }`, {
        id: projectId,
      })
    ).node;

  beforeEach(async () => {
    api = await testApi(engine);
    tubeId = (
      await done('createPartType', 'partType', {
        kind: 'TUBE',
        designation: '6146B',
        description: 'Transmitting tube',
        ratings: [],
      })
    ).id;
    modelId = (
      await done('createModel', 'model', {
        itemKind: 'RIG',
        maker: 'Ombershaw',
        designation: 'Tallowick',
        description: 'Transmitter',
        fitOut: [{ designator: 'V1', zone: 'TUBES', isRequired: true, partTypeId: tubeId }],
      })
    ).id;
    rigId = (await done('createRig', 'rig', { modelId, inventoryNumber: 'R-1' })).id;
    projectId = (
      await done('openProject', 'project', {
        itemId: rigId,
        title: 'Back on the air',
        targetStandard: 'WORKING_AND_CLEAN',
        ceiling: money('200.00'),
      })
    ).id;
  });
  afterEach(() => api.close());

  const inspect = () =>
    done('recordInspection', 'inspection', {
      itemId: rigId,
      inspectedAt: '2026-05-20T10:00:00Z',
      fitOutChecks: [{ designator: 'V1', state: 'MISSING' }],
    });
  const note = (amount: string, more: object = {}) =>
    done('notePrice', 'priceNote', {
      partTypeId: tubeId,
      kind: 'SOLD',
      notedOn: '2026-05-01',
      amount: money(amount),
      seenAt: 'Fair',
      ...more,
    });

  it('reckons cost to come from missing parts and planned costs, the same each time', async () => {
    await inspect();
    const asked = `costToCome { currency money { expected { amount } p50 { minorUnits } p80 { minorUnits } }
      withOwnTime { p80 { amount } } lines { kind what count noteCount } unpriced { what count }
      headroom { amount } chanceOfBreach problems { message } basis { method counted { what count } } }`;
    expect((await project(asked)).costToCome).toMatchObject({
      lines: [],
      unpriced: [{ what: '6146B', count: 1 }],
      money: { expected: { amount: '0.00' } },
      chanceOfBreach: 0,
    });
    await note('40.00');
    await done('planCost', 'plannedCost', {
      projectId,
      kind: 'SERVICE',
      description: 'Rewinding',
      estimate: {
        optimistic: money('60.00'),
        likely: money('90.00'),
        pessimistic: money('180.00'),
      },
    });
    await done('recordExpense', 'expense', {
      itemId: rigId,
      projectId,
      spentOn: '2026-05-02',
      amount: money('50.00'),
      description: 'Cord',
    });
    const told = (await project(asked)).costToCome;
    expect(told.lines).toMatchObject([
      { kind: 'PART', what: '6146B', count: 1, noteCount: 1 },
      { kind: 'SERVICE', what: 'Rewinding', noteCount: null },
    ]);
    expect(told.money.p80.minorUnits).toBeGreaterThan(told.money.p50.minorUnits);
    expect(told).toMatchObject({ withOwnTime: null, headroom: { amount: '150.00' }, problems: [] });
    expect(told.chanceOfBreach).toBeGreaterThan(0.2);
    expect((await project(asked)).costToCome).toEqual(told);
    await done('addStock', 'stockLot', {
      partTypeId: tubeId,
      quantity: 1,
      receivedOn: '2026-05-10',
      condition: 'UNUSED',
    });
    expect((await project(asked)).costToCome.lines).toHaveLength(1);
  });

  it('says nothing in a currency that there is no rate for', async () => {
    await inspect();
    await note('40.00', { amount: money('40.00', 'GBP') });
    const asked = 'costToCome { money { p50 { amount } } chanceOfBreach problems { message } }';
    const { costToCome } = await project(asked);
    expect(costToCome).toMatchObject({ money: null, chanceOfBreach: null });
    expect(costToCome.problems[0].message).toMatch(/no rate between GBP and EUR/);
    await done('setRate', 'exchangeRate', {
      fromCurrency: 'GBP',
      toCurrency: 'EUR',
      ratedOn: '2026-05-01',
      rate: '1.25',
      source: 'Bank',
    });
    const after = (await project(asked)).costToCome;
    expect(after.problems).toEqual([]);
    expect(Number(after.money.p50.amount)).toBeCloseTo(50, -1);
  });

  it('shows worth as it stands, at the target and between, with what it rests on', async () => {
    await value('NOT_WORKING', '100.00');
    await value('AS_MADE', '800.00');
    await value('AS_MADE', '9999.00', { basis: 'REPLACEMENT' });
    const asked = `query ($id: ID!) { node(id: $id) { ... on Rig { worth {
      presentStandard asItStands { likely { amount } how } atTarget { standard low { minorUnits } likely { amount } high { minorUnits } how }
      byStandard { standard } asParts { likely { amount } } problems { message } basis { assumptions } } } } }`;
    const { worth } = (await api.ask(asked, { id: rigId })).node;
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
    await done('importIndex', 'priceIndex', {
      name: 'Prices of Ossenwick',
      currency: 'EUR',
      source: 'Town hall',
      csv: 'period,value\n2026-05,100.0\n2026-06,110.0\n',
    });
    const after = (await api.ask(asked, { id: rigId })).node.worth;
    expect(after.asItStands.likely.amount).toBe('110.00');
    expect(after.basis.assumptions.join()).toContain('Prices of Ossenwick (Town hall)');
    // A note of the item itself outranks its model's.
    await value('NOT_WORKING', '50.00', { modelId: null, itemId: rigId, valuedOn: '2026-06-01' });
    expect((await api.ask(asked, { id: rigId })).node.worth.asItStands.likely.amount).toBe('50.00');
  });

  const asked = `goingOn { choices { kind standard worth { minorUnits } premium { amount } costToCome { minorUnits }
      gain { minorUnits } mostToSpend { minorUnits } chanceOfOverspending }
    isDecidedByPremium statedPremium { amount } premiumReason sunkCost { amount } chanceOfBreach
    questions { kind what worthKnowing { minorUnits } } nextStep { description netGain { minorUnits } }
    inquiries { description } explanation problems { message } basis { method assumptions } }`;

  it('weighs going on against stopping, looking forward only', async () => {
    await inspect();
    await note('40.00');
    for (const [standard, likely] of [
      ['NOT_WORKING', '100.00'],
      ['WORKING_AND_CLEAN', '300.00'],
    ] as const) {
      await value(standard, likely);
    }
    const before = (await project(asked)).goingOn;
    expect(before.choices[0]).toMatchObject({ kind: 'FINISH', standard: 'WORKING_AND_CLEAN' });
    const [best] = before.choices;
    expect(best.gain.minorUnits).toBe(best.worth.minorUnits - best.costToCome.minorUnits);
    const leave = before.choices.find(({ kind }: { kind: string }) => kind === 'LEAVE');
    expect(best.mostToSpend.minorUnits).toBe(best.worth.minorUnits - leave.worth.minorUnits);
    expect(before.explanation.match(/[.!?](?= |$)/g)!.length).toBeLessThanOrEqual(3);
    expect(before.sunkCost.amount).toBe('0.00');
    // What was spent is shown apart and changes no choice.
    await done('recordExpense', 'expense', {
      itemId: rigId,
      projectId,
      spentOn: '2026-05-02',
      amount: money('5000.00'),
      description: 'Everything so far',
    });
    const after = (await project(asked)).goingOn;
    expect(after.sunkCost.amount).toBe('5000.00');
    expect(after.choices).toEqual(before.choices);
    expect(after.chanceOfBreach).toBe(1);
  });

  it('finds what is worth finding out, and names the premium as the owner’s', async () => {
    await value('NOT_WORKING', '100.00');
    await value('WORKING_AND_CLEAN', '300.00');
    const rewinding = await done('planCost', 'plannedCost', {
      projectId,
      kind: 'SERVICE',
      description: 'Rewinding',
      estimate: {
        optimistic: money('20.00'),
        likely: money('200.00'),
        pessimistic: money('600.00'),
      },
    });
    const test = {
      projectId,
      kind: 'QUOTATION',
      description: 'Ask the winder',
      cost: money('2.00'),
    };
    const wrong: any = await send(api, 'planInquiry', 'inquiry', 'id', {
      ...test,
      resolves: 'PLANNED_COST',
    });
    expect(wrong.problems[0].path).toEqual(['plannedCostId']);
    await done('planInquiry', 'inquiry', {
      ...test,
      resolves: 'PLANNED_COST',
      plannedCostId: rewinding.id,
    });
    const plain = (await project(asked)).goingOn;
    expect(plain.choices[0].kind).toBe('LEAVE');
    expect(plain.questions[0].kind).toMatch(/PLANNED_COST|VALUE_FINISHED/);
    expect(plain.nextStep.description).toBe('Ask the winder');
    expect(plain.nextStep.netGain.minorUnits).toBeGreaterThan(0);
    await done('setItemOutlook', 'outlook', {
      itemId: rigId,
      version: 0,
      successPercent: 90,
      premium: money('400.00'),
      premiumReason: 'The only one left of its kind',
    });
    const fond = (await project(asked)).goingOn;
    expect(fond).toMatchObject({
      isDecidedByPremium: true,
      statedPremium: { amount: '400.00' },
      premiumReason: 'The only one left of its kind',
    });
    expect(fond.choices[0]).toMatchObject({ kind: 'FINISH', premium: { amount: '360.00' } });
    expect(fond.explanation).toContain('by the premium that you state');
    expect(fond.questions.map(({ kind }: { kind: string }) => kind)).toContain('SUCCESS');
  });

  it('warns before a purchase that breaks a ceiling, with what must give, and keeps it all the same', async () => {
    for (const [period, amount] of [
      ['MONTH', '100.00'],
      ['YEAR', '1000.00'],
    ] as const) {
      await done('setSpendingCeiling', 'spendingCeiling', {
        period,
        version: 0,
        amount: money(amount),
      });
    }
    const warning = async (amount: string, currency = 'EUR'): Promise<any[]> =>
      (
        await api.ask(
          `query ($m: MoneyInput!, $p: ID) { purchaseWarning(amount: $m, on: "2026-05-20", projectId: $p) {
            of name leftAfter { amount } isBroken warning } }`,
          { m: money(amount, currency), p: projectId },
        )
      ).purchaseWarning;
    expect(await warning('100.00')).toMatchObject([
      { of: 'PROJECT', leftAfter: { amount: '100.00' }, isBroken: false, warning: null },
      { of: 'MONTH', name: '2026-05', leftAfter: { amount: '0.00' }, isBroken: false },
      { of: 'YEAR', name: '2026', isBroken: false },
    ]);
    const bought: any = await api.ask(
      `mutation ($input: RecordExpenseInput!) { recordExpense(input: $input) {
        expense { id } problems { message } warnings { of leftAfter { amount } warning } } }`,
      {
        input: {
          itemId: rigId,
          projectId,
          spentOn: '2026-05-20',
          amount: money('130.00'),
          description: 'Tube',
        },
      },
    );
    expect(bought.recordExpense).toMatchObject({
      problems: [],
      warnings: [{ of: 'MONTH', leftAfter: { amount: '-30.00' } }],
    });
    expect(bought.recordExpense.warnings[0].warning).toMatch(
      /30.00 EUR beyond.*wait for another month/,
    );
    const foreign = await warning('1.00', 'GBP');
    expect(foreign[0].warning).toMatch(/cannot be said.*no rate/);
    const lot: any = await api.ask(
      `mutation ($input: RecordAcquisitionInput!) { recordAcquisition(input: $input) {
        acquisition { id } warnings { of } } }`,
      {
        input: {
          acquiredOn: '2026-05-21',
          price: money('900.00'),
          lines: [{ sundries: 'A box of tubes' }],
        },
      },
    );
    expect(lot.recordAcquisition.warnings.map(({ of }: { of: string }) => of)).toEqual([
      'MONTH',
      'YEAR',
    ]);
  });

  it('refuses values, terms and outlooks that make no sense, all faults at once', async () => {
    const bad: any = await send(api, 'noteValue', 'valueNote', 'id', {
      modelId,
      itemId: rigId,
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
    await done('setWorthTerms', 'worthTerms', { version: 0, hourRate: money('12.50') });
    const twice = await Promise.all(
      [20, 30].map((spareUsePercent) =>
        send(api, 'setWorthTerms', 'worthTerms', 'version', { version: 1, spareUsePercent }),
      ),
    );
    expect(twice.filter(({ problems }) => problems.length > 0)).toHaveLength(1);
  });
});
