import type { RowSource } from '../../db/rowSource.js';
import { lotShares, type LotShare } from '../../domain/money/lotShares.js';
import { readLots, type KeptLotLine } from './lots.reads.js';
import type { SpreadMethod } from './spreadMethod.js';

/** One line of a lot with what falls to it. */
export interface LotLineWithShare extends KeptLotLine, LotShare {
  acquisitionId: string;
  /** Currency of the lot, and of its lines' stated values. */
  currency: string;
  spreadMethod: SpreadMethod;
  /** How many lines the lot was spread over, and how many extra costs with it. */
  lineCount: number;
  extraCostCount: number;
}

/** What an item has cost to come in. */
export type ItemLotShare = LotLineWithShare & { itemId: string };

/** The lines of lots with what falls to each, lot by lot in their order. Three statements. */
export async function readLotLines(
  source: RowSource,
  by: 'lot' | 'line' | 'item',
  ids: readonly string[],
): Promise<LotLineWithShare[]> {
  const lots = await readLots(source, by, ids);
  return lots.flatMap(({ acquisitionId, ...lot }) => {
    const shares = lotShares(lot);
    return lot.lines.map((line, index) => ({
      ...line,
      ...(shares[index] as LotShare),
      acquisitionId,
      currency: lot.price.currency,
      spreadMethod: lot.spreadMethod,
      lineCount: lot.lines.length,
      extraCostCount: lot.extraCosts.length,
    }));
  });
}

/** What each of these items cost to come in; items that came in no lot are left out. */
export async function readItemLotShares(
  source: RowSource,
  itemIds: readonly string[],
): Promise<ItemLotShare[]> {
  const wanted = new Set(itemIds);
  const lines = await readLotLines(source, 'item', itemIds);
  return lines.filter(
    (line): line is ItemLotShare => line.itemId !== null && wanted.has(line.itemId),
  );
}
