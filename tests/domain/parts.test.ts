import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { componentsAt } from '../../src/domain/parts/componentsAt.js';
import type { Fitting } from '../../src/domain/parts/fitting.js';
import { fittingProblems } from '../../src/domain/parts/fittingProblems.js';

const fitting = (
  componentId: string,
  positionKey: string,
  fittedAtMs: number,
  removedAtMs: number | null = null,
): Fitting => ({ componentId, positionKey, fittedAtMs, removedAtMs });

const codes = (fittings: Fitting[]) => fittingProblems(fittings).map((problem) => problem.code);

describe('what sat where at an instant', () => {
  const history = [fitting('old tube', 'V3', 10, 20), fitting('new tube', 'V3', 20)];

  it('shows the new part alone at the instant of the exchange', () => {
    expect(componentsAt(history, 9)).toEqual([]);
    expect(componentsAt(history, 10)).toEqual([history[0]]);
    expect(componentsAt(history, 19)).toEqual([history[0]]);
    expect(componentsAt(history, 20)).toEqual([history[1]]);
  });

  it('finds an exchange at one instant, and a move, in order', () => {
    expect(fittingProblems(history)).toEqual([]);
    expect(codes([fitting('tube', 'V1', 0, 5), fitting('tube', 'V2', 5)])).toEqual([]);
  });
});

describe('fittings that cannot all be true', () => {
  it('refuses a component in two places at once', () => {
    const [problem] = fittingProblems([
      fitting('tube', 'V1', 0),
      fitting('tube', 'V2', 86_400_000),
    ]);
    expect(problem).toMatchObject({ code: 'COMPONENT_IN_TWO_PLACES' });
    expect(problem?.message).toBe(
      'tube is still in V1 when it is fitted in V2 (1970-01-02T00:00:00.000Z): remove it there first.',
    );
  });

  it('refuses two components in one position at once', () => {
    expect(codes([fitting('a', 'V1', 0, 10), fitting('b', 'V1', 9, 12)])).toEqual([
      'TWO_COMPONENTS_IN_ONE_POSITION',
    ]);
  });

  it('names the same component fitted twice in one place once, as a component', () => {
    expect(codes([fitting('a', 'V1', 0), fitting('a', 'V1', 5)])).toEqual([
      'COMPONENT_IN_TWO_PLACES',
    ]);
  });

  it('refuses removal before fitting', () => {
    expect(codes([fitting('a', 'V1', 10, 9)])).toEqual(['REMOVED_BEFORE_FITTED']);
    expect(codes([fitting('a', 'V1', 10, 10)])).toEqual([]);
  });

  it('sees past a short stay to the long one that still lasts', () => {
    expect(
      codes([fitting('a', 'V1', 0, 100), fitting('b', 'V1', 1, 2), fitting('c', 'V1', 50, 60)]),
    ).toEqual(['TWO_COMPONENTS_IN_ONE_POSITION', 'TWO_COMPONENTS_IN_ONE_POSITION']);
  });

  it('finds nothing exactly when at every instant each part and each place occurs once', () => {
    const some = fc.array(
      fc
        .tuple(fc.constantFrom('a', 'b'), fc.constantFrom('V1', 'V2'), fc.nat(8), fc.nat(8))
        .map(([componentId, positionKey, from, length]) =>
          fitting(componentId, positionKey, from, length === 8 ? null : from + length),
        ),
      { maxLength: 5 },
    );
    fc.assert(
      fc.property(some, (fittings) => {
        const isSound = Array.from({ length: 20 }, (_, atMs) => componentsAt(fittings, atMs)).every(
          (there) =>
            new Set(there.map((one) => one.componentId)).size === there.length &&
            new Set(there.map((one) => one.positionKey)).size === there.length,
        );
        expect(fittingProblems(fittings).length === 0).toBe(isSound);
      }),
      { numRuns: 500 },
    );
  });
});
