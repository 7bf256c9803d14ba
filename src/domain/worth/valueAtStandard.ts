import { normalQuantile } from '../estimates/normalQuantile.js';
import { medianOf } from '../trend/medianOf.js';
import { logSpread, usualLogSpread } from './logSpread.js';
import { lognormalAmount } from './lognormalAmount.js';
import { rungOf, type Standard } from './standards.js';
import type { UncertainAmount } from './uncertainAmount.js';

/** A value noted at a standard, in minor units of one currency and in today's money. */
export interface StandardValue {
  readonly standard: Standard;
  readonly low: number | null;
  readonly likely: number;
  readonly high: number | null;
  readonly ageDays: number;
}

export interface ValueAtStandard {
  readonly amount: UncertainAmount;
  /** Eight chances in ten lie between these; `likely` is the median. */
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly how: 'NOTED' | 'INTERPOLATED';
  readonly noteCount: number;
}

/** Added to the spread of the logarithm for each rung to a note. Our own choice, no source. */
const spreadOfARung = 0.1;
const tenthFromTop = normalQuantile(0.9);

interface Estimate {
  median: number;
  logDeviation: number;
  noteCount: number;
}

/**
 * What a set is worth at a standard: by the notes for that standard; where there are none, between
 * the nearest rungs below and above that have some, evenly by ratio from rung to rung. Never beyond
 * the last rung with a note, and never for FOR_SHOW, which is beside the ladder: null then.
 * @param values above zero
 */
export function valueAtStandard(
  values: readonly StandardValue[],
  standard: Standard,
): ValueAtStandard | null {
  const noted = estimateOf(values.filter((value) => value.standard === standard));
  if (noted !== null) return shown(noted, 'NOTED');
  const rung = rungOf(standard);
  if (rung === null) return null;
  const onLadder = values.flatMap((value) => {
    const at = rungOf(value.standard);
    return at === null ? [] : [{ at, value }];
  });
  const lower = Math.max(...onLadder.filter(({ at }) => at < rung).map(({ at }) => at));
  const upper = Math.min(...onLadder.filter(({ at }) => at > rung).map(({ at }) => at));
  const at = (place: number) =>
    estimateOf(onLadder.filter((one) => one.at === place).map(({ value }) => value));
  const [below, above] = [at(lower), at(upper)];
  if (below === null || above === null) return null;
  const share = (rung - lower) / (upper - lower);
  const mixed = (low: number, high: number) => low + share * (high - low);
  const nearest = Math.min(rung - lower, upper - rung);
  return shown(
    {
      median: Math.exp(mixed(Math.log(below.median), Math.log(above.median))),
      logDeviation: mixed(below.logDeviation, above.logDeviation) + spreadOfARung * nearest,
      noteCount: below.noteCount + above.noteCount,
    },
    'INTERPOLATED',
  );
}

function estimateOf(values: readonly StandardValue[]): Estimate | null {
  const usable = values.filter(({ likely }) => likely > 0);
  if (usable.length === 0) return null;
  const likelies = usable.map(({ likely }) => likely);
  const own = usable.flatMap(({ low, high }) =>
    low !== null && high !== null && low > 0 ? [Math.log(high / low) / (2 * tenthFromTop)] : [],
  );
  const usual =
    own.length === 0 ? usualLogSpread : own.reduce((sum, one) => sum + one, 0) / own.length;
  const newest = Math.min(...usable.map(({ ageDays }) => ageDays));
  return {
    median: medianOf(likelies),
    logDeviation: logSpread(likelies.map(Math.log), newest, usual),
    noteCount: usable.length,
  };
}

function shown({ median, logDeviation, noteCount }: Estimate, how: ValueAtStandard['how']) {
  const amount = lognormalAmount(median, logDeviation);
  return { amount, low: amount.at(0.1), likely: median, high: amount.at(0.9), how, noteCount };
}
