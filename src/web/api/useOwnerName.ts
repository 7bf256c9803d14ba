import { useQuery } from 'urql';
import { CollectionOwnerDocument } from '../gql/graphql.js';

/** Who is taken to have done something: whoever was named, else the owner of the collection. */
export function useOwnerName(named: string | null): string {
  const [{ data }] = useQuery({ query: CollectionOwnerDocument });
  return named ?? data?.collection.owner?.name ?? '';
}
