import type { ApiContext } from '../../api/kit/apiContext.js';
import { readArguments } from '../../api/kit/argumentProblem.js';
import { computedReads } from '../../api/kit/computedReads.js';
import { optionalRecordId } from '../../api/kit/globalId.js';
import { heldRows } from '../../api/kit/heldRows.js';
import { one } from '../../api/kit/relations.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { dateOfDay } from '../../domain/dates/dayNumber.js';
import { burnUp, type BurnUpPoint } from '../../domain/earnedValue/burnUp.js';
import { earnedAgainstPlan } from '../../domain/earnedValue/earnedAgainstPlan.js';
import { todayAtBench } from '../pace/todayAtBench.js';
import { hundredths, shownBasis } from '../standing/standingFacts.js';
import { burnUpDays } from './burnUpDays.js';
import {
  readKeptPlans,
  readProjectRecords,
  type KeptPlan,
  type ProjectRecords,
} from './projectRecords.reads.js';
import { shownEarnedHours, shownEarnedMoney } from './shownEarnedValue.js';

/** Project rows must have their ceiling. */
const earnedValue: Relation = async (context, parents, args) => {
  const named = readArguments(() =>
    optionalRecordId('Baseline', (args['baselineId'] as string | undefined) ?? null, [
      'baselineId',
    ]),
  );
  const ids = parents.map(({ id }) => id);
  const records = await readProjectRecords(context, ids);
  const plans = await readKeptPlans(context, ids, named);
  const bench = await todayAtBench(context.database.reader, context.nowMs);
  const rows = parents.map((project) =>
    shown(
      context,
      project,
      records.get(project.id) as ProjectRecords,
      plans.get(project.id),
      bench,
    ),
  );
  return { values: rows, children: rows, childType: 'EarnedValue' };
};

function shown(
  { nowMs }: ApiContext,
  project: Row,
  { tasks, spent }: ProjectRecords,
  plan: KeptPlan | undefined,
  bench: { zone: string; today: string },
): Row {
  const baseline = plan?.tasks ?? null;
  const told = earnedAgainstPlan(tasks, baseline, { nowMs, today: bench.today });
  const budget = budgetOf(project, plan);
  const points = burnUp(tasks, told.budgets, baseline, [
    ...burnUpDays(firstDay(tasks, plan, bench.today), { ...bench, nowMs }),
  ]);
  const others = [...spent.keys()].filter((currency) => currency !== budget?.currency);
  return {
    id: project.id,
    baselineId: plan?.id ?? null,
    hours: shownEarnedHours(told.amounts),
    money: budget && shownEarnedMoney(told.amounts, budget, spent.get(budget.currency) ?? 0),
    burnUp: points.map(shownPoint),
    bridge: told.bridge && {
      id: project.id,
      baselineHours: hundredths(told.bridge.baselineHours),
      scopeGrowthHours: hundredths(told.bridge.scopeGrowthHours),
      overrunHours: hundredths(told.bridge.overrunHours),
      expectedAtCompletionHours: hundredths(told.bridge.expectedAtCompletionHours),
      changes: told.bridge.changes.map(({ taskId, kind, hours }) => ({
        id: `${taskId} ${kind}`,
        taskId,
        kind,
        hours: hundredths(hours),
      })),
    },
    basis: shownBasis(
      {
        method: plan
          ? 'Each task earns its budget in the kept plan by its own earning rule; a task added since, its first estimate. Planned hours spread each task evenly over its planned days. How tasks stood before is taken from the history of changes.'
          : 'Each task earns the mean of its estimate by its own earning rule. No plan is kept, so nothing is planned; keep one to compare with.',
        counted: [
          { what: 'tasks', count: tasks.length },
          { what: 'tasks of the kept plan', count: baseline?.length ?? 0 },
        ],
      },
      nowMs,
      [
        'Running timers count when they are stopped.',
        ...(others.length === 0
          ? []
          : [`Expenses in ${others.join(', ')} are not in the money: nothing is converted.`]),
      ],
    ),
  };
}

function budgetOf(project: Row, plan: KeptPlan | undefined) {
  const kept = { minorUnits: plan?.budgetMinorUnits ?? null, currency: plan?.budgetCurrency };
  const own = {
    minorUnits: project['ceilingMinorUnits'] as number | null,
    currency: project['ceilingCurrency'] as string | null,
  };
  for (const { minorUnits, currency } of [kept, own]) {
    if (minorUnits !== null && currency) return { minorUnits: Number(minorUnits), currency };
  }
  return null;
}

const dayMs = 24 * 60 * 60 * 1000;

function firstDay(
  tasks: ProjectRecords['tasks'],
  plan: KeptPlan | undefined,
  today: string,
): string {
  const instants = tasks.flatMap(({ revisions, worked }) => [
    ...revisions.slice(0, 1).map(({ atMs }) => atMs),
    ...worked.map(({ startedAtMs }) => startedAtMs),
  ]);
  const days = instants.map((instant) => dateOfDay(Math.floor(instant / dayMs)));
  return [today, ...days, ...(plan ? [plan.startsOn] : [])].reduce((x, y) => (y < x ? y : x));
}

const shownPoint = (point: BurnUpPoint) => ({
  on: point.on,
  scopeHours: hundredths(point.scopeHours),
  plannedHours: point.plannedHours === null ? null : hundredths(point.plannedHours),
  earnedHours: hundredths(point.earnedHours),
  spentHours: hundredths(point.spentHours),
});

/** What earned value adds to a project. */
export const earnedValueRelationsOfProject: Record<string, Relation> = { earnedValue };

export const earnedValueReads = [
  computedReads('EarnedValue', {
    baseline: one('Baseline', 'baselineId'),
    bridge: heldRows('PlanBridge', 'bridge'),
  }),
  computedReads('PlanBridge', { changes: heldRows('PlanChange', 'changes') }),
  computedReads('PlanChange', { task: one('Task', 'taskId') }),
] as const;
