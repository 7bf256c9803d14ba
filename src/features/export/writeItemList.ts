import type { Reader } from '../../db/reader.js';
import { formatAmount } from '../../domain/money/formatAmount.js';
import type { ItemKind } from '../items/itemKind.js';
import { currencyExponent } from '../money/currencyExponent.js';
import { csvText } from './csvText.js';
import { placeWays } from './placeWays.js';

const headings = [
  ...['Inventory number', 'Name', 'Maker', 'Model', 'Role', 'Serial number', 'Made', 'Place'],
  ...['Acquired on', 'Price', 'Currency', 'Seller', 'Venue', 'Note'],
];

interface ListedItem {
  id: string;
  placeId: string | null;
  minorUnits: number | null;
  currency: string | null;
  [column: string]: string | number | null;
}

const rowsAtOnce = 1000;

/** What was paid for a thing bought alone; the price of a lot stands in acquisition.csv. */
const statement = `SELECT item.id AS "id", item.inventory_number AS "number", item.name AS "name",
    model.maker AS "maker", model.designation AS "model", item.role AS "role",
    item.serial_number AS "serial", item.made_edtf AS "made", item.place_id AS "placeId",
    lot.acquired_on AS "acquiredOn", lot.currency AS "currency", party.name AS "seller",
    lot.venue AS "venue", item.note AS "note",
    CASE WHEN (SELECT COUNT(*) FROM lot_line AS other WHERE other.acquisition_id = lot.id) = 1
      THEN lot.price_minor_units END AS "minorUnits"
  FROM item
  LEFT JOIN model ON model.id = item.model_id
  LEFT JOIN lot_line ON lot_line.item_id = item.id
  LEFT JOIN acquisition AS lot ON lot.id = lot_line.acquisition_id
  LEFT JOIN party ON party.id = lot.other_party_id
  WHERE item.kind = ? AND item.retired_at IS NULL AND item.id > ?
  ORDER BY item.id LIMIT ?`;

/** The rigs or accessories in use as a list that `reglow import` reads. */
export async function* writeItemList(reader: Reader, kind: ItemKind): AsyncGenerator<string> {
  const wayTo = await placeWays(reader);
  yield csvText([headings]);
  for (let last = ''; ;) {
    const items = await reader.rows<ListedItem>(statement, [kind, last, rowsAtOnce]);
    const lastItem = items.at(-1);
    if (lastItem === undefined) return;
    last = lastItem.id;
    yield csvText(
      items.map((item) => [
        ...[item['number'], item['name'], item['maker'], item['model'], item['role']],
        ...[item['serial'], item['made'], wayTo(item.placeId), item['acquiredOn'], priceOf(item)],
        ...[item.minorUnits === null ? null : item.currency, item['seller'], item['venue']],
        item['note'],
      ]),
    );
  }
}

function priceOf({ minorUnits, currency }: ListedItem): string | null {
  if (minorUnits === null || currency === null) return null;
  return formatAmount(minorUnits, currencyExponent(currency) ?? 2);
}
