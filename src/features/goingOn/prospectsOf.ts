import { feasibleStandards, isNeededFor, type Standard } from '../../domain/worth/standards.js';
import type { Finish, Prospects } from '../../domain/worth/outcomes.js';
import type { ReckonedProject } from '../costToCome/reckonProjects.js';
import type { TargetStandard } from '../projects/targetStandard.js';
import { netOfParts, valueOf, type ReckonedItem } from '../worth/worthOfItems.js';

/** Kinds of tasks that a set takes for its looks alone. */
const looks = new Set(['CABINET', 'CLEANING']);

/**
 * The share of the hours left that a standard takes: without looks where they do not matter. By the
 * expected hours of the tasks, so that one run of trials serves every standard.
 */
export function hoursShare({ forecast }: ReckonedProject, standard: Standard): number {
  if (standard !== 'WORKING') return 1;
  let [all, needed] = [0, 0];
  for (const { id, remaining } of forecast.forecast.tasks) {
    all += remaining.meanHours;
    if (!looks.has(forecast.tasks.get(id)?.task.kind ?? '')) needed += remaining.meanHours;
  }
  return all === 0 ? 1 : needed / all;
}

export const meanOf = (trials: Float64Array): number =>
  trials.reduce((sum, one) => sum + one, 0) / trials.length;

/** What finishing to a standard costs from here, one amount a trial, own time as far as priced. */
export function costTrials(project: ReckonedProject, standard: Standard): Float64Array {
  const { lines, trials, trialCount, ratePerHour, forecast } = project;
  const costs = new Float64Array(trialCount);
  const hours = (ratePerHour ?? 0) * hoursShare(project, standard);
  const rows = lines
    .filter(({ neededFrom }) => isNeededFor(standard, neededFrom))
    .flatMap(({ id }) => trials.rows.get(id) ?? []);
  for (let trial = 0; trial < trialCount; trial += 1) {
    const ownTime = (forecast.forecast.totals[trial] ?? 0) * hours;
    costs[trial] = rows.reduce((sum, row) => sum + (row[trial] ?? 0), ownTime);
  }
  return costs;
}

/** What a decision on a project looks forward to; sunk cost is not among it. */
export function prospectsOf(
  item: ReckonedItem,
  project: ReckonedProject,
  target: TargetStandard,
  premium: number,
): Prospects & { costs: ReadonlyMap<Standard, Float64Array> } {
  const standards = target === 'PARTS_DONOR' ? [] : feasibleStandards(target);
  const costs = new Map(standards.map((standard) => [standard, costTrials(project, standard)]));
  const finishes = standards.flatMap((standard): Finish[] => {
    const value = valueOf(item, standard);
    const expectedCost = meanOf(costs.get(standard) as Float64Array);
    return value === null ? [] : [{ standard, value: value.amount, expectedCost }];
  });
  const { gross, pricedCount } = item.parts;
  const isPriced = pricedCount > 0;
  return {
    costs,
    finishes,
    asItStands: valueOf(item, item.present)?.amount ?? null,
    partsNet: isPriced ? netOfParts(item)(gross.mean) : null,
    spares: isPriced ? (gross.mean * item.terms.spareUsePercent) / 100 : null,
    saleCostShare: item.terms.saleCostPercent / 100,
    successChance: (item.subject.successPercent ?? 100) / 100,
    premium,
  };
}
