import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { fitOutCompleteness } from '../../domain/completeness/fitOutCompleteness.js';
import { readCompletenessFacts, type CompletenessFacts } from './completenessFacts.reads.js';

/** Computed for an item and never asked for by an id of its own. */
export const fitOutStandingReads: TypeReads = {
  typeName: 'FitOutStanding',
  byIds: () => Promise.resolve([]),
  relations: {
    position: one('FitOutPosition', 'positionId'),
    component: one('Component', 'componentId'),
    check: one('FitOutCheck', 'checkId'),
  },
};

const fitOut: Relation = async ({ database, nowMs }, items) => {
  const itemIds = items.map((item) => item.id);
  const facts = await readCompletenessFacts(database.reader, itemIds);
  const values = itemIds.map((id) => standingRows(facts.get(id), nowMs));
  return { values, children: values.flat(), childType: 'FitOutStanding' };
};

function standingRows(facts: CompletenessFacts | undefined, nowMs: number): Row[] {
  if (!facts) return [];
  const { positions } = fitOutCompleteness(facts.fitOut, facts.checks, facts.fittings, nowMs);
  return positions.map(({ positionKey, state, restsOn, sinceMs, checkId, componentId }, index) => {
    const positionId = facts.fitOut[index]?.positionId ?? positionKey;
    const since = sinceMs === null ? null : new Date(sinceMs).toISOString();
    return { id: positionId, positionId, state, restsOn, since, checkId, componentId };
  });
}

export const fitOutRelationsOfItem = { fitOut };
