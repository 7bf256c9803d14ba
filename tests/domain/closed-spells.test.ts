import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  closedAt,
  closedSpells,
  type ClosingVersion,
} from '../../src/domain/readiness/closedSpells.js';

const day = (number: number): string => new Date(number * 86_400_000).toISOString();
const wrote = (on: number, closedOn: number | null, how: string | null = 'RESOLVED') => ({
  writtenAt: day(on),
  closedAt: closedOn === null ? null : day(closedOn),
  how: closedOn === null ? null : how,
});

describe('when a finding was settled, or a hazard cleared', () => {
  it('keeps every stretch, however often it was opened again', () => {
    const spells = closedSpells([
      wrote(1, null),
      wrote(3, 3),
      wrote(5, null),
      wrote(8, 7),
      wrote(9, null),
      wrote(20, 12),
    ]);
    expect(spells.map(({ from, until }) => [from, until])).toEqual([
      [day(3), day(5)],
      [day(7), day(9)],
      [day(12), null],
    ]);
    const open = [2, 5, 6, 9, 10, 11];
    for (let on = 1; on < 30; on += 1) {
      expect([on, closedAt(spells, day(on)) === undefined]).toEqual([
        on,
        on < 3 || open.includes(on),
      ]);
    }
  });

  it('takes a date put right at its word, and a second decision as one more', () => {
    const putRight = closedSpells([wrote(1, null), wrote(9, 3), wrote(10, 6)]);
    expect(putRight).toEqual([{ from: day(6), until: null, how: 'RESOLVED' }]);
    const accepted = closedSpells([wrote(1, null), wrote(3, 3, 'ACCEPTED'), wrote(10, 6)]);
    expect(accepted).toEqual([{ from: day(3), until: null, how: 'RESOLVED' }]);
  });

  it('a settlement dated after its own setting aside never held', () => {
    expect(closedSpells([wrote(1, null), wrote(4, 4), wrote(4, null)])).toEqual([]);
  });

  it('is what replaying the records up to a day says, where they were written as they happened', () => {
    const acts = fc.array(fc.tuple(fc.integer({ min: 1, max: 4 }), fc.boolean()), {
      maxLength: 12,
    });
    fc.assert(
      fc.property(acts, (steps) => {
        const versions: ClosingVersion[] = [];
        let on = 0;
        for (const [daysLater, isClosed] of steps) {
          on += daysLater;
          const isSame = ((versions.at(-1)?.closedAt ?? null) !== null) === isClosed;
          if (!isSame) versions.push(wrote(on, isClosed ? on : null));
        }
        const spells = closedSpells(versions);
        for (let asked = 0; asked <= on + 1; asked += 1) {
          const known = versions.filter(({ writtenAt }) => writtenAt <= day(asked));
          const isClosed = (known.at(-1)?.closedAt ?? null) !== null;
          expect(closedAt(spells, day(asked)) !== undefined).toBe(isClosed);
        }
      }),
      { numRuns: 500 },
    );
  });
});
