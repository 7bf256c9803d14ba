import { useClient } from 'urql';
import { PartyNamesDocument, type PartyKind } from '../gql/graphql.js';

/** Finds who is written down under a name, capitals aside; undefined for nobody. */
export function usePartyNamed(kind: PartyKind | null = null) {
  const client = useClient();
  return async (typed: string): Promise<string | undefined> => {
    const text = typed.trim();
    if (text === '') return undefined;
    const answer = await client
      .query(PartyNamesDocument, { text, kind }, { requestPolicy: 'network-only' })
      .toPromise();
    return answer.data?.parties.nodes.find((party) => isCalled(party, text))?.id;
  };
}

export const isCalled = ({ name }: { name: string }, typed: string): boolean =>
  name.toLowerCase() === typed.trim().toLowerCase();
