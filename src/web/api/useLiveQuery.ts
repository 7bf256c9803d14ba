import { useQuery, type AnyVariables, type UseQueryArgs, type UseQueryResponse } from 'urql';
import { useChanges } from './useChanges.js';

/** urql's useQuery that asks again when records have changed, here or in another window. */
export function useLiveQuery<Data, Variables extends AnyVariables>(
  args: UseQueryArgs<Variables, Data>,
): UseQueryResponse<Data, Variables> {
  const response = useQuery<Data, Variables>(args);
  const [, fetchAgain] = response;
  useChanges(() => {
    fetchAgain({ requestPolicy: 'network-only' });
  });
  return response;
}
