import { useEffect, useState } from 'react';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { WantedDocument, type WantedQuery } from '../../gql/graphql.js';
import { keepList, keptList } from './keptWants.js';

/** The wanted list as it is; as it was last fetched when nothing answers. */
export function useWanted(): {
  list: WantedQuery | undefined;
  isKept: boolean;
  isFailed: boolean;
  fetchAgain: () => void;
} {
  const [{ data, error }, fetchAgain] = useLiveQuery({ query: WantedDocument, variables: {} });
  const [before, setBefore] = useState<WantedQuery>();
  useEffect(() => {
    void keptList().then(setBefore);
  }, []);
  useEffect(() => {
    if (data && !error) void keepList(data);
  }, [data, error]);
  const list = error ? (before ?? data) : (data ?? before);
  const isKept = list !== undefined && list !== data;
  return { list, isKept, isFailed: error !== undefined, fetchAgain };
}
