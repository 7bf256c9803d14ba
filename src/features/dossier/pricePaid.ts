import type { Reader } from '../../db/reader.js';
import { formatAmount } from '../../domain/money/formatAmount.js';
import { currencyExponent } from '../money/currencyExponent.js';

/** What the lot cost with which the item came, in words. */
export async function pricePaid(reader: Reader, itemId: string): Promise<string> {
  const [lot] = await reader.rows<{
    minorUnits: number;
    currency: string;
    acquiredOn: string;
    things: number;
  }>(
    `SELECT lot.price_minor_units AS "minorUnits", lot.currency AS "currency",
       lot.acquired_on AS "acquiredOn",
       (SELECT COUNT(*) FROM lot_line AS other WHERE other.acquisition_id = lot.id) AS "things"
     FROM lot_line JOIN acquisition AS lot ON lot.id = lot_line.acquisition_id
     WHERE lot_line.item_id = ? ORDER BY lot.acquired_on, lot.id LIMIT 1`,
    [itemId],
  );
  if (!lot) return 'not recorded';
  const { minorUnits, currency, acquiredOn, things } = lot;
  const amount = formatAmount(Number(minorUnits), currencyExponent(currency) ?? 2);
  const lotOf = Number(things) > 1 ? `, for a lot of ${Number(things)} things` : '';
  return `${amount} ${currency} on ${acquiredOn}${lotOf}`;
}
