import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { money, send } from '../support/lotStory.js';
import { testApi, type TestApi } from '../support/testApi.js';
import { worthStory, type WorthStory } from '../support/worthStory.js';

describe.each(['sqlite', 'postgres'] as const)('going on or stopping on %s', (engine) => {
  let api: TestApi;
  let story: WorthStory;

  beforeEach(async () => {
    api = await testApi(engine);
    story = await worthStory(api);
  });
  afterEach(() => api.close());

  const asked = `goingOn { choices { kind standard worth { minorUnits } premium { amount } costToCome { minorUnits }
      gain { minorUnits } mostToSpend { minorUnits } chanceOfOverspending }
    isDecidedByPremium statedPremium { amount } premiumReason sunkCost { amount } chanceOfBreach
    questions { kind what worthKnowing { minorUnits } } nextStep { description netGain { minorUnits } }
    inquiries { description } explanation problems { message } basis { method assumptions } }`;

  it('weighs going on against stopping, looking forward only', async () => {
    await story.inspect();
    await story.note('40.00');
    for (const [standard, likely] of [
      ['NOT_WORKING', '100.00'],
      ['WORKING_AND_CLEAN', '300.00'],
    ] as const) {
      await story.value(standard, likely);
    }
    const before = (await story.project(asked)).goingOn;
    expect(before.choices[0]).toMatchObject({ kind: 'FINISH', standard: 'WORKING_AND_CLEAN' });
    const [best] = before.choices;
    expect(best.gain.minorUnits).toBe(best.worth.minorUnits - best.costToCome.minorUnits);
    const leave = before.choices.find(({ kind }: { kind: string }) => kind === 'LEAVE');
    expect(best.mostToSpend.minorUnits).toBe(best.worth.minorUnits - leave.worth.minorUnits);
    expect(before.explanation.match(/[.!?](?= |$)/g)!.length).toBeLessThanOrEqual(3);
    expect(before.sunkCost.amount).toBe('0.00');
    // What was spent is shown apart and changes no choice.
    await story.done('recordExpense', 'expense', {
      itemId: story.rigId,
      projectId: story.projectId,
      spentOn: '2026-05-02',
      amount: money('5000.00'),
      description: 'Everything so far',
    });
    const after = (await story.project(asked)).goingOn;
    expect(after.sunkCost.amount).toBe('5000.00');
    expect(after.choices).toEqual(before.choices);
    expect(after.chanceOfBreach).toBe(1);
  });

  it('finds what is worth finding out, and names the premium as the owner’s', async () => {
    await story.value('NOT_WORKING', '100.00');
    await story.value('WORKING_AND_CLEAN', '300.00');
    const rewinding = await story.done('planCost', 'plannedCost', {
      projectId: story.projectId,
      kind: 'SERVICE',
      description: 'Rewinding',
      estimate: {
        optimistic: money('20.00'),
        likely: money('200.00'),
        pessimistic: money('600.00'),
      },
    });
    const test = {
      projectId: story.projectId,
      kind: 'QUOTATION',
      description: 'Ask the winder',
      cost: money('2.00'),
    };
    const wrong: any = await send(api, 'planInquiry', 'inquiry', 'id', {
      ...test,
      resolves: 'PLANNED_COST',
    });
    expect(wrong.problems[0].path).toEqual(['plannedCostId']);
    const inquiry = await story.done('planInquiry', 'inquiry', {
      ...test,
      resolves: 'PLANNED_COST',
      plannedCostId: rewinding.id,
    });
    const plain = (await story.project(asked)).goingOn;
    expect(plain.choices[0].kind).toBe('LEAVE');
    expect(plain.questions[0].kind).toMatch(/PLANNED_COST|VALUE_FINISHED/);
    expect(plain.nextStep.description).toBe('Ask the winder');
    expect(plain.nextStep.netGain.minorUnits).toBeGreaterThan(0);
    // Struck out, it is kept and no longer counts; taken back, it counts again.
    for (const [version, isStruck] of [
      [1, true],
      [2, false],
    ] as const) {
      await story.done('changeInquiry', 'inquiry', { id: inquiry.id, version, isStruck });
      const { inquiries, goingOn } = await story.project(
        `inquiries { description doneAt struckAt } ${asked}`,
      );
      expect(goingOn.nextStep === null).toBe(isStruck);
      expect(inquiries).toMatchObject([{ description: 'Ask the winder', doneAt: null }]);
      expect(inquiries[0].struckAt !== null).toBe(isStruck);
    }
    await story.done('setItemOutlook', 'outlook', {
      itemId: story.rigId,
      version: 0,
      successPercent: 90,
      premium: money('400.00'),
      premiumReason: 'The only one left of its kind',
    });
    const fond = (await story.project(asked)).goingOn;
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
      await story.done('setSpendingCeiling', 'spendingCeiling', {
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
          { m: money(amount, currency), p: story.projectId },
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
          itemId: story.rigId,
          projectId: story.projectId,
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
});
