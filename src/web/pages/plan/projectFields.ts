import type {
  OpenProjectInput,
  PlannedProjectFragment,
  TargetStandard,
} from '../../gql/graphql.js';
import { typedNumber } from '../../locale/typedNumber.js';
import { writtenAmount } from '../../locale/writtenAmount.js';
import type { Texts } from '../../texts/texts.js';
import { unreadAt } from './unreadAt.js';
import type { Read } from './useReadAndSend.js';

export type ProjectFieldName =
  'title' | 'targetStandard' | 'ceiling' | 'currency' | 'ceilingHours' | 'startedOn' | 'decision';
export type ProjectFields = Record<ProjectFieldName, string>;

export const targets: readonly TargetStandard[] = [
  'WORKING',
  'WORKING_AND_CLEAN',
  'AS_MADE',
  'FOR_SHOW',
  'PARTS_DONOR',
];

export const isTarget = (value: string): value is TargetStandard =>
  (targets as readonly string[]).includes(value);

export const newProject = (homeCurrency: string): ProjectFields => ({
  title: '',
  targetStandard: 'WORKING',
  ceiling: '',
  currency: homeCurrency,
  ceilingHours: '',
  startedOn: '',
  decision: '',
});

/** What a restoration aims at, each field as text. */
export const projectFields = (
  project: PlannedProjectFragment,
  homeCurrency: string,
): ProjectFields => ({
  title: project.title,
  targetStandard: project.targetStandard,
  ceiling: project.ceiling?.amount ?? '',
  currency: project.ceiling?.currency ?? homeCurrency,
  ceilingHours: String(project.ceilingHours ?? ''),
  startedOn: project.startedOn ?? '',
  decision: project.decision ?? '',
});

type Aims = Partial<Omit<OpenProjectInput, 'itemId'>>;

/** What was typed of it, as the API takes it: an amount and its currency go together. */
export function readProject(
  changes: Partial<ProjectFields>,
  whole: ProjectFields,
  { plan, change }: Texts,
): Read<Aims> {
  const { title, targetStandard, ceilingHours, startedOn, decision } = changes;
  const isMoney = changes.ceiling !== undefined || changes.currency !== undefined;
  const amount = whole.ceiling.trim() === '' ? null : writtenAmount(whole.ceiling);
  const hours = ceilingHours?.trim() ? typedNumber(ceilingHours) : null;
  const unread = [
    ...(title?.trim() === '' ? [unreadAt(['title'], plan.titleMissing)] : []),
    ...(isMoney && whole.ceiling.trim() !== '' && amount === null
      ? [unreadAt(['ceiling'], change.amountUnread)]
      : []),
    ...(ceilingHours?.trim() && hours === null
      ? [unreadAt(['ceilingHours'], plan.hoursUnread)]
      : []),
  ];
  if (unread.length > 0) return { unread };
  const currency = whole.currency.trim().toUpperCase();
  return {
    input: {
      ...(title !== undefined && { title: title.trim() }),
      ...(targetStandard !== undefined && isTarget(targetStandard) && { targetStandard }),
      ...(isMoney && { ceiling: amount === null ? null : { amount, currency } }),
      ...(ceilingHours !== undefined && { ceilingHours: hours === null ? null : Number(hours) }),
      ...(startedOn !== undefined && { startedOn: startedOn || null }),
      ...(decision !== undefined && { decision: decision.trim() || null }),
    },
  };
}
