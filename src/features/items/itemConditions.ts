import { argumentProblem, readArguments } from '../../api/kit/argumentProblem.js';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { equalTo, retiredIs, type Condition } from '../../api/kit/conditions.js';
import { optionalRecordId } from '../../api/kit/globalId.js';
import { searchParameter } from '../../db/searchParameter.js';
import type { ItemFilter } from './itemFilter.inputs.js';
import type { ItemKind } from './itemKind.js';
import { standingConditions } from './standingConditions.js';

const longestSearch = 200;
const nothing: Condition = { sql: '1 = 0', parameters: [] };

/** @throws GraphQLError with everything that a filter gets wrong. */
export function itemConditions(
  context: ApiContext,
  kind: ItemKind | null,
  filter: ItemFilter,
): Condition[] {
  const { modelId, placeId } = readArguments(() => ({
    modelId: optionalRecordId('Model', filter.modelId, ['filter', 'modelId']),
    placeId: optionalRecordId('Place', filter.placeId, ['filter', 'placeId']),
  }));
  return [
    ...equalTo('item.kind', kind),
    ...equalTo('item.model_id', modelId),
    ...equalTo('item.role', filter.role),
    ...retiredIs('item', filter.isRetired),
    ...(typeof placeId === 'string' ? [isWithin(placeId)] : []),
    ...matching(context, filter.text ?? ''),
    ...workingOn(filter.band, filter.mode),
    ...standingConditions(filter, context.nowMs),
  ];
}

const isWithin = (placeId: string): Condition => ({
  sql: `item.place_id IN (
    WITH RECURSIVE inside (id) AS (
      SELECT id FROM place WHERE id = ?
      UNION SELECT place.id FROM place JOIN inside ON place.within_id = inside.id
    ) SELECT id FROM inside)`,
  parameters: [placeId],
});

function matching({ database: { reader } }: ApiContext, typed: string): Condition[] {
  if (typed.trim() === '') return [];
  if (typed.length > longestSearch) {
    throw argumentProblem(
      `"text" is ${typed.length} characters long; ${longestSearch} is the most.`,
    );
  }
  const words = searchParameter(reader.dialect.engine, typed);
  return [words === null ? nothing : { sql: reader.dialect.matchesText, parameters: [words] }];
}

function workingOn(band: string | null | undefined, mode: string | null | undefined): Condition[] {
  const wanted = [
    ...equalTo('model_capability.band', band),
    ...equalTo('model_capability.mode', mode),
  ];
  if (wanted.length === 0) return [];
  const sql = `EXISTS (SELECT 1 FROM model_capability
    WHERE model_capability.model_id = item.model_id AND ${wanted.map((one) => one.sql).join(' AND ')})`;
  return [{ sql, parameters: wanted.flatMap(({ parameters }) => parameters) }];
}
