import type { GraphQLResolveInfo } from 'graphql';
import { Refusal, type Refused } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ApiContext } from './apiContext.js';
import { loadRelations } from './loadRelations.js';

/**
 * A mutation's edge: one unit of work, then the thing as it stands afterwards, or the problems.
 * @param field name of the payload's field, and how its type is registered in `context.reads`.
 * @param verb does the work and returns the record's id.
 */
export async function carryOut(
  context: ApiContext,
  info: GraphQLResolveInfo,
  { field, typeName }: { field: string; typeName: string },
  verb: (work: UnitOfWork) => Promise<string>,
): Promise<Record<string, unknown> & { problems: readonly Refused[] }> {
  try {
    const id = await context.database.write(actOf(context, info.fieldName), verb);
    const [row] = (await context.reads.get(typeName)?.byIds(context, [id])) ?? [];
    if (!row) throw new Error(`${typeName} ${id} is not readable after ${info.fieldName}`);
    await loadRelations(context, info, typeName, [row], [field]);
    return { [field]: row, problems: [] };
  } catch (error) {
    if (error instanceof Refusal) return { [field]: null, problems: error.problems };
    throw error;
  }
}

export const actOf = (context: ApiContext, action: string) => ({
  action,
  actorId: context.actorId,
  now: new Date(context.nowMs).toISOString(),
});
