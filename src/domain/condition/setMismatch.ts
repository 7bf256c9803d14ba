/** What one member of a set reads, in the unit of the set. */
export interface MemberReading {
  readonly memberId: string;
  readonly value: number;
}

/**
 * MATCHED: the spread keeps to the limit. MISMATCHED: it does not. UNKNOWN: a member has no reading
 * of the same kind, there are fewer than two members, or the mean is not above zero.
 */
export type MatchWord = 'MATCHED' | 'MISMATCHED' | 'UNKNOWN';

export interface SetMismatch {
  readonly word: MatchWord;
  /** Highest less lowest reading, in per cent of the mean; null when unknown. */
  readonly percent: number | null;
}

/**
 * How far the members of a pair or set lie apart: highest less lowest, in per cent of their mean
 * (common practice, no source). The order of the members does not matter, nor does the unit.
 * @param memberCount how many belong to the set, with or without a reading
 * @param largestPercent the spread that still counts as matched
 */
export function setMismatch(
  memberCount: number,
  readings: readonly MemberReading[],
  largestPercent: number,
): SetMismatch {
  const values = readings.map(({ value }) => value);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  if (memberCount < 2 || values.length < memberCount || !(mean > 0)) {
    return { word: 'UNKNOWN', percent: null };
  }
  const percent = ((Math.max(...values) - Math.min(...values)) / mean) * 100;
  return { word: percent <= largestPercent ? 'MATCHED' : 'MISMATCHED', percent };
}
