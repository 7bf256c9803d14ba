import type { ProjectStatus } from '../../gql/graphql.js';

/** Whether there is still something to decide of a restoration. */
export const isOpen = (status: ProjectStatus): boolean =>
  status !== 'COMPLETED' && status !== 'ABANDONED';
