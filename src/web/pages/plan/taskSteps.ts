import type { PlannedTaskFragment, TaskStepInput } from '../../gql/graphql.js';
import type { ShownProblem } from '../../api/useSend.js';
import { unreadAt } from './unreadAt.js';

/** A step as it is typed; one that is there already has its id. */
export interface TypedStep {
  id: string | null;
  title: string;
  weight: string;
}

/** Steps as one text, so that a draft holds them like any other field. */
export const stepsText = (steps: readonly TypedStep[]): string =>
  steps.length === 0
    ? ''
    : JSON.stringify(steps.map(({ id, title, weight }) => ({ id, title, weight })));

export const stepsOf = (text: string): TypedStep[] =>
  text === '' ? [] : (JSON.parse(text) as TypedStep[]);

export const keptSteps = ({ steps }: PlannedTaskFragment): string =>
  stepsText(
    steps.map(({ id, title, weight }) => ({ id: String(id), title, weight: String(weight) })),
  );

/** What was typed as the API takes it, and what of it cannot be read. */
export function readSteps(
  text: string,
  path: readonly string[],
  weightUnread: string,
): { steps: TaskStepInput[]; unread: ShownProblem[] } {
  const typed = stepsOf(text);
  return {
    steps: typed.map(({ id, title, weight }) => ({
      ...(id !== null && { id }),
      title,
      weight: Number(weight),
    })),
    unread: typed.flatMap(({ weight }, index) =>
      /^\s*\d{1,9}\s*$/.test(weight)
        ? []
        : [unreadAt([...path, 'steps', String(index), 'weight'], weightUnread)],
    ),
  };
}
