import { computedReads } from '../../api/kit/computedReads.js';
import { pageSize } from '../../api/kit/pageArgs.js';
import { one } from '../../api/kit/relations.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { backTest } from '../../domain/calibration/backTest.js';
import type { FinishedTask } from '../../domain/calibration/finishedTask.js';
import { typicalHours } from '../../domain/calibration/typicalHours.js';
import { pertMoments } from '../../domain/estimates/pertMoments.js';
import { thousandths } from '../forecast/shownHours.js';
import { hundredths, shownBasis } from '../standing/standingFacts.js';
import { estimateHistory, mostFinishedTasks, type EstimateHistory } from './finishedTasks.reads.js';

const calibration: Relation = async (context, parents, _args, asked) => {
  const history = await estimateHistory(context);
  const row = shown(history, context.nowMs, asked.has('backTest'));
  return { values: parents.map(() => row), children: [row], childType: 'Calibration' };
};

function shown(history: EstimateHistory, nowMs: number, isBackTestAsked: boolean): Row {
  const { calibration: of, tasks, withoutHours } = history;
  return {
    id: 'calibration',
    tasks: of.taskCount,
    rawRatio: of.rawRatio === null ? null : thousandths(of.rawRatio),
    weight: thousandths(of.weight),
    multiplier: thousandths(of.multiplier),
    multiplierLow: thousandths(of.multiplierLow),
    multiplierHigh: thousandths(of.multiplierHigh),
    kinds: of.kinds.map((kind) => ({
      kind: kind.kind,
      tasks: kind.taskCount,
      rawRatio: thousandths(kind.rawRatio),
      weight: thousandths(kind.weight),
      multiplier: thousandths(kind.multiplier),
    })),
    finished: tasks,
    backTest: isBackTestAsked ? shownBackTest(tasks) : null,
    basis: shownBasis(
      {
        method:
          'Actual over estimated hours of finished tasks, in logarithms. Each kind is drawn towards the collection by as much as its history is thin (empirical Bayes on a one-way analysis of variance), and the collection towards 1.',
        counted: [
          { what: 'finished tasks with hours', count: of.taskCount },
          { what: 'finished tasks without hours, left out', count: withoutHours },
        ],
      },
      nowMs,
      [
        `Only the latest ${mostFinishedTasks} finished tasks are looked at.`,
        'An estimate counts as it stood when work on the task began, and as its own geometric mean: what such a task typically takes.',
        'Log ratios are taken to scatter by 0.5 within a kind, as if from three tasks, and collections by 0.3 about 1: our own choice.',
        'A ratio beyond ten to one counts as ten.',
      ],
    ),
  };
}

function shownBackTest(tasks: readonly FinishedTask[]) {
  const told = backTest(tasks);
  return {
    verdict: told.verdict,
    tasks: told.taskCount,
    curve: told.curve.map(({ stated, observed, standardError }) => ({
      stated,
      observed: thousandths(observed),
      standardError: thousandths(standardError),
    })),
    pinballHours: thousandths(told.pinballHours),
    uncalibratedPinballHours: thousandths(told.uncalibratedPinballHours),
  };
}

const evidence: Relation = (_context, parents, args) => {
  const size = pageSize(args['first']);
  const values = parents.map((parent) =>
    (parent['finished'] as FinishedTask[]).slice(0, size).map((task): Row => ({
      id: task.id,
      kind: task.kind,
      estimatedHours: hundredths(pertMoments(task.estimate).meanHours),
      actualHours: hundredths(task.actualHours),
      ratio: thousandths(task.actualHours / typicalHours(task.estimate)),
      finishedAt: new Date(task.finishedAtMs).toISOString(),
    })),
  );
  return Promise.resolve({ values, children: values.flat(), childType: 'EstimateEvidence' });
};

/** What calibration adds to the collection. */
export const calibrationRelationsOfCollection: Record<string, Relation> = { calibration };

export const calibrationReads = [
  computedReads('Calibration', { evidence }),
  computedReads('EstimateEvidence', { task: one('Task', 'id') }),
] as const;
