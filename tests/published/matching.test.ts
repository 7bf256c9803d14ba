import { describe, expect, it } from 'vitest';
import { largestAtOnce } from '../../src/domain/shack/largestAtOnce.js';

/** Rows are rigs that need one role, columns the accessories that can fill it. */
const matched = (rows: readonly (readonly string[])[]): number =>
  largestAtOnce({
    rigs: rows.map((accessoryIds, row) => ({
      rigId: `row ${row}`,
      needs: [{ roleCode: 'SUPPLY', accessoryIds }],
    })),
    unitOf: new Map(),
  }).served.size;

const columnsOf = (matrix: readonly (readonly number[])[]): string[][] =>
  matrix.map((row) => row.flatMap((entry, column) => (entry === 1 ? [`column ${column}`] : [])));

describe('maximum matching against published examples', () => {
  // SciPy, scipy/sparse/csgraph/tests/test_matching.py: the matrices with their matchings.
  it.each([
    [
      'causes augmentation',
      [
        [1, 1],
        [1, 0],
      ],
      2,
    ],
    [
      'more rows than columns',
      [
        [1, 1],
        [1, 0],
        [0, 1],
      ],
      2,
    ],
    [
      'more columns than rows',
      [
        [1, 1, 0],
        [0, 0, 1],
      ],
      2,
    ],
    [
      'no edges',
      [
        [0, 0],
        [0, 0],
      ],
      0,
    ],
  ])('of SciPy, %s', (_, matrix, size) => {
    expect(matched(columnsOf(matrix))).toBe(size);
  });

  // Documentation of the Rust crate hopcroft-karp, basic usage: both examples have three pairs.
  it('of the crate hopcroft-karp', () => {
    expect(matched([['10', '11', '12'], ['11'], ['12']])).toBe(3);
    const heroes = [
      ['doc octopus', 'sandman', 'green goblin'],
      ['doc octopus', 'green goblin'],
      ['sandman'],
    ];
    expect(matched(heroes)).toBe(3);
  });
});
