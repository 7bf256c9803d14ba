import type { ApiContext } from '../../api/kit/apiContext.js';
import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { fitOutCompleteness } from '../../domain/completeness/fitOutCompleteness.js';
import { sumByCurrency } from '../../domain/money/sumByCurrency.js';
import { readCompletenessFacts } from '../inspections/completenessFacts.reads.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { readNotedPrices } from '../prices/notedPrices.reads.js';
import { shownPrices } from '../prices/shownPrices.js';
import type { PriceEstimate } from '../prices/price.type.js';
import { donors } from './donors.reads.js';

interface MissingRow extends Row {
  partTypeId: string | null;
  isRequired: boolean;
  price: PriceEstimate | null;
}

/** Computed for an item and never asked for by an id of its own. */
export const missingPartReads: TypeReads = {
  typeName: 'MissingPart',
  byIds: () => Promise.resolve([]),
  relations: {
    position: one('FitOutPosition', 'positionId'),
    partType: one('PartType', 'partTypeId'),
    donors,
  },
};

/** What each item lacks against its fit-out, with prices, required positions first. */
export async function readMissing(
  { database: { reader }, nowMs }: ApiContext,
  itemIds: readonly string[],
): Promise<MissingRow[][]> {
  const facts = await readCompletenessFacts(reader, itemIds);
  const lacking = itemIds.map((itemId) => {
    const own = facts.get(itemId);
    if (!own) return [];
    const { positions } = fitOutCompleteness(own.fitOut, own.checks, own.fittings, nowMs);
    const rows = positions.flatMap(({ state, isRequired }, index) => {
      const position = own.fitOut[index];
      if (!position || (state !== 'MISSING' && state !== 'WRONG')) return [];
      const { positionId, partTypeId } = position;
      const isWronglyFilled = state === 'WRONG';
      return [{ id: positionId, itemId, positionId, partTypeId, isRequired, isWronglyFilled }];
    });
    return rows.sort((a, b) => Number(b.isRequired) - Number(a.isRequired));
  });
  const wanted = new Set(lacking.flat().flatMap(({ partTypeId }) => partTypeId ?? []));
  const notes = await readNotedPrices(reader, 'part_type_id', [...wanted]);
  return lacking.map((rows) =>
    rows.map((row) => {
      const [price] = shownPrices(notes.get(row.partTypeId ?? '') ?? [], nowMs);
      return { ...row, price: price ?? null };
    }),
  );
}

const missingParts: Relation = async (context, items) => {
  const values = await readMissing(
    context,
    items.map(({ id }) => id),
  );
  return { values, children: values.flat(), childType: 'MissingPart' };
};

const missingPartsCost: Relation = async (context, items) => {
  const missing = await readMissing(
    context,
    items.map(({ id }) => id),
  );
  const asOf = new Date(context.nowMs).toISOString();
  const values = missing.map((rows) => {
    const required = rows.filter(({ isRequired }) => isRequired);
    const medians = required.flatMap(({ price }) => price?.median ?? []);
    const totals = sumByCurrency(medians).map((sum) => moneyAmount(sum.minorUnits, sum.currency));
    const unpricedCount = required.length - medians.length;
    return {
      totals,
      unpricedCount,
      basis: {
        method:
          'Sum of the median recent price of one for each required position that is empty or wrongly filled.',
        counted: [
          { what: 'required parts missing', count: required.length },
          { what: 'of them with a recent price', count: medians.length },
        ],
        assumptions: ['A part without a recent price adds nothing to the sum.'],
        asOf,
      },
    };
  });
  return { values, children: [], childType: null };
};

export const missingPartRelationsOfItem = { missingParts, missingPartsCost };
