import type { ApiContext } from '../../api/kit/apiContext.js';
import { argumentProblem, readArguments } from '../../api/kit/argumentProblem.js';
import { recordId } from '../../api/kit/globalId.js';

/**
 * The person that a query is about: the one named, else the owner of the collection.
 * @throws GraphQLError when there is neither.
 */
export async function personAsked(
  { database: { reader } }: ApiContext,
  personId: string | null | undefined,
): Promise<string> {
  if (typeof personId === 'string') {
    return readArguments(() => recordId('Party', personId, ['personId']));
  }
  const [collection] = await reader.rows<{ ownerId: string | null }>(
    'SELECT owner_id AS "ownerId" FROM collection LIMIT 1',
  );
  if (collection?.ownerId) return collection.ownerId;
  throw argumentProblem('Name a person: the collection names no owner yet.');
}
