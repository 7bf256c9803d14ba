import type { BetaShape } from './pertShape.js';

/** What is left of a beta variable beyond a point, as fractions of its whole range. */
export interface PertBeta {
  readonly meanFraction: number;
  readonly varianceFraction: number;
  /** The quantile of what is left, in (0, leftFraction), for a probability in (0, 1). */
  quantile(probability: number): number;
}

const CELLS = 256;
const MOST_KEPT = 256;
const kept = new Map<string, PertBeta>();

/**
 * A beta on 0 to 1, given that it lies in its last `leftFraction` (1: the whole of it), measured
 * from where that part begins. Tabulated at 256 cells; the last 256 tables are kept.
 *
 * Cells follow t²(3 - 2t), which is finer at both ends; cell masses by Simpson's rule, the density
 * taken as linear in t within a cell: quantiles err by less than 0.00001 of the range.
 */
export function pertBeta(shape: BetaShape, leftFraction = 1): PertBeta {
  const key = `${shape.alpha} ${shape.beta} ${leftFraction}`;
  let table = kept.get(key);
  if (table === undefined) {
    if (kept.size === MOST_KEPT) kept.clear();
    table = tabulate(shape, leftFraction);
    kept.set(key, table);
  }
  return table;
}

function tabulate({ alpha, beta }: BetaShape, leftFraction: number): PertBeta {
  const densities = new Float64Array(CELLS + 1);
  const cumulative = new Float64Array(CELLS + 1);
  let first = 0;
  let second = 0;

  // 1 - x is leftFraction(1 - t)²(1 + 2t); its constant factor is dropped, it cancels on scaling.
  const density = (t: number, left: number) =>
    (1 - leftFraction + left) ** (alpha - 1) *
    ((1 - t) ** 2 * (1 + 2 * t)) ** (beta - 1) *
    t *
    (1 - t);
  const leftAt = (t: number) => leftFraction * t * t * (3 - 2 * t);

  let low = 0;
  for (let cell = 0; cell < CELLS; cell += 1) {
    const tMiddle = (cell + 0.5) / CELLS;
    const tHigh = (cell + 1) / CELLS;
    const middle = leftAt(tMiddle);
    const high = leftAt(tHigh);
    const atLow = densities[cell]!;
    const atMiddle = 4 * density(tMiddle, middle);
    const atHigh = density(tHigh, high);
    densities[cell + 1] = atHigh;
    cumulative[cell + 1] = cumulative[cell]! + atLow + atMiddle + atHigh;
    first += low * atLow + middle * atMiddle + high * atHigh;
    second += low ** 2 * atLow + middle ** 2 * atMiddle + high ** 2 * atHigh;
    low = high;
  }

  const total = cumulative[CELLS]!;
  const meanFraction = first / total;
  return {
    meanFraction,
    varianceFraction: Math.max(0, second / total - meanFraction ** 2),
    quantile: inverseOf(cumulative, densities, leftAt),
  };
}

/** Inverts a cumulative table; it remembers the last cell, for calls that rise step by step. */
function inverseOf(
  cumulative: Float64Array,
  densities: Float64Array,
  leftAt: (t: number) => number,
): (probability: number) => number {
  const total = cumulative[CELLS]!;
  let last = 0;
  return (probability) => {
    const mass = probability * total;
    if (!(cumulative[last]! <= mass && mass < cumulative[last + 1]!)) {
      last = cellOf(cumulative, mass, last);
    }
    const below = cumulative[last]!;
    const share = (mass - below) / (cumulative[last + 1]! - below);
    const atLow = densities[last]!;
    const atHigh = densities[last + 1]!;
    const slope = Math.sqrt(atLow ** 2 + share * (atHigh ** 2 - atLow ** 2));
    return leftAt((last + (share * (atLow + atHigh)) / (atLow + slope)) / CELLS);
  };
}

/** The cell that holds a mass: the next ones first, then by halving. */
function cellOf(cumulative: Float64Array, mass: number, last: number): number {
  for (let cell = last + 1; cell < Math.min(last + 4, CELLS); cell += 1) {
    if (cumulative[cell]! <= mass && mass < cumulative[cell + 1]!) return cell;
  }
  let low = 0;
  let high = CELLS - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (cumulative[middle]! <= mass) low = middle;
    else high = middle - 1;
  }
  return low;
}
