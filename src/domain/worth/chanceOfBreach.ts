/**
 * The share of trials, 0 to 1, in which what was spent and what is to come pass a ceiling. Reaching
 * it exactly is no breach. A higher ceiling never has a higher chance.
 */
export function chanceOfBreach(
  costsToCome: Float64Array,
  spentSoFar: number,
  ceiling: number,
): number {
  let breaches = 0;
  for (const cost of costsToCome) if (spentSoFar + cost > ceiling) breaches += 1;
  return costsToCome.length === 0 ? 0 : breaches / costsToCome.length;
}
