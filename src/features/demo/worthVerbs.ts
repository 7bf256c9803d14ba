import { z } from 'zod';
import { setSpendingCeiling } from '../ceilings/setSpendingCeiling.js';
import { CeilingPeriod } from '../ceilings/ceilingPeriod.js';
import { planCost } from '../costToCome/planCost.js';
import { PlannedCostKind } from '../costToCome/plannedCostKind.js';
import { InquiryKind } from '../goingOn/inquiryKind.js';
import { planInquiry } from '../goingOn/planInquiry.js';
import { Uncertainty } from '../goingOn/uncertainty.js';
import { setRate } from '../rates/setRate.js';
import { ConditionStandard } from '../worth/conditionStandard.js';
import { noteValue } from '../worth/noteValue.js';
import { setItemOutlook } from '../worth/setItemOutlook.js';
import { setWorthTerms } from '../worth/setWorthTerms.js';
import { ValueBasis } from '../worth/valueBasis.js';
import { globalId } from '../../api/kit/globalId.js';
import { moneyShape } from './moneyVerbs.js';
import { storyVerb, text } from './storyEvent.js';

export const worthVerbs = {
  rate: storyVerb(
    'setRate',
    { from: text, to: text, rate: text, source: text },
    ({ work, clock }, { at, from, to, rate, source }) =>
      setRate(work, {
        fromCurrency: from,
        toCurrency: to,
        ratedOn: clock.day(at.slice(0, 10)),
        rate,
        source,
      }),
  ),

  value: storyVerb(
    'noteValue',
    {
      model: text.optional(),
      of: text.optional(),
      basis: z.enum(ValueBasis).default('FAIR_MARKET'),
      standard: z.enum(ConditionStandard),
      likely: moneyShape,
      low: moneyShape.optional(),
      high: moneyShape.optional(),
      source: text,
    },
    ({ work, clock, names }, { at, model, of, low, high, ...value }) =>
      noteValue(work, {
        ...value,
        modelId: names.optionalId('model', model),
        itemId: names.optionalId('item', of),
        valuedOn: clock.day(at.slice(0, 10)),
        low: low ?? null,
        high: high ?? null,
      }),
  ),

  reckonWith: storyVerb(
    'setWorthTerms',
    { hourRate: moneyShape.optional(), saleCostPercent: z.int().optional() },
    ({ work }, { hourRate, saleCostPercent }) =>
      setWorthTerms(work, {
        version: 0,
        hourRate: hourRate ?? null,
        ...(saleCostPercent !== undefined && { saleCostPercent }),
      }),
  ),

  limitSpending: storyVerb(
    'setSpendingCeiling',
    { period: z.enum(CeilingPeriod), amount: moneyShape },
    ({ work }, { period, amount }) => setSpendingCeiling(work, { period, version: 0, amount }),
  ),

  outlook: storyVerb(
    'setItemOutlook',
    {
      stands: z.enum(ConditionStandard).optional(),
      successPercent: z.int().optional(),
      premium: moneyShape.optional(),
      why: text.optional(),
    },
    ({ work, names, item }, { stands, successPercent, premium, why }) =>
      setItemOutlook(work, {
        itemId: names.id('item', item),
        version: 0,
        presentStandard: stands ?? null,
        successPercent: successPercent ?? null,
        premium: premium ?? null,
        premiumReason: why ?? null,
      }),
  ),

  willCost: storyVerb(
    'planCost',
    {
      project: text,
      key: text,
      kind: z.enum(PlannedCostKind),
      for: text,
      between: z.tuple([moneyShape, moneyShape, moneyShape]),
    },
    async ({ work, names, item }, { project, key, kind, for: description, between }) => {
      const [optimistic, likely, pessimistic] = between;
      const id = await planCost(work, {
        projectId: names.id('project', `${item} ${project}`),
        kind,
        description,
        estimate: { optimistic, likely, pessimistic },
      });
      names.keep('planned cost', `${item} ${key}`, globalId('PlannedCost', id));
    },
  ),

  couldFindOut: storyVerb(
    'planInquiry',
    {
      project: text,
      how: z.enum(InquiryKind),
      by: text,
      settles: z.enum(Uncertainty),
      cost: moneyShape,
      minutes: z.int().default(0),
      plannedCost: text.optional(),
    },
    ({ work, names, item }, { project, how, by, settles, cost, minutes, plannedCost }) =>
      planInquiry(work, {
        projectId: names.id('project', `${item} ${project}`),
        kind: how,
        description: by,
        resolves: settles,
        cost,
        minutes,
        plannedCostId: names.optionalId(
          'planned cost',
          plannedCost === undefined ? undefined : `${item} ${plannedCost}`,
        ),
      }),
  ),
};
