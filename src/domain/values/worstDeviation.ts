/**
 * How far a part can lie from the value wanted when its nominal value differs and it has a
 * tolerance of its own, in percent of the value wanted: the farther of its two ends.
 * (1 + d)(1 ± t) − 1, with the difference d and the tolerance t as shares.
 */
export function worstDeviation(differencePercent: number, tolerancePercent: number): number {
  const nominal = 1 + differencePercent / 100;
  const tolerance = tolerancePercent / 100;
  const ends = [nominal * (1 - tolerance), nominal * (1 + tolerance)];
  return Math.max(...ends.map((end) => Math.abs(end - 1))) * 100;
}
