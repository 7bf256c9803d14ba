import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { TargetStandard } from '../projects/targetStandard.js';
import type { Uncertainty } from './uncertainty.js';

export const readTargets = ({ rows, dialect }: RowSource, projectIds: readonly string[]) =>
  rows<{ id: string; target: TargetStandard }>(
    `SELECT id AS "id", target_standard AS "target" FROM project WHERE ${dialect.isAnyOf('id')}`,
    [listParameter(projectIds)],
  );

/** What items have cost so far, a currency each. */
export const readItemCosts = ({ rows, dialect }: RowSource, itemIds: readonly string[]) =>
  rows<{ itemId: string; currency: string; amount: number | string }>(
    `SELECT item_id AS "itemId", currency AS "currency", total_minor_units AS "amount"
     FROM item_cost WHERE ${dialect.isAnyOf('item_id')}`,
    [listParameter(itemIds)],
  );

export interface OpenInquiry {
  id: string;
  projectId: string;
  description: string;
  resolves: Uncertainty;
  plannedCostId: string | null;
  partTypeId: string | null;
  costMinorUnits: number;
  costCurrency: string;
  minutes: number;
}

export const readOpenInquiries = ({ rows, dialect }: RowSource, projectIds: readonly string[]) =>
  rows<OpenInquiry>(
    `SELECT id AS "id", project_id AS "projectId", description AS "description",
       resolves AS "resolves", planned_cost_id AS "plannedCostId", part_type_id AS "partTypeId",
       cost_minor_units AS "costMinorUnits", cost_currency AS "costCurrency", minutes AS "minutes"
     FROM inquiry WHERE done_at IS NULL AND struck_at IS NULL AND ${dialect.isAnyOf('project_id')}
     ORDER BY recorded_at, id`,
    [listParameter(projectIds)],
  );
