import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { FitOutPosition } from '../../domain/completeness/fitOutPosition.js';
import type { PositionCheck } from '../../domain/completeness/positionCheck.js';
import type { Fitting } from '../../domain/parts/fitting.js';
import type { PositionState } from './positionState.js';

/** A position of the fit-out as it is kept; its key in the facts is its designator. */
export interface KeptPosition extends FitOutPosition {
  readonly positionId: string;
  readonly partTypeId: string | null;
}

/** What the completeness of one item is computed from (`fitOutCompleteness`). */
export interface CompletenessFacts {
  /** In the order of the model's list; empty without a model or without a fit-out. */
  readonly fitOut: readonly KeptPosition[];
  readonly checks: readonly PositionCheck[];
  readonly fittings: readonly Fitting[];
}

/** The facts of many items in three statements; every item asked for has an entry. */
export async function readCompletenessFacts(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, CompletenessFacts>> {
  const ids = [listParameter(itemIds)];
  const [positions, checks, fittings] = [
    await rows<PositionRow>(
      `SELECT item.id AS "itemId", fit_out_position.id AS "positionId",
         fit_out_position.designator AS "positionKey",
         fit_out_position.is_required AS "isRequired", fit_out_position.part_type_id AS "partTypeId"
       FROM item JOIN fit_out_position ON fit_out_position.model_id = item.model_id
       WHERE ${dialect.isAnyOf('item.id')}
       ORDER BY fit_out_position.ordinal, natural_key(fit_out_position.designator)`,
      ids,
    ),
    await rows<CheckRow>(
      `SELECT fit_out_check.item_id AS "itemId", fit_out_check.id AS "checkId",
         fit_out_position.designator AS "positionKey", fit_out_check.state AS "state",
         fit_out_check.checked_at AS "checkedAt"
       FROM fit_out_check JOIN fit_out_position ON fit_out_position.id = fit_out_check.position_id
       WHERE ${dialect.isAnyOf('fit_out_check.item_id')} ORDER BY fit_out_check.id`,
      ids,
    ),
    await rows<FittingRow>(
      `SELECT fitting.item_id AS "itemId", fitting.component_id AS "componentId",
         fitting.designator AS "positionKey", fitting.fitted_at AS "fittedAt",
         fitting.removed_at AS "removedAt"
       FROM fitting WHERE ${dialect.isAnyOf('fitting.item_id')} ORDER BY fitting.id`,
      ids,
    ),
  ];
  const fitOuts = groupedBy(positions, (row) => row.itemId);
  const checksOf = groupedBy(checks, (row) => row.itemId);
  const fittingsOf = groupedBy(fittings, (row) => row.itemId);
  return new Map(
    itemIds.map((itemId) => [
      itemId,
      {
        fitOut: (fitOuts.get(itemId) ?? []).map(keptPosition),
        checks: (checksOf.get(itemId) ?? []).map(positionCheck),
        fittings: (fittingsOf.get(itemId) ?? []).map(domainFitting),
      },
    ]),
  );
}

interface PositionRow {
  itemId: string;
  positionId: string;
  positionKey: string;
  /** SQLite gives 0 or 1. */
  isRequired: boolean | number;
  partTypeId: string | null;
}
interface CheckRow {
  itemId: string;
  checkId: string;
  positionKey: string;
  state: PositionState;
  checkedAt: string;
}
interface FittingRow {
  itemId: string;
  componentId: string;
  positionKey: string;
  fittedAt: string;
  removedAt: string | null;
}

const keptPosition = (row: PositionRow): KeptPosition => ({
  positionKey: row.positionKey,
  isRequired: Boolean(row.isRequired),
  positionId: row.positionId,
  partTypeId: row.partTypeId,
});

const positionCheck = (row: CheckRow): PositionCheck => ({
  checkId: row.checkId,
  positionKey: row.positionKey,
  state: row.state,
  checkedAtMs: Date.parse(row.checkedAt),
});

const domainFitting = (row: FittingRow): Fitting => ({
  componentId: row.componentId,
  positionKey: row.positionKey,
  fittedAtMs: Date.parse(row.fittedAt),
  removedAtMs: row.removedAt === null ? null : Date.parse(row.removedAt),
});
