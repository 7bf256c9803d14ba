import { z } from 'zod';
import { createMatchedSet } from '../matchedSets/createMatchedSet.js';
import { notePrice } from '../prices/notePrice.js';
import { PriceKind } from '../prices/priceKind.js';
import { ReadingTier } from '../readings/readingTier.js';
import { addStock } from '../stock/addStock.js';
import { StockCondition } from '../stock/stockCondition.js';
import { recordSubstitution } from '../substitution/recordSubstitution.js';
import { SubstitutionGrade } from '../substitution/substitutionGrade.js';
import { recordSweep } from '../sweeps/recordSweep.js';
import { compareInstruments } from '../trends/compareInstruments.js';
import { addWant } from '../wants/addWant.js';
import { moneyShape } from './moneyVerbs.js';
import { sittingIn } from './partVerbs.js';
import { storyVerb, text } from './storyEvent.js';

/** Spares, what is looked for, prices seen, and readings of many parts at once. */
export const shelfVerbs = {
  stock: storyVerb(
    'addStock',
    {
      part: text,
      quantity: z.int(),
      place: text.optional(),
      condition: z.enum(StockCondition).default('UNKNOWN'),
      cost: moneyShape.optional(),
      note: text.optional(),
    },
    ({ work, names, clock }, { at, part, quantity, place, condition, cost, note }) =>
      addStock(work, {
        partTypeId: names.id('part type', part),
        quantity,
        placeId: names.optionalId('place', place),
        condition,
        receivedOn: clock.day(at.slice(0, 10)),
        cost: cost ?? null,
        note: note ?? null,
      }),
  ),

  want: storyVerb(
    'addWant',
    {
      part: text.optional(),
      what: text.optional(),
      quantity: z.int().default(1),
      in: text.optional(),
      ceiling: moneyShape.optional(),
      instead: z.array(text).default([]),
      note: text.optional(),
    },
    ({ work, names, item }, event) =>
      addWant(work, {
        partTypeId: names.optionalId('part type', event.part),
        description: event.what ?? null,
        quantity: event.quantity,
        itemId: item === '' ? null : names.id('item', item),
        designator: event.in ?? null,
        ceiling: event.ceiling ?? null,
        substituteIds: event.instead.map((name) => names.id('part type', name)),
        note: event.note ?? null,
      }),
  ),

  price: storyVerb(
    'notePrice',
    {
      of: text,
      kind: z.enum(PriceKind),
      amount: moneyShape,
      quantity: z.int().default(1),
      seenAt: text,
      note: text.optional(),
    },
    ({ work, names, clock }, { at, of, note, ...price }) =>
      notePrice(work, {
        ...price,
        partTypeId: names.id('part type', of),
        notedOn: clock.day(at.slice(0, 10)),
        note: note ?? null,
      }),
  ),

  serves: storyVerb(
    'recordSubstitution',
    {
      original: text,
      substitute: text,
      grade: z.enum(SubstitutionGrade),
      isMutual: z.boolean().default(false),
      consequence: text.optional(),
      recheck: text.optional(),
      source: text,
    },
    ({ work, names }, { original, substitute, consequence, recheck, grade, isMutual, source }) =>
      recordSubstitution(work, {
        grade,
        isMutual,
        source,
        originalId: names.id('part type', original),
        substituteId: names.id('part type', substitute),
        consequence: consequence ?? null,
        recheck: recheck ?? null,
      }),
  ),

  sweep: storyVerb(
    'recordSweep',
    {
      key: text,
      by: text.optional(),
      tier: z.enum(ReadingTier),
      instrument: text.optional(),
      quantity: text,
      unit: text,
      /** Position → value. */
      values: z.record(text, z.string()),
    },
    ({ work, names, item }, { key, by, tier, instrument, quantity, unit, values }) =>
      recordSweep(work, {
        key,
        itemId: names.id('item', item),
        tier,
        instrument: instrument ?? null,
        takenAt: new Date(work.now),
        takenById: names.optionalId('person', by),
        quantities: [{ quantity, unit }],
        rows: Object.entries(values).map(([designator, value]) => ({
          designator,
          values: [value],
        })),
        fitsExpected: false,
      }),
  ),

  match: storyVerb(
    'createMatchedSet',
    {
      name: text,
      quantity: text,
      tier: z.enum(ReadingTier),
      within: z.string(),
      source: text,
      positions: z.array(text).min(2),
    },
    async (telling, { name, quantity, tier, within, source, positions }) => {
      const componentIds: string[] = [];
      for (const position of positions) componentIds.push(await sittingIn(telling, position));
      return createMatchedSet(telling.work, {
        name,
        quantity,
        tier,
        largestMismatchPercent: within,
        source,
        componentIds,
      });
    },
  ),

  compare: storyVerb(
    'compareInstruments',
    { quantity: text, from: text, to: text, factor: z.string(), note: text.optional() },
    ({ work, clock }, { at, quantity, from, to, factor, note }) =>
      compareInstruments(work, {
        quantity,
        fromInstrument: from,
        toInstrument: to,
        factor,
        comparedOn: clock.day(at.slice(0, 10)),
        note: note ?? null,
      }),
  ),
};
