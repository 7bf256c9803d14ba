import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import type { SubstitutionGrade } from './substitutionGrade.js';

/** A substitution in use, seen from the part type that it serves. */
export interface RecordedEdge {
  id: string;
  originalId: string;
  candidateId: string;
  grade: SubstitutionGrade;
  consequence: string | null;
  recheck: string | null;
}

/** Substitutions for many part types in one statement; mutual ones count from both sides. */
export async function readRecordedEdges(
  { rows, dialect }: RowSource,
  partTypeIds: readonly string[],
): Promise<Map<string, RecordedEdge[]>> {
  const columns = `id AS "id", grade AS "grade", consequence AS "consequence", recheck AS "recheck"`;
  const ids = listParameter(partTypeIds);
  const found = await rows<RecordedEdge>(
    `SELECT ${columns}, original_id AS "originalId", substitute_id AS "candidateId"
     FROM substitution WHERE retired_at IS NULL AND ${dialect.isAnyOf('original_id')}
     UNION ALL
     SELECT ${columns}, substitute_id AS "originalId", original_id AS "candidateId"
     FROM substitution WHERE retired_at IS NULL AND is_mutual AND ${dialect.isAnyOf('substitute_id')}`,
    [ids, ids],
  );
  return groupedBy(found, (edge) => edge.originalId);
}
