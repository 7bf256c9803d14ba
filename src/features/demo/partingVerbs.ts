import { z } from 'zod';
import { DisposalKind } from '../outOfHand/lossKind.js';
import { recordDisposal } from '../outOfHand/recordDisposal.js';
import { moneyShape, personChoice } from './moneyVerbs.js';
import { storyVerb, text } from './storyEvent.js';

export const partingVerbs = {
  partWith: storyVerb(
    'recordDisposal',
    {
      how: z.enum(DisposalKind),
      to: text.optional(),
      price: moneyShape,
      costs: z.record(text, moneyShape).default({}),
      lines: z.array(z.strictObject({ item: text, price: moneyShape.optional() })).min(1),
      note: text.optional(),
    },
    async ({ work, clock, names }, event) =>
      recordDisposal(work, {
        kind: event.how,
        disposedOn: clock.day(event.at.slice(0, 10)),
        toParty: personChoice(names, event.to),
        price: event.price,
        costs: Object.entries(event.costs).map(([description, amount]) => ({
          description,
          amount,
        })),
        lines: event.lines.map(({ item, price }) => ({
          itemId: names.id('item', item),
          price: price ?? null,
        })),
        note: event.note ?? null,
      }),
  ),
};
