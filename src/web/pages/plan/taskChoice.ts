import type { PlannedTaskFragment } from '../../gql/graphql.js';

/** Which tasks of a long list are shown. */
export type TaskChoice = 'ALL' | 'OPEN' | 'READY' | 'SETTLED';

export const taskChoices: readonly TaskChoice[] = ['ALL', 'OPEN', 'READY', 'SETTLED'];

export const isSettled = ({ status }: Pick<PlannedTaskFragment, 'status'>): boolean =>
  status === 'DONE' || status === 'DROPPED';

export const isChosen = (choice: TaskChoice, task: PlannedTaskFragment): boolean =>
  choice === 'ALL' ||
  (choice === 'SETTLED' && isSettled(task)) ||
  (choice === 'OPEN' && !isSettled(task)) ||
  (choice === 'READY' && task.isReady);
