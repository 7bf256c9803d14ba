import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { HazardFacts } from '../../domain/readiness/readinessFacts.js';
import { hazardGuide } from './hazardGuide.js';
import type { HazardKind } from './hazardKind.js';

/** The hazards of many items that are not cleared, with their cautions; none, no entry. */
export async function readOpenHazards(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, HazardFacts[]>> {
  const found = await rows<HazardRow>(
    `SELECT hazard.id AS "id", hazard.item_id AS "itemId", hazard.kind AS "kind",
       hazard.note AS "note"
     FROM hazard WHERE ${dialect.isAnyOf('hazard.item_id')} AND hazard.cleared_at IS NULL
     ORDER BY hazard.raised_at, hazard.id`,
    [listParameter(itemIds)],
  );
  const byItem = groupedBy(found, (row) => row.itemId);
  return new Map([...byItem].map(([itemId, rowsOfItem]) => [itemId, rowsOfItem.map(hazardFacts)]));
}

interface HazardRow {
  id: string;
  itemId: string;
  kind: HazardKind;
  note: string | null;
}

function hazardFacts({ id, kind, note }: HazardRow): HazardFacts {
  const guide = hazardGuide(kind);
  return {
    hazardId: id,
    description: note ?? guide.recognisedBy,
    caution: guide.cautions.join(' '),
    isCleared: false,
    clearedByCheck: guide.clearedBy,
    isByDesign: guide.belongsToDesign,
  };
}
