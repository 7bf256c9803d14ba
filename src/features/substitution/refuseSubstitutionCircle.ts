import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import {
  substitutionCircle,
  type SubstitutionEdge,
} from '../../domain/parts/substitutionCircle.js';

interface KeptEdge {
  id: string;
  originalId: string;
  substituteId: string;
  /** SQLite gives 0 or 1. */
  isMutual: boolean | number;
}

/**
 * No circle of one-way substitutions. Call it with the substitutions locked (`oneAtATime`).
 * @param edge as it is to be; null when it is taken out of use
 * @throws Refusal CONFLICT that names the way round
 */
export async function refuseSubstitutionCircle(
  work: UnitOfWork,
  edge: SubstitutionEdge,
  exceptId: string | null,
): Promise<void> {
  const kept = await queryInWork<KeptEdge>(
    work,
    `SELECT id AS "id", original_id AS "originalId", substitute_id AS "substituteId",
       is_mutual AS "isMutual" FROM substitution WHERE retired_at IS NULL`,
  );
  const others = kept.filter(({ id }) => id !== exceptId);
  const edges = [...others.map((one) => ({ ...one, isMutual: Boolean(one.isMutual) })), edge];
  const circle = substitutionCircle(edges);
  if (!circle) return;
  const named = new Map<string, string>();
  for (const id of new Set([...circle, edge.originalId])) {
    const [type] = await queryInWork<{ designation: string }>(
      work,
      'SELECT designation AS "designation" FROM part_type WHERE id = ?',
      [id],
    );
    named.set(id, type?.designation ?? 'a part type');
  }
  const round = [...circle, circle[0] ?? ''].map((id) => named.get(id) ?? 'a part type');
  throw Refusal.conflict(
    `That would make a circle: ${round.join(' is replaced by ')}. ` +
      'Where two serve each other both ways, say so on one substitution (isMutual); else one of these is the wrong way round.',
    ['substituteId'],
  );
}
