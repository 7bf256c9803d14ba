import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { fitOutCompleteness } from '../../domain/completeness/fitOutCompleteness.js';
import type { PositionOrigin, WeighedPosition } from '../../domain/originality/originality.js';
import { readCompletenessFacts } from '../inspections/completenessFacts.reads.js';
import type { ComponentOrigin } from '../parts/componentOrigin.js';

interface OriginRow {
  componentId: string;
  origin: ComponentOrigin;
  /** The item in which it is first known to have sat. */
  firstItemId: string;
}

/** A position of the fit-out with where what sits in it came from. */
export interface OriginOfPosition extends WeighedPosition {
  designator: string;
  componentId: string | null;
}

export interface OriginsOfItem {
  positions: OriginOfPosition[];
  fittingCount: number;
}

/** An original part of another set is a replacement in this one. */
function originIn(itemId: string, known: OriginRow | undefined): PositionOrigin {
  if (!known || known.origin === 'UNKNOWN') return 'UNKNOWN';
  return known.origin === 'ORIGINAL' && known.firstItemId === itemId ? 'ORIGINAL' : 'REPLACED';
}

/** Every position of the fit-out of any number of items, with five statements in all. */
export async function readOriginality(
  reader: RowSource,
  ids: readonly string[],
  asOfMs: number,
): Promise<Map<string, OriginsOfItem>> {
  const facts = await readCompletenessFacts(reader, ids);
  const origins = await reader.rows<OriginRow>(
    `SELECT component.id AS "componentId", component.origin AS "origin",
       (SELECT first_fitting.item_id FROM fitting first_fitting
        WHERE first_fitting.component_id = component.id
        ORDER BY first_fitting.fitted_at, first_fitting.id LIMIT 1) AS "firstItemId"
     FROM component WHERE component.id IN
       (SELECT fitting.component_id FROM fitting WHERE ${reader.dialect.isAnyOf('fitting.item_id')})`,
    [listParameter(ids)],
  );
  const weights = await reader.rows<{ positionId: string; weight: number | null }>(
    `SELECT fit_out_position.id AS "positionId", fit_out_position.weight AS "weight"
     FROM fit_out_position WHERE fit_out_position.model_id IN
       (SELECT item.model_id FROM item WHERE ${reader.dialect.isAnyOf('item.id')})`,
    [listParameter(ids)],
  );
  const originOf = new Map(origins.map((row) => [row.componentId, row]));
  const weightOf = new Map(weights.map(({ positionId, weight }) => [positionId, weight ?? 1]));
  return new Map(
    ids.map((itemId): [string, OriginsOfItem] => {
      const own = facts.get(itemId) ?? { fitOut: [], checks: [], fittings: [] };
      const { positions } = fitOutCompleteness(own.fitOut, own.checks, own.fittings, asOfMs);
      const weighed = positions.map(({ positionKey, state, componentId }, index) => ({
        designator: positionKey,
        componentId,
        origin: ((): PositionOrigin => {
          if (state === 'MISSING') return 'EMPTY';
          if (state === 'WRONG') return 'REPLACED';
          return componentId === null ? 'UNKNOWN' : originIn(itemId, originOf.get(componentId));
        })(),
        weight: weightOf.get(own.fitOut[index]?.positionId ?? '') ?? 1,
      }));
      return [itemId, { positions: weighed, fittingCount: own.fittings.length }];
    }),
  );
}
