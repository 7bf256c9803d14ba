import type {
  ChangeTaskInput,
  EarningRuleKind,
  HazardKind,
  PlannedTaskFragment,
  TaskKind,
} from '../../gql/graphql.js';
import type { Texts } from '../../texts/texts.js';
import { readHours } from './readHours.js';
import { keptSteps, readSteps } from './taskSteps.js';
import { unreadAt } from './unreadAt.js';
import type { Read } from './useReadAndSend.js';

export type TaskFieldName =
  | 'title'
  | 'kind'
  | 'optimisticHours'
  | 'likelyHours'
  | 'pessimisticHours'
  | 'rule'
  | 'steps'
  | 'hazardKinds'
  | 'note';
export type TaskFields = Record<TaskFieldName, string>;

export const hourFields = ['optimisticHours', 'likelyHours', 'pessimisticHours'] as const;

export const newTask: TaskFields = {
  title: '',
  kind: 'OTHER',
  optimisticHours: '',
  likelyHours: '',
  pessimisticHours: '',
  rule: 'ZERO_HUNDRED',
  steps: '',
  hazardKinds: '',
  note: '',
};

const shortHours = (hours: number): string => String(Math.round(hours * 100) / 100);

/** A task as it is kept, each field as text. */
export const taskFields = (task: PlannedTaskFragment): TaskFields => ({
  title: task.title,
  kind: task.kind,
  optimisticHours: shortHours(task.estimate.optimisticHours),
  likelyHours: shortHours(task.estimate.likelyHours),
  pessimisticHours: shortHours(task.estimate.pessimisticHours),
  rule: task.rule,
  steps: keptSteps(task),
  hazardKinds: [...task.hazardKinds].sort().join(' '),
  note: task.note ?? '',
});

export const hazardsOf = (text: string): HazardKind[] =>
  text === '' ? [] : (text.split(' ') as HazardKind[]);

type Typed = Omit<ChangeTaskInput, 'id' | 'version' | 'ordinal'>;

/** What was typed of a task, as the API takes it: the three hours go together, and so do its steps. */
export function readTask(
  changes: Partial<TaskFields>,
  whole: TaskFields,
  path: readonly string[],
  { plan }: Texts,
): Read<Typed> {
  const { title, kind, rule, steps, hazardKinds, note } = changes;
  const isEstimate = hourFields.some((name) => changes[name] !== undefined);
  const hours = hourFields.map((name) => readHours(whole[name], [...path, 'estimate', name], plan));
  const [optimistic, likely, pessimistic] = hours.map((read) => ('hours' in read ? read.hours : 0));
  const isSteps = whole.rule === 'WEIGHTED_STEPS' && (steps !== undefined || rule !== undefined);
  const typedSteps = readSteps(whole.steps, path, plan.weightUnread);
  const unread = [
    ...(title?.trim() === '' ? [unreadAt([...path, 'title'], plan.titleMissing)] : []),
    ...(isEstimate ? hours.flatMap((read) => ('unread' in read ? [read.unread] : [])) : []),
    ...(isSteps ? typedSteps.unread : []),
  ];
  if (unread.length > 0) return { unread };
  return {
    input: {
      ...(title !== undefined && { title: title.trim() }),
      ...(kind !== undefined && { kind: kind as TaskKind }),
      ...(isEstimate && {
        estimate: {
          optimisticHours: optimistic ?? 0,
          likelyHours: likely ?? 0,
          pessimisticHours: pessimistic ?? 0,
        },
      }),
      ...(rule !== undefined && { rule: rule as EarningRuleKind }),
      ...(isSteps && { steps: typedSteps.steps }),
      ...(hazardKinds !== undefined && { hazardKinds: hazardsOf(hazardKinds) }),
      ...(note !== undefined && { note: note.trim() || null }),
    },
  };
}
