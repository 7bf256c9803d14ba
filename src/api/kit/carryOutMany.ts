import type { GraphQLResolveInfo } from 'graphql';
import { Refusal, type Refused } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ApiContext } from './apiContext.js';
import { actOf } from './carryOut.js';
import { loadRelations } from './loadRelations.js';

/**
 * `carryOut` for a verb that keeps several records of one type at once.
 * @param verb does the work and returns the records' ids, in the order in which they are shown.
 */
export async function carryOutMany(
  context: ApiContext,
  info: GraphQLResolveInfo,
  { field, typeName }: { field: string; typeName: string },
  verb: (work: UnitOfWork) => Promise<string[]>,
): Promise<Record<string, unknown> & { problems: readonly Refused[] }> {
  try {
    const ids = await context.database.write(actOf(context, info.fieldName), verb);
    const found = (await context.reads.get(typeName)?.byIds(context, ids)) ?? [];
    const byId = new Map(found.map((row) => [row.id, row]));
    const rows = ids.flatMap((id) => byId.get(id) ?? []);
    if (rows.length < ids.length) {
      throw new Error(
        `${ids.length - rows.length} of ${typeName} not readable after ${info.fieldName}`,
      );
    }
    await loadRelations(context, info, typeName, rows, [field]);
    return { [field]: rows, problems: [] };
  } catch (error) {
    if (error instanceof Refusal) return { [field]: null, problems: error.problems };
    throw error;
  }
}
