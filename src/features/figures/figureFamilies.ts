import type { TokenAllowance } from '../readTokens/tokenAllowance.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { readinessRanks } from '../standing/writeStandings.js';
import type { CollectionFigures } from './collectionFigures.reads.js';
import type { MetricFamily, MetricSample } from './metricFamily.js';

/**
 * The figures of a collection as families of metrics. Nearly all are gauges, hours too: a session
 * that is corrected makes them fall, and a counter may only rise.
 */
export function figureFamilies(
  figures: CollectionFigures,
  shows: ReadonlySet<TokenAllowance>,
  version: string,
): MetricFamily[] {
  const { counts, work, runningTimers, maintenanceOverdue, checksStale } = figures;
  return [
    {
      name: 'reglow_build',
      type: 'info',
      help: 'The program that answers.',
      samples: [{ labels: { version }, value: 1 }],
    },
    {
      name: 'reglow_items',
      type: 'gauge',
      help: 'Sets and accessories that are in the collection.',
      samples: [
        { labels: { kind: 'rig' }, value: counts.rigs },
        { labels: { kind: 'accessory' }, value: counts.accessories },
      ],
    },
    {
      name: 'reglow_rigs_by_readiness',
      type: 'gauge',
      help: 'Rigs by readiness, each judged by itself. The operator still decides.',
      samples: readinessSamples(figures),
    },
    {
      name: 'reglow_invested_seconds',
      type: 'gauge',
      unit: 'seconds',
      help: 'Time at the bench net of breaks, a minute of a person counted once, by kind of work.',
      samples: secondsByKind(figures),
    },
    {
      name: 'reglow_remaining_seconds',
      type: 'gauge',
      unit: 'seconds',
      help: 'Expected time at the bench that is left, on the estimates as entered.',
      samples: [{ value: work.expectedRemainingMinutes * 60 }],
    },
    share(
      'reglow_completion_ratio',
      'Earned over budgeted hours; absent while nothing is estimated.',
      work.earnedMinutes,
      work.budgetedMinutes,
    ),
    share(
      'reglow_completeness_ratio',
      'Required positions known to be filled; absent while no model says what is required.',
      work.presentPositions,
      work.requiredPositions,
    ),
    single('reglow_open_tasks', 'Tasks that are neither done nor dropped.', work.openTasks),
    single('reglow_open_hazards', 'Hazards that no named check has cleared.', counts.openHazards),
    single('reglow_running_timers', 'Timers at the bench that run now.', runningTimers),
    {
      name: 'reglow_overdue',
      type: 'gauge',
      help: 'What was due before now: checks gone stale, maintenance, things to be given back.',
      samples: [
        { labels: { what: 'check' }, value: checksStale },
        { labels: { what: 'maintenance' }, value: maintenanceOverdue },
        { labels: { what: 'loan' }, value: counts.loansOverdue },
      ],
    },
    {
      name: 'reglow_log_entries',
      type: 'counter',
      help: 'Entries of the log of changes, which is only ever added to.',
      samples: [{ value: Number(counts.logEntries) }],
    },
    ...(shows.has('MONEY') ? [money(figures)] : []),
  ];
}

const single = (name: string, help: string, value: number): MetricFamily => ({
  name,
  type: 'gauge',
  help,
  samples: [{ value }],
});

const share = (name: string, help: string, part: number, whole: number): MetricFamily => ({
  name,
  type: 'gauge',
  unit: 'ratio',
  help,
  samples: whole === 0 ? [] : [{ value: Math.round((part / whole) * 10_000) / 10_000 }],
});

const readinessSamples = ({ readiness }: CollectionFigures): MetricSample[] =>
  Object.entries(readinessRanks).map(([level, rank]) => ({
    labels: { readiness: level.toLowerCase() },
    value: readiness.find((count) => count.rank === rank)?.rigs ?? 0,
  }));

function secondsByKind({ hours }: CollectionFigures): MetricSample[] {
  const byKind = new Map<string, number>();
  for (const { taskKind, seconds } of hours) {
    byKind.set(taskKind, (byKind.get(taskKind) ?? 0) + seconds);
  }
  return [...byKind].sort().map(([kind, value]) => ({
    labels: { work: kind.toLowerCase() },
    value,
  }));
}

/** In whole units of each currency, which is why the family has no unit of its own. */
const money = ({ costs }: CollectionFigures): MetricFamily => ({
  name: 'reglow_spent',
  type: 'gauge',
  help: 'What every item has cost so far, past ones too, in units of its currency.',
  samples: costs.flatMap(({ currency, price, extras, expenses }) =>
    Object.entries({ price, extras, expenses }).map(([what, minorUnits]) => ({
      labels: { currency, what },
      value: moneyAmount(minorUnits, currency).amount,
    })),
  ),
});
