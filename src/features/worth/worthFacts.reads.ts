import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { Standard } from '../../domain/worth/standards.js';
import type { TargetStandard } from '../projects/targetStandard.js';
import { usualTerms, type Terms } from './usualTerms.js';
import type { ValueBasis } from './valueBasis.js';

/** What an item's worth is reckoned from, beside its value notes. */
export interface WorthSubject {
  itemId: string;
  modelId: string | null;
  inventoryNumber: string;
  presentStandard: Standard | null;
  successPercent: number | null;
  premiumMinorUnits: number | null;
  premiumCurrency: string | null;
  premiumReason: string | null;
  /** What the last completed restoration aimed at. */
  reached: TargetStandard | null;
  /** What the open restoration aims at. */
  target: TargetStandard | null;
}

const projectStandard = (statuses: string): string =>
  `(SELECT target_standard FROM project WHERE project.item_id = item.id
     AND project.status IN (${statuses}) ORDER BY project.recorded_at DESC, project.id DESC LIMIT 1)`;

export const readWorthSubjects = ({ rows, dialect }: RowSource, itemIds: readonly string[]) =>
  rows<WorthSubject>(
    `SELECT item.id AS "itemId", item.model_id AS "modelId",
       item.inventory_number AS "inventoryNumber",
       item_outlook.present_standard AS "presentStandard",
       item_outlook.success_percent AS "successPercent",
       item_outlook.premium_minor_units AS "premiumMinorUnits",
       item_outlook.premium_currency AS "premiumCurrency",
       item_outlook.premium_reason AS "premiumReason",
       ${projectStandard("'COMPLETED'")} AS "reached",
       ${projectStandard("'PLANNED', 'ACTIVE', 'DEFERRED'")} AS "target"
     FROM item LEFT JOIN item_outlook ON item_outlook.item_id = item.id
     WHERE ${dialect.isAnyOf('item.id')}`,
    [listParameter(itemIds)],
  );

export interface NotedValue {
  ownerId: string;
  basis: ValueBasis;
  standard: Standard;
  valuedOn: string;
  lowMinorUnits: number | null;
  likelyMinorUnits: number;
  highMinorUnits: number | null;
  currency: string;
  source: string;
}

/** Value notes that count, by the item or model they are of; the newest first. */
export async function readNotedValues(
  { rows, dialect }: RowSource,
  ownerIds: readonly string[],
): Promise<Map<string, NotedValue[]>> {
  const ids = listParameter(ownerIds);
  const found = await rows<NotedValue>(
    `SELECT COALESCE(item_id, model_id) AS "ownerId", basis AS "basis", standard AS "standard",
       valued_on AS "valuedOn", low_minor_units AS "lowMinorUnits",
       likely_minor_units AS "likelyMinorUnits", high_minor_units AS "highMinorUnits",
       currency AS "currency", source AS "source"
     FROM value_note WHERE struck_at IS NULL
       AND (${dialect.isAnyOf('item_id')} OR ${dialect.isAnyOf('model_id')})
     ORDER BY valued_on DESC, id DESC`,
    [ids, ids],
  );
  return groupedBy(found, ({ ownerId }) => ownerId);
}

/** Parts fitted to items now, of a known type, counted. */
export interface FittedParts {
  itemId: string;
  partTypeId: string;
  count: number | string;
}

export const readFittedParts = ({ rows, dialect }: RowSource, itemIds: readonly string[]) =>
  rows<FittedParts>(
    `SELECT fitting.item_id AS "itemId", component.part_type_id AS "partTypeId",
       COUNT(*) AS "count"
     FROM fitting JOIN component ON component.id = fitting.component_id
     WHERE fitting.removed_at IS NULL AND component.part_type_id IS NOT NULL
       AND ${dialect.isAnyOf('fitting.item_id')}
     GROUP BY fitting.item_id, component.part_type_id`,
    [listParameter(itemIds)],
  );

export async function readWorthTerms({ rows }: RowSource): Promise<Terms> {
  const [kept] = await rows<Terms>(
    `SELECT hour_rate_minor_units AS "hourRateMinorUnits",
       hour_rate_currency AS "hourRateCurrency", sale_cost_percent AS "saleCostPercent",
       part_effort_minutes AS "partEffortMinutes", usable_parts_percent AS "usablePartsPercent",
       spare_use_percent AS "spareUsePercent"
     FROM worth_terms LIMIT 1`,
  );
  return kept ?? usualTerms;
}
