import type { TaskKind } from '../tasks/taskKind.js';
import { hundredths } from './standingFacts.js';

interface HourSum {
  taskKind: string;
  localMonth: string;
  seconds: number;
}

/** Seconds by kind and month, shown as hours in all, by kind and by month. */
export function hourSums(sums: readonly HourSum[]) {
  const seconds = sums.reduce((total, sum) => total + sum.seconds, 0);
  return {
    seconds,
    hours: hundredths(seconds / 3600),
    byTaskKind: [...totalsBy(sums, 'taskKind')]
      .sort(([left, most], [right, least]) => least - most || (left < right ? -1 : 1))
      .map(([taskKind, part]) => ({
        taskKind: taskKind as TaskKind,
        hours: hundredths(part / 3600),
      })),
    byMonth: [...totalsBy(sums, 'localMonth')]
      .sort(([left], [right]) => (left < right ? -1 : 1))
      .map(([month, part]) => ({ month, hours: hundredths(part / 3600) })),
  };
}

function totalsBy(sums: readonly HourSum[], by: 'taskKind' | 'localMonth'): Map<string, number> {
  const totals = new Map<string, number>();
  for (const sum of sums) totals.set(sum[by], (totals.get(sum[by]) ?? 0) + sum.seconds);
  return totals;
}
