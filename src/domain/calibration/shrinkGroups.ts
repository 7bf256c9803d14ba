/** What was known of the spread within groups before any was seen, as if from so many values. */
export interface PriorSpread {
  readonly variance: number;
  readonly degrees: number;
}

export interface ShrunkGroup {
  readonly count: number;
  readonly mean: number;
  /** 0 to 1: how much its own mean counts against the mean of all. */
  readonly weight: number;
}

export interface ShrunkGroups {
  readonly groups: ReadonlyMap<string, ShrunkGroup>;
  readonly count: number;
  readonly grandMean: number;
  readonly withinVariance: number;
  readonly betweenVariance: number;
  /** How far the grand mean may lie from that of all groups there could be, squared. */
  readonly grandMeanVariance: number;
}

/**
 * Empirical Bayes for groups of unequal size: the one-way analysis of variance with random groups
 * gives the variance between them, (MSB - MSW) / n0 and not below 0; a group's own mean counts
 * n / (n + within / between).
 *
 * Source: random effects model of the one-way analysis of variance, as in Davies and Goldsmith,
 * Statistical Methods in Research and Production, 4th ed., 1972, section 6.4.
 *
 * @param groups each with one value or more.
 */
export function shrinkGroups(
  groups: ReadonlyMap<string, readonly number[]>,
  prior: PriorSpread = { variance: 0, degrees: 0 },
): ShrunkGroups {
  const told = [...groups].map(([key, values]) => {
    const mean = meanOf(values);
    const scatter = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    return { key, count: values.length, mean, scatter };
  });
  const count = told.reduce((sum, group) => sum + group.count, 0);
  const grandMean =
    count === 0 ? 0 : told.reduce((sum, { count: n, mean }) => sum + n * mean, 0) / count;
  const degrees = count - told.length + prior.degrees;
  const scatter = told.reduce((sum, group) => sum + group.scatter, 0);
  const withinVariance =
    degrees > 0 ? (scatter + prior.degrees * prior.variance) / degrees : prior.variance;
  const squares = told.reduce((sum, { count: n }) => sum + n ** 2, 0);
  const betweenVariance = between(told, { count, grandMean, squares, withinVariance });
  return {
    groups: new Map(
      told.map(({ key, count: n, mean }) => [
        key,
        { count: n, mean, weight: weightOf(n, withinVariance, betweenVariance) },
      ]),
    ),
    count,
    grandMean,
    withinVariance,
    betweenVariance,
    grandMeanVariance:
      count === 0 ? Infinity : withinVariance / count + (betweenVariance * squares) / count ** 2,
  };
}

function between(
  told: readonly { count: number; mean: number }[],
  all: { count: number; grandMean: number; squares: number; withinVariance: number },
): number {
  if (told.length < 2) return 0;
  const spread = told.reduce(
    (sum, { count, mean }) => sum + count * (mean - all.grandMean) ** 2,
    0,
  );
  const meanSquare = spread / (told.length - 1);
  const typicalCount = (all.count - all.squares / all.count) / (told.length - 1);
  return Math.max(0, (meanSquare - all.withinVariance) / typicalCount);
}

const weightOf = (count: number, within: number, betweenVariance: number): number =>
  betweenVariance === 0 ? 0 : count / (count + within / betweenVariance);

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
