import { useEffect } from 'react';
import { useConnection } from '../../api/useConnection.js';
import { PlannedTasksDocument, type PlannedTasksQuery } from '../../gql/graphql.js';

const none = { nodes: [], pageInfo: { hasNextPage: false, endCursor: null } };
const pageOf = ({ node }: PlannedTasksQuery) => (node && 'tasks' in node ? node.tasks : none);

/** As many as the API hands out at once. */
const largestPage = 100;

/** Every task of a restoration: any of them may come before any other. */
export function usePlannedTasks(projectId: string) {
  const connection = useConnection(PlannedTasksDocument, { projectId }, pageOf, largestPage);
  const { hasMore, isFetching, fetchMore, error } = connection;
  useEffect(() => {
    if (hasMore && !isFetching && !error) fetchMore();
  });
  return connection;
}
