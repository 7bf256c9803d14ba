import { compareDecimals } from '../decimal/compareDecimals.js';
import type { ConditionTier, Limit } from './limit.js';

/**
 * WITHIN_LIMITS: at least one limit applies and the value keeps to all of them, ends included.
 * BELOW_LIMIT: the value is less than the highest lower end that applies.
 * ABOVE_LIMIT: the value is more than the lowest upper end that applies.
 * NO_LIMIT: no limit is recorded for this quantity and tier, so nothing is judged.
 */
export type VerdictWord = 'WITHIN_LIMITS' | 'BELOW_LIMIT' | 'ABOVE_LIMIT' | 'NO_LIMIT';

export interface ReadingToJudge {
  readonly quantityCode: string;
  /** null: not recorded, so that only limits for any tier apply. */
  readonly tier: ConditionTier | null;
  /** Decimal string, already in the unit of the limits. */
  readonly value: string;
  readonly unitCode: string;
}

export interface Verdict {
  readonly word: VerdictWord;
  /** The limit with the highest lower end that applies; null when none has a lower end. */
  readonly strictestLower: Limit | null;
  /** The limit with the lowest upper end that applies; null when none has an upper end. */
  readonly strictestUpper: Limit | null;
  /** The limit that is broken; null unless BELOW_LIMIT or ABOVE_LIMIT. */
  readonly brokenLimit: Limit | null;
  /** How many limits applied. */
  readonly limitsApplied: number;
}

/**
 * Judges one reading. Of several limits the strictest end counts, the first named among equals.
 * When limits contradict one another so that a value breaks both ends, the lower end is named.
 * @throws RangeError when a limit that applies is in another unit, or a number cannot be read
 */
export function verdict(reading: ReadingToJudge, limits: readonly Limit[]): Verdict {
  const applying = limits.filter(
    (limit) =>
      limit.quantityCode === reading.quantityCode &&
      (limit.tier === null || limit.tier === reading.tier) &&
      (limit.lower !== null || limit.upper !== null),
  );
  const foreign = applying.find((limit) => limit.unitCode !== reading.unitCode);
  if (foreign !== undefined) {
    throw new RangeError(
      `The reading is in ${reading.unitCode} and its limit in ${foreign.unitCode}: convert it first.`,
    );
  }
  const strictestLower = strictest(applying, 'lower');
  const strictestUpper = strictest(applying, 'upper');
  const found = { strictestLower, strictestUpper, limitsApplied: applying.length };
  if (applying.length === 0) return { word: 'NO_LIMIT', brokenLimit: null, ...found };
  if (breaks(reading.value, strictestLower, 'lower')) {
    return { word: 'BELOW_LIMIT', brokenLimit: strictestLower, ...found };
  }
  if (breaks(reading.value, strictestUpper, 'upper')) {
    return { word: 'ABOVE_LIMIT', brokenLimit: strictestUpper, ...found };
  }
  return { word: 'WITHIN_LIMITS', brokenLimit: null, ...found };
}

function strictest(limits: readonly Limit[], end: 'lower' | 'upper'): Limit | null {
  let best: Limit | null = null;
  for (const limit of limits) {
    const candidate = limit[end];
    if (candidate === null) continue;
    const held = best?.[end] ?? null;
    if (held === null || isStricter(candidate, held, end)) best = limit;
  }
  return best;
}

/** A value breaks an end exactly when that end is stricter than an end at the value would be. */
function breaks(value: string, limit: Limit | null, end: 'lower' | 'upper'): boolean {
  const bound = limit?.[end] ?? null;
  return bound !== null && isStricter(bound, value, end);
}

function isStricter(candidate: string, held: string, end: 'lower' | 'upper'): boolean {
  const order = compareDecimals(candidate, held);
  return end === 'lower' ? order > 0 : order < 0;
}
