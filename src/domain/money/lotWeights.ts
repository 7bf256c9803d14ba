import { parseDecimal } from '../decimal/parseDecimal.js';

/** What a lot is spread by. */
export interface LotSpread {
  readonly spreadMethod: 'EQUAL_SHARES' | 'STATED_SHARES' | 'STATED_VALUES';
  readonly lines: readonly LotLineWeight[];
}

export interface LotLineWeight {
  /** An exact decimal, for a lot spread by stated shares. */
  readonly statedShare: string | null;
  /** In the currency of the lot, for a lot spread by stated values. */
  readonly statedValueMinorUnits: number | null;
}

/**
 * The weights of a lot's lines as whole numbers. Stated shares of unequal length ("1.5" and "0.25")
 * are brought to the same number of decimals, so that nothing is rounded.
 * @throws RangeError where a line lacks what the method wants
 */
export function lotWeights({ spreadMethod, lines }: LotSpread): bigint[] {
  if (spreadMethod === 'EQUAL_SHARES') return lines.map(() => 1n);
  if (spreadMethod === 'STATED_VALUES') {
    return lines.map(({ statedValueMinorUnits }) => {
      if (statedValueMinorUnits === null) throw new RangeError('A line of the lot has no value.');
      return BigInt(statedValueMinorUnits);
    });
  }
  const shares = lines.map(({ statedShare }) => {
    const share = parseDecimal(statedShare ?? '');
    if (share === null) throw new RangeError('A line of the lot has no share.');
    return share;
  });
  const decimals = Math.max(...shares.map((share) => share.decimals));
  return shares.map((share) => share.coefficient * 10n ** BigInt(decimals - share.decimals));
}
