import { kendallTail } from './kendallTail.js';
import { normalTail } from './normalTail.js';

/** Up to this many untied values the distribution of S is counted out, as published tables do. */
const MOST_COUNTED = 10;

export interface MannKendall {
  /** Pairs that rise less pairs that fall. */
  readonly s: number;
  /** Variance of S without a trend, corrected for ties. */
  readonly variance: number;
  /** Standard normal score with continuity correction. */
  readonly z: number;
  /** Two-sided probability of an S at least as far from 0 when there is no trend. */
  readonly probability: number;
  /** Whether the probability was counted out; otherwise it is the normal approximation. */
  readonly isExact: boolean;
}

/**
 * Mann–Kendall test of a series without equal instants. Ties among the values are corrected for.
 * Source: R. O. Gilbert, Statistical Methods for Environmental Pollution Monitoring (1987), 16.4;
 * checked in tests/published/trend.test.ts.
 * @param values in order of time
 */
export function mannKendall(values: readonly number[]): MannKendall {
  const n = values.length;
  let s = 0;
  for (const [index, later] of values.entries()) {
    for (const earlier of values.slice(0, index)) s += Math.sign(later - earlier);
  }
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const term = (count: number): number => count * (count - 1) * (2 * count + 5);
  const tied = [...counts.values()].reduce((sum, count) => sum + term(count), 0);
  const variance = (term(n) - tied) / 18;
  const z = variance === 0 ? 0 : (s - Math.sign(s)) / Math.sqrt(variance);
  const isExact = n <= MOST_COUNTED && counts.size === n;
  const oneSided = isExact ? kendallTail(n, Math.abs(s)) : normalTail(Math.abs(z));
  return { s, variance, z, probability: Math.min(1, 2 * oneSided), isExact };
}
