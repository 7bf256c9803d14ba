import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { apportion } from '../../domain/money/apportion.js';
import type { Money } from '../../domain/money/money.js';
import { sumInCurrency } from '../../domain/money/sumInCurrency.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { rateInWords, readRateTable } from '../rates/rateTable.reads.js';
import { shownBasis } from '../standing/standingFacts.js';
import type { DisposalResult } from './books.type.js';

interface LineRow {
  disposalId: string;
  itemId: string;
  inventoryNumber: string;
  disposedOn: string;
  price: number | string;
  currency: string;
}

interface AmountRow {
  id: string;
  amount: number | string;
  currency: string;
}

const asMoney = ({ amount, currency }: AmountRow): Money => ({
  minorUnits: Number(amount),
  currency,
});

/** Gain or loss on every item that went for good, in one currency, by rates up to the day it went. */
export async function disposalResults(
  source: RowSource,
  currency: string,
  nowMs: number,
): Promise<DisposalResult[]> {
  const { rows } = source;
  const lines = await rows<LineRow>(
    `SELECT disposal.id AS "disposalId", item.id AS "itemId",
       item.inventory_number AS "inventoryNumber", disposal.disposed_on AS "disposedOn",
       disposal_line.price_minor_units AS "price", disposal.currency AS "currency"
     FROM disposal_line JOIN disposal ON disposal.id = disposal_line.disposal_id
       JOIN item ON item.id = disposal_line.item_id
     ORDER BY disposal.disposed_on DESC, disposal.id, disposal_line.ordinal`,
  );
  const selling = groupedBy(
    await rows<AmountRow>(
      `SELECT disposal_id AS "id", amount_minor_units AS "amount", currency AS "currency"
       FROM disposal_cost ORDER BY id`,
    ),
    ({ id }) => id,
  );
  const paid = groupedBy(
    await rows<AmountRow>(
      `SELECT item_id AS "id", total_minor_units AS "amount", currency AS "currency" FROM item_cost
       WHERE item_id IN (SELECT item_id FROM disposal_line)`,
    ),
    ({ id }) => id,
  );
  const table = await readRateTable(source, new Date(nowMs).toISOString().slice(0, 10));
  return [...groupedBy(lines, ({ disposalId }) => disposalId).values()].flatMap((lot) => {
    const weights = lot.map(({ price }) => Number(price));
    const isFree = weights.some((weight) => weight <= 0);
    const shares = (selling.get(lot[0]?.disposalId ?? '') ?? []).map((cost) =>
      apportion(Number(cost.amount), isFree ? lot.map(() => 1) : weights).map((minorUnits) => ({
        minorUnits,
        currency: cost.currency,
      })),
    );
    return lot.map((line, index): DisposalResult => {
      const asOf = { ...table, day: line.disposedOn };
      const sums = [
        [{ minorUnits: Number(line.price), currency: line.currency }],
        shares.flatMap((parts) => parts[index] ?? []),
        (paid.get(line.itemId) ?? []).map(asMoney),
      ].map((amounts) => sumInCurrency(amounts, currency, asOf));
      const [proceeds, sellingCosts, cost] = sums.map((sum) =>
        sum.kind === 'SUM' ? sum.total.minorUnits : null,
      );
      const shown = (amount: number | null | undefined) =>
        amount === null || amount === undefined ? null : moneyAmount(amount, currency);
      const isWhole = sums.every(({ kind }) => kind === 'SUM');
      const gain = isWhole ? (proceeds ?? 0) - (sellingCosts ?? 0) - (cost ?? 0) : null;
      return {
        disposalId: `Disposal_${line.disposalId}`,
        inventoryNumber: line.inventoryNumber,
        disposedOn: line.disposedOn,
        proceeds: shown(proceeds),
        sellingCosts: shown(sellingCosts),
        cost: shown(cost),
        gain: shown(gain),
        basis: shownBasis(
          {
            method:
              'Its part of the price, less its part of what the disposal cost (spread by price, to the last minor unit), less all that was spent on it; by the newest rates up to the day it went.',
            counted: [{ what: 'things in the disposal', count: lot.length }],
          },
          nowMs,
          sums.flatMap((sum) => (sum.kind === 'SUM' ? sum.usedRates.map(rateInWords) : [sum.why])),
        ),
      };
    });
  });
}
