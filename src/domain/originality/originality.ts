/**
 * ORIGINAL: the part that the set was made with. REPLACED: another part. EMPTY: nothing is there.
 * UNKNOWN: nobody can say what is there, or where it came from.
 */
export type PositionOrigin = 'ORIGINAL' | 'REPLACED' | 'EMPTY' | 'UNKNOWN';

export interface WeighedPosition {
  readonly origin: PositionOrigin;
  /** How much the position counts, one or more, in any measure. */
  readonly weight: number;
}

/** Weights of the positions by their origin, and the share that is original, as an interval. */
export interface OriginalityShare {
  readonly original: number;
  readonly replaced: number;
  readonly empty: number;
  readonly unknown: number;
  /** 0 to 1, if none of what is unknown is original; null without positions. */
  readonly low: number | null;
  /** 0 to 1, if all of what is unknown is original; null without positions. */
  readonly high: number | null;
}

/** What share of a set is as it was made: of its positions, or of their weights. */
export function originality(positions: readonly WeighedPosition[]): OriginalityShare {
  const weightOf = (origin: PositionOrigin): number =>
    positions.reduce((sum, one) => sum + (one.origin === origin ? one.weight : 0), 0);
  const [original, replaced, empty, unknown] = [
    weightOf('ORIGINAL'),
    weightOf('REPLACED'),
    weightOf('EMPTY'),
    weightOf('UNKNOWN'),
  ];
  const all = original + replaced + empty + unknown;
  return {
    original,
    replaced,
    empty,
    unknown,
    low: all === 0 ? null : original / all,
    high: all === 0 ? null : (original + unknown) / all,
  };
}
