import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  firstOf,
  lastOf,
  possibleDays,
  type DateStatement,
} from '../../src/domain/provenance/dateNetwork.js';
import { possibleStretches } from '../../src/domain/provenance/possibleStretches.js';
import { smallestConflict } from '../../src/domain/provenance/smallestConflict.js';

const nodes = ['making', 'repair', 'sale'] as const;
const lastDay = 7;
const within = (id: string, node: string, ...alternatives: [number, number][]): DateStatement => ({
  kind: 'WITHIN',
  id,
  node,
  alternatives: alternatives.map(([first, last]) => ({ first, last })),
});
const order = (id: string, earlier: string, later: string, graceDays = 0): DateStatement => ({
  kind: 'ORDER',
  id,
  earlier,
  later,
  graceDays,
});

describe('dates of one thing as a network', () => {
  it('takes the latest original part for the earliest day of the making', () => {
    const days = possibleDays([
      within('code of C3', 'C3', [10, 16]),
      within('code of C9', 'C9', [40, 46]),
      order('C3 is original', 'C3', 'making'),
      order('C9 is original', 'C9', 'making'),
      within('invoice', 'sale', [90, 90]),
      order('made before it was sold', 'making', 'sale'),
    ]);
    expect(days?.get('making')).toEqual([{ first: 40, last: 90 }]);
  });

  it('narrows the decade of a code of one digit by what else is known', () => {
    const statements = [
      within('code 4', 'code', [140, 149], [240, 249], [340, 349]),
      order('it is original', 'code', 'making'),
      within('model made', 'making', [230, 335]),
    ];
    expect(possibleStretches(statements, 'code')).toEqual([
      { first: 140, last: 149 },
      { first: 240, last: 249 },
    ]);
    const later = [...statements, within('maker began', 'code', [200, 999])];
    expect(possibleStretches(later, 'code')).toEqual([{ first: 240, last: 249 }]);
  });

  it('names the smallest conflict: one statement against one of many codes', () => {
    const codes = [1, 2, 3, 4, 5].flatMap((code) => [
      within(`code ${code}`, `C${code}`, [600 + code, 600 + code]),
      order(`C${code} is original`, `C${code}`, 'making'),
    ]);
    expect(smallestConflict([within('seller', 'making', [570, 580]), ...codes])).toEqual([
      'seller',
      'code 1',
      'C1 is original',
    ]);
    expect(smallestConflict(codes)).toBeNull();
  });
});

/** Every assignment of days tried: what the network must agree with. */
function everySolution(statements: readonly DateStatement[]): Record<string, number>[] {
  const solutions: Record<string, number>[] = [];
  for (let code = 0; code < (lastDay + 1) ** nodes.length; code++) {
    const days = Object.fromEntries(
      nodes.map((node, place) => [node, Math.floor(code / (lastDay + 1) ** place) % (lastDay + 1)]),
    );
    const dayOf = (node: string): number => days[node] ?? Number.NaN;
    const holds = statements.every((one) =>
      one.kind === 'ORDER'
        ? dayOf(one.earlier) <= dayOf(one.later) + one.graceDays
        : one.alternatives.some(
            ({ first, last }) => first <= dayOf(one.node) && dayOf(one.node) <= last,
          ),
    );
    if (holds) solutions.push(days);
  }
  return solutions;
}

const stretch = fc
  .tuple(fc.integer({ min: 0, max: lastDay }), fc.integer({ min: 0, max: 3 }))
  .map(([first, more]) => ({ first, last: Math.min(lastDay, first + more) }));
const node = fc.constantFrom(...nodes);
const statement = (id: string): fc.Arbitrary<DateStatement> =>
  fc.oneof(
    fc.record({
      kind: fc.constant('WITHIN' as const),
      id: fc.constant(id),
      node,
      alternatives: fc.array(stretch, { minLength: 1, maxLength: 3 }),
    }),
    fc.record({
      kind: fc.constant('ORDER' as const),
      id: fc.constant(id),
      earlier: node,
      later: node,
      graceDays: fc.integer({ min: 0, max: 2 }),
    }),
  );
/** Every happening lies on one of eight days, so that every assignment can be tried. */
const bounds = nodes.map((name) => within(`days of ${name}`, name, [0, lastDay]));
const networks = fc
  .integer({ min: 1, max: 6 })
  .chain((count) =>
    fc.tuple(...Array.from({ length: count }, (_, index) => statement(`s${index}`))),
  );

describe('the network against every assignment of days tried', () => {
  it('finds the same first and last days, or none', () => {
    fc.assert(
      fc.property(networks, (own) => {
        const statements = [...bounds, ...own];
        const solutions = everySolution(statements);
        const days = possibleDays(statements);
        expect(days === null).toBe(solutions.length === 0);
        if (days === null) return;
        for (const name of nodes) {
          const seen = solutions.map((solution) => solution[name] ?? Number.NaN);
          const found = days.get(name) ?? [];
          expect([firstOf(found), lastOf(found)]).toEqual([Math.min(...seen), Math.max(...seen)]);
          const left = possibleStretches(statements, name) ?? [];
          for (const { first, last } of left)
            expect(seen).toEqual(expect.arrayContaining([first, last]));
          for (const day of seen) {
            expect(left.some(({ first, last }) => first <= day && day <= last)).toBe(true);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  // Windows lie on the eight days, and drawing a solution into them breaks no order: trying every
  // assignment of these days decides any subset.
  it('names a conflict that no smaller subset has', () => {
    const subsets = <One>(all: readonly One[]): One[][] =>
      all.reduce<One[][]>((found, one) => [...found, ...found.map((set) => [...set, one])], [[]]);
    let conflicts = 0;
    fc.assert(
      fc.property(networks, (own) => {
        const conflict = smallestConflict(own);
        const impossible = subsets(own).filter((set) => everySolution(set).length === 0);
        const sizes = impossible.map((set) => set.length);
        expect(conflict?.length ?? Number.POSITIVE_INFINITY).toBe(Math.min(...sizes));
        if (conflict === null) return;
        conflicts++;
        const named = own.filter(({ id }) => conflict.includes(id));
        expect(everySolution(named)).toEqual([]);
      }),
      { numRuns: 200, seed: 1957 },
    );
    expect(conflicts).toBeGreaterThan(20);
  });
});
