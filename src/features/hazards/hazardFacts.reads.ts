import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { HazardFacts } from '../../domain/readiness/readinessFacts.js';
import { hazardGuide } from './hazardGuide.js';
import type { HazardKind } from './hazardKind.js';

/**
 * The hazards of many items, with their cautions; none, no entry.
 * @param at an instant: every hazard raised by then, as it stood; left out: those not cleared.
 */
export async function readHazards(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
  at?: string,
): Promise<Map<string, HazardFacts[]>> {
  const found = await rows<HazardRow>(
    `SELECT hazard.id AS "id", hazard.item_id AS "itemId", hazard.kind AS "kind",
       hazard.note AS "note", hazard.raised_at AS "raisedAt", hazard.cleared_at AS "clearedAt",
       hazard.cleared_by_check AS "checkDone"
     FROM hazard WHERE ${dialect.isAnyOf('hazard.item_id')}
       AND ${at === undefined ? 'hazard.cleared_at IS NULL' : 'hazard.raised_at <= ?'}
     ORDER BY hazard.raised_at, hazard.id`,
    [listParameter(itemIds), ...(at === undefined ? [] : [at])],
  );
  const byItem = groupedBy(found, (row) => row.itemId);
  return new Map(
    [...byItem].map(([itemId, own]) => [itemId, own.map((row) => hazardFacts(row, at))]),
  );
}

interface HazardRow {
  id: string;
  itemId: string;
  kind: HazardKind;
  note: string | null;
  raisedAt: string;
  clearedAt: string | null;
  checkDone: string | null;
}

function hazardFacts(row: HazardRow, at: string | undefined): HazardFacts {
  const { id, kind, note, raisedAt, clearedAt, checkDone } = row;
  const guide = hazardGuide(kind);
  return {
    hazardId: id,
    description: note ?? guide.recognisedBy,
    caution: guide.cautions.join(' '),
    isCleared: clearedAt !== null && at !== undefined && clearedAt <= at,
    raisedAtMs: Date.parse(raisedAt),
    clearedAtMs: clearedAt === null ? null : Date.parse(clearedAt),
    checkDone,
    clearedByCheck: guide.clearedBy,
    isByDesign: guide.belongsToDesign,
  };
}
