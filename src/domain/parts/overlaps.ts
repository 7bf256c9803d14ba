import type { Fitting } from './fitting.js';

/**
 * Fittings of one group (a component, a position) that share an instant, each with the earlier one
 * that lasts longest. Sorted once, so a long history costs n log n, not every pair.
 */
export function overlaps(
  fittings: readonly Fitting[],
  groupOf: (fitting: Fitting) => string,
): [Fitting, Fitting][] {
  const lastingLongest = new Map<string, Fitting>();
  const found: [Fitting, Fitting][] = [];
  const lasting = fittings.filter((fitting) => endOf(fitting) > fitting.fittedAtMs);
  for (const fitting of lasting.sort((left, right) => left.fittedAtMs - right.fittedAtMs)) {
    const earlier = lastingLongest.get(groupOf(fitting));
    if (earlier !== undefined && endOf(earlier) > fitting.fittedAtMs)
      found.push([earlier, fitting]);
    if (earlier === undefined || endOf(fitting) > endOf(earlier)) {
      lastingLongest.set(groupOf(fitting), fitting);
    }
  }
  return found;
}

function endOf(fitting: Fitting): number {
  return fitting.removedAtMs ?? Infinity;
}
