import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { nameKey } from '../../domain/nameKey.js';
import { agentsMeeting, successiveMeetings } from '../../domain/treatments/agentsMeeting.js';
import { agentCatalogue } from './agentCatalogue.js';

interface AgentOfTreatment {
  id: string;
  itemId: string;
  componentId: string | null;
  surface: string;
  isRinsed: boolean | number;
  treatedAt: string;
  kind: string;
}

/**
 * One surface is one name, capitals and blanks apart, on one item or component. What a treatment
 * left there stays until a treatment of the same surface ends with a rinse.
 */
export const meetings: Relation = async ({ database: { reader } }, treatments) => {
  const itemIds = [...new Set(treatments.map((row) => String(row['itemId'])))];
  const rows = await reader.rows<AgentOfTreatment>(
    `SELECT treatment.id AS "id", treatment.item_id AS "itemId",
       treatment.component_id AS "componentId", treatment.surface AS "surface",
       treatment.is_rinsed AS "isRinsed", treatment.treated_at AS "treatedAt",
       treatment_agent.kind AS "kind"
     FROM treatment JOIN treatment_agent ON treatment_agent.treatment_id = treatment.id
     WHERE ${reader.dialect.isAnyOf('treatment.item_id')}
     ORDER BY treatment_agent.ordinal, treatment_agent.id`,
    [listParameter(itemIds)],
  );
  const pairs = agentCatalogue.forbiddenPairs;
  const byTreatment = groupedBy(rows, ({ id }) => id);
  const successive = successiveMeetings(
    [...byTreatment].flatMap(([treatmentId, [first, ...others]]) =>
      first
        ? {
            treatmentId,
            surfaceKey: `${first.itemId} ${first.componentId ?? ''} ${nameKey(first.surface)}`,
            agents: [first, ...others].map(({ kind }) => kind),
            isRinsed: Boolean(first.isRinsed),
            treatedAtMs: Date.parse(first.treatedAt),
          }
        : [],
    ),
    pairs,
  );
  const values = treatments.map(({ id }): Row[] => {
    const kinds = (byTreatment.get(id) ?? []).map(({ kind }) => kind);
    const together = agentsMeeting(kinds, pairs).map((pair) => ({ pair, earlierId: null }));
    return [...together, ...(successive.get(id) ?? [])].map(({ pair, earlierId }, index) => ({
      id: `${id} ${index}`,
      ...pair,
      earlierId,
    }));
  });
  return { values, children: values.flat(), childType: 'AgentMeeting' };
};
