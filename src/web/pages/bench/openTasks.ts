import type { BenchTaskFragment } from '../../gql/graphql.js';
import type { BenchItem } from './BenchPage.js';

/** The tasks of a set that are not done, those first that need not wait. */
export function openTasks(item: BenchItem): BenchTaskFragment[] {
  const isOpen = ({ status }: BenchTaskFragment) => status !== 'DONE' && status !== 'DROPPED';
  return item.projects
    .filter(({ status }) => status !== 'COMPLETED' && status !== 'ABANDONED')
    .flatMap(({ tasks }) => tasks.nodes)
    .filter(isOpen)
    .sort((one, other) => Number(other.isReady) - Number(one.isReady));
}
