import type { Limit } from '../../domain/condition/limit.js';
import { verdict, type VerdictWord } from '../../domain/condition/verdict.js';
import { nameKey } from '../../domain/nameKey.js';
import type { KeptLimit } from './limitsOfSubjects.reads.js';
import type { ReadingTier } from './readingTier.js';
import { convertUnit } from './ucum.js';

export interface JudgeableReading {
  quantity: string;
  value: string;
  unit: string;
  tier: ReadingTier;
}

/** The verdict on a reading, with the range that it was held against. */
export interface Judgement {
  word: VerdictWord;
  /** Null when no limit applied. */
  limit: HeldLimit | null;
  limitsApplied: number;
}

/** The strictest ends that applied, in one unit, and the reading's value in that unit. */
export interface HeldLimit {
  value: string;
  unit: string;
  lower: string | null;
  upper: string | null;
  source: string | null;
}

/** Holds a reading against the limits of its part type or model, converted to the limit's unit. */
export function judgeReading(reading: JudgeableReading, limits: readonly KeptLimit[]): Judgement {
  const applying = limitsApplying(reading, limits);
  const unit = applying.find((limit) => isComparable(reading, limit))?.unit;
  const value = unit === undefined ? null : convertUnit(reading.value, reading.unit, unit);
  if (unit === undefined || value === null)
    return { word: 'NO_LIMIT', limit: null, limitsApplied: 0 };
  const quantityCode = nameKey(reading.quantity);
  const comparable = applying.flatMap((limit) => limitInUnit(limit, quantityCode, unit));
  const found = verdict({ quantityCode, tier: reading.tier, value, unitCode: unit }, comparable);
  const sources = [found.strictestLower?.source, found.strictestUpper?.source];
  const named = [...new Set(sources.filter((source) => typeof source === 'string'))];
  return {
    word: found.word,
    limitsApplied: found.limitsApplied,
    limit: {
      value,
      unit,
      lower: found.strictestLower?.lower ?? null,
      upper: found.strictestUpper?.upper ?? null,
      source: named.length === 0 ? null : named.join('; '),
    },
  };
}

/** The limits of the same quantity that hold where the reading was taken, whatever their unit. */
export const limitsApplying = (
  { quantity, tier }: JudgeableReading,
  limits: readonly KeptLimit[],
): KeptLimit[] =>
  limits.filter(
    (limit) =>
      nameKey(limit.quantity) === nameKey(quantity) && (limit.tier === null || limit.tier === tier),
  );

/** A reading in volts says nothing about a limit in ohms. */
export const isComparable = (reading: JudgeableReading, limit: KeptLimit): boolean =>
  convertUnit(reading.value, reading.unit, limit.unit) !== null;

function limitInUnit(limit: KeptLimit, quantityCode: string, unitCode: string): Limit[] {
  const { tier, source } = limit;
  const [lower, upper] = [limit.lower, limit.upper].map((end) =>
    end === null ? null : (convertUnit(end, limit.unit, unitCode) ?? undefined),
  );
  if (lower === undefined || upper === undefined) return [];
  return [{ quantityCode, tier, lower, upper, unitCode, source }];
}
