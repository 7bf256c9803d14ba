import { z } from 'zod';
import { globalId } from '../../api/kit/globalId.js';
import { recordAcquisition } from '../acquisitions/recordAcquisition.js';
import { SpreadMethod } from '../acquisitions/spreadMethod.js';
import { recordExpense } from '../expenses/recordExpense.js';
import type { DemoNames } from './demoNames.js';
import { storyVerb, text } from './storyEvent.js';

/** `240.00 EUR`. */
export const moneyShape = z
  .string()
  .regex(/^-?\d+(\.\d+)? [A-Z]{3}$/, 'Write money as 240.00 EUR.')
  .transform((written) => {
    const [amount = '', currency = ''] = written.split(' ');
    return { amount, currency };
  });

const line = z.union([
  z.strictObject({ item: text, share: z.string().optional(), value: z.string().optional() }),
  z.strictObject({ sundries: text, share: z.string().optional(), value: z.string().optional() }),
]);

export const personChoice = (names: DemoNames, name: string | undefined) =>
  name === undefined ? null : { id: names.id('person', name), kind: 'PERSON' as const };

export const moneyVerbs = {
  buy: storyVerb(
    'recordAcquisition',
    {
      lot: text,
      from: text.optional(),
      venue: text.optional(),
      price: moneyShape,
      extras: z.record(text, moneyShape).default({}),
      spread: z.enum(SpreadMethod).default('EQUAL_SHARES'),
      lines: z.array(line).min(1),
      claims: z.array(z.strictObject({ about: text.optional(), statement: text })).default([]),
      note: text.optional(),
    },
    async ({ work, clock, names }, event) => {
      const numbers = event.lines.map((one) => ('item' in one ? one.item : null));
      const id = await recordAcquisition(work, {
        acquiredOn: clock.day(event.at.slice(0, 10)),
        otherParty: personChoice(names, event.from),
        venue: event.venue ?? null,
        price: event.price,
        extraCosts: Object.entries(event.extras).map(([description, amount]) => ({
          description,
          amount,
        })),
        spreadMethod: event.spread,
        lines: event.lines.map(({ share, value, ...what }) => ({
          itemId: 'item' in what ? names.id('item', what.item) : null,
          sundries: 'sundries' in what ? what.sundries : null,
          statedShare: share ?? null,
          statedValue: value ?? null,
        })),
        claims: event.claims.map(({ about, statement }) => {
          const position = about === undefined ? null : numbers.indexOf(about);
          if (position === -1) throw new Error(`“${about ?? ''}” is not in this lot.`);
          return { statement, line: position };
        }),
        note: event.note ?? null,
      });
      names.keep('lot', event.lot, globalId('Acquisition', id));
    },
  ),

  spend: storyVerb(
    'recordExpense',
    {
      amount: moneyShape,
      on: text,
      project: text.optional(),
      paidTo: text.optional(),
      note: text.optional(),
    },
    ({ work, clock, names, item }, event) =>
      recordExpense(work, {
        itemId: names.id('item', item),
        projectId: names.optionalId(
          'project',
          event.project === undefined ? undefined : `${item} ${event.project}`,
        ),
        spentOn: clock.day(event.at.slice(0, 10)),
        amount: event.amount,
        description: event.on,
        paidTo: personChoice(names, event.paidTo),
        note: event.note ?? null,
      }),
  ),
};
