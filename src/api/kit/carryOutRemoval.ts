import type { GraphQLResolveInfo } from 'graphql';
import { Refusal, type Refused } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ApiContext } from './apiContext.js';
import { actOf } from './carryOut.js';

/** The edge of a mutation that takes a record away: its id, or the problems. */
export async function carryOutRemoval(
  context: ApiContext,
  info: GraphQLResolveInfo,
  id: string,
  verb: (work: UnitOfWork) => Promise<void>,
): Promise<{ removedId: string | null; problems: readonly Refused[] }> {
  try {
    await context.database.write(actOf(context, info.fieldName), verb);
    return { removedId: id, problems: [] };
  } catch (error) {
    if (error instanceof Refusal) return { removedId: null, problems: error.problems };
    throw error;
  }
}
