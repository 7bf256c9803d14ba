import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import type { BookedItem, Dated } from '../../domain/worth/yearlyBooks.js';
import { presentStandard } from '../worth/presentStandard.js';
import { readNotedValues, readWorthSubjects } from '../worth/worthFacts.reads.js';

interface ItemRow {
  itemId: string;
  cameOn: string | null;
  leftOn: string | null;
}

interface CostRow {
  itemId: string;
  day: string | null;
  amount: number | string;
  currency: string;
}

/** Every item that there ever was, with its dated costs and values, in a fixed number of statements. */
export async function readBookedItems(source: RowSource): Promise<BookedItem[]> {
  const { rows } = source;
  const items = await rows<ItemRow>(
    `SELECT item.id AS "itemId",
       (SELECT MIN(acquisition.acquired_on) FROM lot_line
          JOIN acquisition ON acquisition.id = lot_line.acquisition_id
          WHERE lot_line.item_id = item.id) AS "cameOn",
       COALESCE((SELECT MAX(disposal.disposed_on) FROM disposal_line
          JOIN disposal ON disposal.id = disposal_line.disposal_id
          WHERE disposal_line.item_id = item.id), SUBSTR(item.retired_at, 1, 10)) AS "leftOn"
     FROM item`,
  );
  const bought = await rows<CostRow>(
    `SELECT item_cost.item_id AS "itemId", item_cost.currency AS "currency",
       item_cost.price_minor_units + item_cost.extra_minor_units AS "amount",
       (SELECT MIN(acquisition.acquired_on) FROM lot_line
          JOIN acquisition ON acquisition.id = lot_line.acquisition_id
          WHERE lot_line.item_id = item_cost.item_id) AS "day"
     FROM item_cost`,
  );
  const spent = await rows<CostRow>(
    `SELECT item_id AS "itemId", spent_on AS "day", amount_minor_units AS "amount",
       currency AS "currency" FROM expense`,
  );
  const costs = groupedBy([...bought, ...spent], ({ itemId }) => itemId);
  const subjects = await readWorthSubjects(
    source,
    items.map(({ itemId }) => itemId),
  );
  const byItem = new Map(subjects.map((subject) => [subject.itemId, subject]));
  const owners = subjects.flatMap(({ itemId, modelId }) => [itemId, ...(modelId ? [modelId] : [])]);
  const notes = await readNotedValues(source, [...new Set(owners)]);
  return items.map(({ itemId, cameOn, leftOn }) => {
    const subject = byItem.get(itemId);
    const standard = subject ? presentStandard(subject)[0] : null;
    const own = (notes.get(itemId) ?? []).filter(({ basis }) => basis === 'FAIR_MARKET');
    const ofModel = (notes.get(subject?.modelId ?? '') ?? []).filter(
      (note) => note.basis === 'FAIR_MARKET' && note.standard === standard,
    );
    return {
      cameOn,
      leftOn,
      costs: (costs.get(itemId) ?? []).flatMap(({ day, amount, currency }): Dated[] =>
        day === null ? [] : [{ day, money: { minorUnits: Number(amount), currency } }],
      ),
      values: (own.length > 0 ? own : ofModel).map(
        ({ valuedOn, likelyMinorUnits, currency }): Dated => ({
          day: valuedOn,
          money: { minorUnits: Number(likelyMinorUnits), currency },
        }),
      ),
    };
  });
}
