import type { Fitting } from './fitting.js';
import { overlaps } from './overlaps.js';

export type FittingProblemCode =
  'COMPONENT_IN_TWO_PLACES' | 'TWO_COMPONENTS_IN_ONE_POSITION' | 'REMOVED_BEFORE_FITTED';

export interface FittingProblem {
  readonly code: FittingProblemCode;
  readonly message: string;
  /** One fitting, or the two that collide, in order of time. */
  readonly fittings: readonly Fitting[];
}

/** Why these fittings cannot all be true; every fitting at fault is named at least once. */
export function fittingProblems(fittings: readonly Fitting[]): FittingProblem[] {
  const reversed = fittings.filter(
    (fitting) => (fitting.removedAtMs ?? Infinity) < fitting.fittedAtMs,
  );
  const sound = fittings.filter((fitting) => !reversed.includes(fitting));
  return [
    ...reversed.map((fitting) => ({
      code: 'REMOVED_BEFORE_FITTED' as const,
      message:
        `${fitting.componentId} would leave ${fitting.positionKey} before it was fitted there ` +
        `(${instant(fitting.fittedAtMs)}): mend one of the two times.`,
      fittings: [fitting],
    })),
    ...overlaps(sound, (fitting) => fitting.componentId).map(([earlier, later]) => ({
      code: 'COMPONENT_IN_TWO_PLACES' as const,
      message:
        `${later.componentId} is still in ${earlier.positionKey} when it is fitted in ` +
        `${later.positionKey} (${instant(later.fittedAtMs)}): remove it there first.`,
      fittings: [earlier, later],
    })),
    ...overlaps(sound, (fitting) => fitting.positionKey)
      .filter(([earlier, later]) => earlier.componentId !== later.componentId)
      .map(([earlier, later]) => ({
        code: 'TWO_COMPONENTS_IN_ONE_POSITION' as const,
        message:
          `${later.positionKey} still holds ${earlier.componentId} when ${later.componentId} is ` +
          `fitted there (${instant(later.fittedAtMs)}): remove the first one before.`,
        fittings: [earlier, later],
      })),
  ];
}

function instant(atMs: number): string {
  return new Date(atMs).toISOString();
}
