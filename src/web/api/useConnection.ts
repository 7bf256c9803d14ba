import { useCallback, useEffect, useRef, useState } from 'react';
import { useClient, type AnyVariables, type CombinedError, type TypedDocumentNode } from 'urql';
import { useChanges } from './useChanges.js';

interface Page<Row> {
  nodes: readonly Row[];
  pageInfo: { hasNextPage: boolean; endCursor: string | null };
}

export interface Connection<Row> {
  rows: readonly Row[];
  hasMore: boolean;
  isFetching: boolean;
  /** True once the first page is there. */
  isHere: boolean;
  error: CombinedError | undefined;
  fetchMore: () => void;
  fetchAgain: () => void;
}

interface Held<Row> {
  key: string;
  rows: readonly Row[];
  endCursor: string | null;
  hasMore: boolean;
}

/** As many as the API hands out at once. */
const largestPage = 100;

/**
 * Walks a connection forwards, page by page. When the question changes it starts anew, keeping the
 * old rows until the new ones are there; when records change it asks again for as many as are shown.
 * @param variables all but `first` and `after`; a new object with the same content is the same question
 */
export function useConnection<Data, Variables extends AnyVariables & { first: number }, Row>(
  document: TypedDocumentNode<Data, Variables>,
  variables: Omit<Variables, 'first' | 'after'>,
  pageOf: (data: Data) => Page<Row>,
  pageSize = 60,
): Connection<Row> {
  const client = useClient();
  const key = JSON.stringify(variables);
  const [held, setHeld] = useState<Held<Row> | null>(null);
  const [isFetching, setIsFetching] = useState(true);
  const [error, setError] = useState<CombinedError>();
  // Answers to a question that is no longer asked are dropped.
  const turn = useRef(0);

  const fetchRows = useCallback(
    async (from: Held<Row> | null, atLeast: number, first = pageSize) => {
      const mine = ++turn.current;
      setIsFetching(true);
      let rows = from?.rows ?? [];
      let after = from?.endCursor ?? null;
      let hasMore = true;
      const wanted = rows.length + atLeast;
      while (hasMore && rows.length < wanted) {
        const asked = { ...(JSON.parse(key) as object), first, after };
        const answer = await client
          .query(document, asked as unknown as Variables, { requestPolicy: 'network-only' })
          .toPromise();
        if (mine !== turn.current) return;
        if (answer.error ?? !answer.data) {
          setError(answer.error);
          setIsFetching(false);
          return;
        }
        const page = pageOf(answer.data);
        rows = [...rows, ...page.nodes];
        after = page.pageInfo.endCursor;
        hasMore = page.pageInfo.hasNextPage;
      }
      setError(undefined);
      setHeld({ key, rows, endCursor: after, hasMore });
      setIsFetching(false);
    },
    [client, document, key, pageOf, pageSize],
  );

  useEffect(() => {
    void fetchRows(null, pageSize);
  }, [fetchRows, pageSize]);

  const fetchAgain = useCallback(() => {
    const shown = held?.rows.length ?? 0;
    void fetchRows(null, Math.max(pageSize, shown), shown > pageSize ? largestPage : pageSize);
  }, [fetchRows, held, pageSize]);
  useChanges(fetchAgain);

  return {
    rows: held?.rows ?? [],
    hasMore: held?.hasMore ?? false,
    isHere: held !== null,
    isFetching,
    error,
    fetchAgain,
    fetchMore: () => {
      if (held?.hasMore && held.key === key && !isFetching) void fetchRows(held, pageSize);
    },
  };
}
