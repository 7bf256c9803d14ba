import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { ComponentFacts } from '../../domain/readiness/readinessFacts.js';
import { readComponentStandings } from './componentStandings.reads.js';

/**
 * The components that sit in many items, each with its state; none, no entry.
 * @param at as things stood at an instant; left out: as they stand now.
 */
export async function readComponentStates(
  source: RowSource,
  itemIds: readonly string[],
  at?: string,
): Promise<Map<string, ComponentFacts[]>> {
  const fitted = await source.rows<FittedRow>(
    `SELECT fitting.item_id AS "itemId", fitting.component_id AS "componentId",
       fitting.designator AS "designator", fitting.fitted_at AS "fittedAt", component.marking AS "marking",
       part_type.designation AS "designation", fit_out_position.is_required AS "isRequired"
     FROM fitting
     JOIN item ON item.id = fitting.item_id
     JOIN component ON component.id = fitting.component_id
     LEFT JOIN part_type ON part_type.id = component.part_type_id
     LEFT JOIN fit_out_position ON fit_out_position.model_id = item.model_id
       AND fit_out_position.designator = fitting.designator
     WHERE ${source.dialect.isAnyOf('fitting.item_id')} AND ${
       at === undefined
         ? 'fitting.removed_at IS NULL'
         : 'fitting.fitted_at <= ? AND COALESCE(fitting.removed_at, ?) > ?'
     }
     ORDER BY natural_key(fitting.designator), fitting.id`,
    [listParameter(itemIds), ...(at === undefined ? [] : [at, beyondAllTime, at])],
  );
  const componentIds = fitted.map((row) => row.componentId);
  const standings = await readComponentStandings(source, componentIds, at);
  const factsOf = (row: FittedRow): ComponentFacts => ({
    componentId: row.componentId,
    name: [row.designator, row.designation ?? row.marking].filter(Boolean).join(' '),
    isInRequiredPosition: Boolean(row.isRequired),
    positionKey: row.designator,
    fittedAtMs: Date.parse(row.fittedAt),
    state: standings.get(row.componentId)?.state ?? 'UNTESTED',
    readings: standings.get(row.componentId)?.readings ?? [],
  });
  const byItem = groupedBy(fitted, (row) => row.itemId);
  return new Map([...byItem].map(([itemId, rowsOfItem]) => [itemId, rowsOfItem.map(factsOf)]));
}

/** Sorts behind every instant. */
const beyondAllTime = '9999';

interface FittedRow {
  fittedAt: string;
  itemId: string;
  componentId: string;
  designator: string;
  marking: string | null;
  designation: string | null;
  /** SQLite gives 0 or 1; null where the model has no such position. */
  isRequired: boolean | number | null;
}
