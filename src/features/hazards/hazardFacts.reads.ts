import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { closedAt, type ClosedSpell } from '../../domain/readiness/closedSpells.js';
import type { HazardFacts } from '../../domain/readiness/readinessFacts.js';
import { readClosings, type ClosableRow } from '../history/closings.reads.js';
import { hazardGuide } from './hazardGuide.js';
import type { HazardKind } from './hazardKind.js';

/**
 * The hazards of many items, with their cautions; none, no entry.
 * @param at an instant: every hazard raised by then, as it stood; left out: those not cleared.
 */
export async function readHazards(
  source: RowSource,
  itemIds: readonly string[],
  at?: string,
): Promise<Map<string, HazardFacts[]>> {
  const { rows, dialect } = source;
  const found = await rows<HazardRow>(
    `SELECT hazard.id AS "id", hazard.version AS "version", hazard.item_id AS "itemId",
       hazard.kind AS "kind", hazard.note AS "note", hazard.raised_at AS "raisedAt",
       hazard.cleared_at AS "closedAt", hazard.cleared_by_check AS "how"
     FROM hazard WHERE ${dialect.isAnyOf('hazard.item_id')}
       AND ${at === undefined ? 'hazard.cleared_at IS NULL' : 'hazard.raised_at <= ?'}
     ORDER BY hazard.raised_at, hazard.id`,
    [listParameter(itemIds), ...(at === undefined ? [] : [at])],
  );
  const columns = { closedAt: 'clearedAt', how: 'clearedByCheck' };
  const cleared =
    at === undefined ? undefined : await readClosings(source, 'hazard', columns, found);
  const clearedThen = ({ id }: HazardRow) =>
    at === undefined ? undefined : closedAt(cleared?.get(id) ?? [], at);
  const byItem = groupedBy(found, (row) => row.itemId);
  return new Map(
    [...byItem].map(([itemId, own]) => [
      itemId,
      own.map((row) => hazardFacts(row, clearedThen(row))),
    ]),
  );
}

interface HazardRow extends ClosableRow {
  itemId: string;
  kind: HazardKind;
  note: string | null;
  raisedAt: string;
}

function hazardFacts(row: HazardRow, cleared: ClosedSpell | undefined): HazardFacts {
  const { id, kind, note, raisedAt } = row;
  const guide = hazardGuide(kind);
  return {
    hazardId: id,
    description: note ?? guide.recognisedBy,
    caution: guide.cautions.join(' '),
    isCleared: cleared !== undefined,
    raisedAtMs: Date.parse(raisedAt),
    clearedAtMs: cleared === undefined ? null : Date.parse(cleared.from),
    checkDone: cleared?.how ?? null,
    clearedByCheck: guide.clearedBy,
    isByDesign: guide.belongsToDesign,
  };
}
