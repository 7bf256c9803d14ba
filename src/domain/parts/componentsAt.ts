import type { Fitting } from './fitting.js';

/**
 * What sat where at an instant, by position. A part removed at that very instant is gone and one
 * fitted at it is there, so an exchange at one instant shows the new part alone.
 */
export function componentsAt(fittings: readonly Fitting[], atMs: number): Fitting[] {
  return fittings
    .filter((fitting) => fitting.fittedAtMs <= atMs && atMs < (fitting.removedAtMs ?? Infinity))
    .sort((left, right) => (left.positionKey < right.positionKey ? -1 : 1));
}
