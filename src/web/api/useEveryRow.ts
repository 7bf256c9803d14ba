import { useEffect } from 'react';
import type { Connection } from './useConnection.js';

/** Goes on until all rows of a connection are here: for lists to choose from. */
export function useEveryRow<Row>(connection: Connection<Row>): Connection<Row> {
  const { hasMore, isFetching, error, fetchMore } = connection;
  useEffect(() => {
    if (hasMore && !isFetching && !error) fetchMore();
  }, [hasMore, isFetching, error, fetchMore]);
  return connection;
}
